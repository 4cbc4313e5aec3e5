using NodaTime;
using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Prices;

namespace ShopDays.Cli.Files;

/// <summary>Reads the <c>money</c> of a shop: what an hour has to earn, and how a price is made of it.</summary>
/// <param name="source">The shop's file, beside which the terms of its quotes lie.</param>
internal sealed class MoneyReader(SourceFile source)
{
    private const int MostSpareBoards = 10;
    private const double MostConsumables = 25;
    private const int LongestValid = 366;

    /// <summary>Reads the section.</summary>
    public ShopMoney Read(Section money)
    {
        var currency = money.Reading.Currency ?? new("XXX", 2);
        var rate = RateReader.Read(money, currency);
        var (margin, markup) = ReadProfit(money);
        var consumables = money.Optional("consumables", Consumables);
        if (margin.IsRead && consumables.Value is ConsumablesRule.OfPrice { Share: var share } && margin.Value.Share + ((decimal)share.Value / 100) >= 1)
        {
            money.Findings.Add(MoneyMistakes.NothingLeftOfThePrice(consumables.Place, margin.Value.Share));
        }

        var rounding = money.Optional("rounding", MoneyValues.InCurrency("a rule such as nearest 10", RoundingText.Read));
        var travel = money.Optional("travel", MoneyValues.Price([PriceUnit.Kilometre, PriceUnit.Mile], "a price by the way, such as 0.70 per mile"));
        var terms = new PricingTerms
        {
            Rate = rate,
            Margin = margin.Or(Margin.None),
            Markup = markup,
            Rounding = rounding.Value,
            Tax = money.Optional("tax", Tax).Or(new(Percent.Zero)),
            Consumables = consumables.Or(new ConsumablesRule.Amount(null)),
            Travel = travel.Value,
            SpareBoards = money.Optional("spare-boards", Values.Whole("a count of boards", 0, MostSpareBoards), 0),
            Stages = StagesReader.Read(money),
        };
        return new()
        {
            Terms = terms,
            ValidDays = money.Optional("valid", Days, ShopMoney.UsualDays),
            SmallPrint = money.Optional("terms", TermsFile.Beside(source)).Or([]),
        };
    }

    /// <summary>The margin, and the markup that it is where the shop says one.</summary>
    private static (Field<Margin> Margin, Markup? Markup) ReadProfit(Section money)
    {
        var margin = money.Optional("margin", (node, reading) => Values.Percentage(node, reading).Unless(reading.Findings, percent => percent.Value >= 100
            ? ShopMistakes.MarginTakesAll(node.Place, ((YamlText)node).Value)
            : null));
        var markup = money.Optional("markup", Values.Percentage);
        if (margin.IsWritten && markup.IsWritten)
        {
            money.Findings.Add(MoneyMistakes.MarginAndMarkup(markup.Place));
        }

        return markup.IsRead
            ? (markup.Select(percent => Markup.Of(percent).AsMargin), Markup.Of(markup.Value))
            : (margin.Select(Margin.Of), null);
    }

    private static ValueReader<ConsumablesRule> Consumables { get; } = (node, reading) =>
        node is YamlText { Value: var text } && text.Contains('%', StringComparison.Ordinal)
            ? Values.Percentage(node, reading)
                .Unless(reading.Findings, share => share.Value > MostConsumables ? ValueMistakes.NotInRange(node.Place, text, "the share of consumables", "25% of the price at most") : null)
                .Select<ConsumablesRule>(share => new ConsumablesRule.OfPrice(share))
            : MoneyValues.Amount(node, reading).Select<ConsumablesRule>(amount => new ConsumablesRule.Amount(amount));

    private static ValueReader<TaxRule> Tax { get; } = (node, reading) =>
    {
        if (node is not YamlMap)
        {
            return Values.Percentage(node, reading).Select(rate => new TaxRule(rate));
        }

        var tax = Section.Open(node, "the tax", reading)!;
        var rate = tax.Required("rate", Values.Percentage, "a percentage such as 20%");
        var delivery = tax.Optional("delivery", Values.Percentage);
        var isIncluded = tax.Optional("in-prices", Values.YesOrNo, false);
        tax.Close();
        return rate.Select(percent => new TaxRule(percent) { OnDelivery = delivery.IsRead ? delivery.Value : null, IsIncluded = isIncluded });
    };

    private static ValueReader<int> Days { get; } = (node, reading) => Values.Wait(node, reading)
        .Unless(reading.Findings, wait => wait >= Duration.FromDays(1) && wait <= Duration.FromDays(LongestValid)
            ? null
            : ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, "how long a quote holds", "a day to a year, such as 30d"))
        .Select(wait => (int)wait.TotalDays);
}
