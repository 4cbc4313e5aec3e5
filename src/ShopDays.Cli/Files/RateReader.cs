using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Prices;

namespace ShopDays.Cli.Files;

/// <summary>Reads what an hour has to earn: a rate as it stands, or wage, contributions, overhead and billable hours to build it up from.</summary>
internal static class RateReader
{
    private const int MonthsOfAYear = 12;
    private const string PerMonth = "per month";
    private const string PerYear = "per year";
    private const string ARate = "a price per hour, such as 48 per hour";

    private static readonly PriceUnit[] ByTime = [PriceUnit.Month, PriceUnit.Year];

    /// <summary>Reads it.</summary>
    /// <param name="money">The money of a shop.</param>
    /// <param name="currency">Its currency.</param>
    public static ShopRate Read(Section money, Currency currency)
    {
        var wage = money.Optional("wage", MoneyValues.Price(ByTime, "a wage, such as 32000 per year"));
        var rate = wage.IsWritten
            ? money.Optional("rate", MoneyValues.Price([PriceUnit.Hour], ARate))
            : money.Required("rate", MoneyValues.Price([PriceUnit.Hour], ARate), ARate + ", or a 'wage' to build it up from");
        if (wage.IsWritten && rate.IsWritten)
        {
            money.Findings.Add(MoneyMistakes.RateAndWage(rate.Place));
        }

        var social = money.Optional("social", Values.Percentage);
        if (social.IsWritten && !wage.IsWritten)
        {
            money.Findings.Add(MoneyMistakes.SocialWithoutWage(social.Place));
        }

        var overhead = money.Optional("overhead", Overhead);
        const string SomeHours = "hours that somebody pays for, such as 70 h per month";
        var billable = wage.IsWritten || overhead.IsWritten ? money.Required("billable", Billable, SomeHours) : money.Optional("billable", Billable);
        var given = rate.Or(new(Money.None(currency), PriceUnit.Hour)).Amount;
        return (wage.Value, billable.IsRead, overhead.Or([])) switch
        {
            ({ } earned, true, var lines) => ShopRate.BuiltUp(ShopRate.ByTheYear(earned), social.Or(Percent.Zero), lines, billable.Value),
            (null, true, { Count: > 0 } lines) => ShopRate.Given(given, lines, billable.Value),
            _ => ShopRate.Given(given),
        };
    }

    private static ValueReader<IReadOnlyList<YearlyCost>> Overhead { get; } = (node, reading) =>
    {
        var price = MoneyValues.Price(ByTime, "a price per month or year, such as 350 per month");
        if (node is not YamlMap map)
        {
            return price(node, reading).Select<IReadOnlyList<YearlyCost>>(all => [new("overhead", ShopRate.ByTheYear(all))]);
        }

        var lines = new List<YearlyCost>();
        var isWhole = true;
        foreach (var (key, value) in map.Entries)
        {
            var amount = price(value, reading);
            isWhole &= amount.IsRead;
            if (amount.IsRead)
            {
                lines.Add(new(key.Value, ShopRate.ByTheYear(amount.Value!)));
            }
        }

        return isWhole ? Field<IReadOnlyList<YearlyCost>>.Read(node.Place, lines) : Field<IReadOnlyList<YearlyCost>>.Wrong(node.Place);
    };

    /// <summary>Hours of a year.</summary>
    private static ValueReader<WorkTime> Billable { get; } = (node, reading) =>
    {
        var text = Values.Text("hours per month or year, such as 70 h per month")(node, reading)
            .Unless(reading.Findings, typed => EndingOf(typed) is null ? ShopMistakes.NotHoursPerMonth(node.Place, typed) : null);
        if (!text.IsRead)
        {
            return Field<WorkTime>.Wrong(node.Place);
        }

        var ending = EndingOf(text.Value!)!;
        return ShopSections.SomeTime("hours that somebody pays for")(new YamlText(node.Place, text.Value![..^ending.Length]), reading)
            .Select(time => ending == PerMonth ? time * MonthsOfAYear : time);
    };

    private static string? EndingOf(string text) => new[] { PerMonth, PerYear }.FirstOrDefault(ending => text.EndsWith(ending, StringComparison.Ordinal));
}
