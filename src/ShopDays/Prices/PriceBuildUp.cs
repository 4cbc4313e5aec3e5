using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Prices;

/// <summary>What a price is made of, and what follows from it.</summary>
public sealed record PriceBuildUp
{
    /// <summary>How the shop makes its prices.</summary>
    public required PricingTerms Terms { get; init; }

    /// <summary>What the job costs its maker, in the order in which it is told: hours, timber, what is bought, contingency last.</summary>
    public required IReadOnlyList<CostLine> Lines { get; init; }

    /// <summary>The price that leaves the margin over the cost, before tax and before it is rounded to quote it; to the minor unit.</summary>
    public required Money Reckoned { get; init; }

    /// <summary>What the client is asked for.</summary>
    public required Quoted Quoted { get; init; }

    /// <summary>Whether the quoted price was given, and not reckoned.</summary>
    public required bool IsGiven { get; init; }

    /// <summary>What the job costs if all goes as expected.</summary>
    public Money Cost => Sum(Lines.Where(line => !line.IsContingency));

    /// <summary>What may go wrong, with spare boards.</summary>
    public Money Contingency => Sum(Lines.Where(line => line.IsContingency));

    /// <summary>All lines.</summary>
    public Money CostWithContingency => Cost + Contingency;

    /// <summary>The money that goes out whatever the hours: timber, spare boards among it, hardware, consumables, others' work, travel.</summary>
    public Money Outlay => Sum(Lines.Where(line => !line.IsTime));

    /// <summary>What of it is neither timber nor a share of the price: fittings, others' work, travel, consumables by the job.</summary>
    public Money BoughtBesideTimber => Sum(Lines.Where(line => line is CostLine.Hardware or CostLine.Outside or CostLine.Travel or CostLine.Consumables { OfPrice: null }));

    /// <summary>What the price as quoted leaves over the cost with contingency; below zero where it does not cover it.</summary>
    public Money Profit => Quoted.BeforeTax - CostWithContingency;

    /// <summary>That as a share of the price before tax: the margin that is left. Null where nothing is asked for.</summary>
    public decimal? MarginLeft => Quoted.BeforeTax.Amount == 0 ? null : Profit.Amount / Quoted.BeforeTax.Amount;

    /// <summary>The same as a share of the cost: the markup that is left. Null where it costs nothing.</summary>
    public decimal? MarkupLeft => CostWithContingency.Amount == 0 ? null : Profit.Amount / CostWithContingency.Amount;

    /// <summary>Builds a price up.</summary>
    /// <param name="terms">How the shop makes its prices. Margin and consumables by the price together leave something of it.</param>
    /// <param name="labour">The hours that are as likely as not, by kind.</param>
    /// <param name="promised">The minutes that four courses in five keep, no fewer than the labour's.</param>
    /// <param name="timber">The timber.</param>
    /// <param name="job">The job.</param>
    /// <exception cref="ArgumentException">Margin and consumables leave nothing of the price.</exception>
    public static PriceBuildUp Of(PricingTerms terms, IReadOnlyList<LabourShare> labour, long promised, TimberBill timber, Job job)
    {
        var wanted = job.Commission;
        List<CostLine> work = [.. labour.Select(share => new CostLine.Labour(share, terms.Rate.Of(share.Minutes)))];
        List<CostLine> bought =
        [
            .. timber.Lines.SelectMany(line => (CostLine[])[new CostLine.TimberUsed(line), new CostLine.TimberLost(line)]),
            .. wanted.Hardware.Select(item => new CostLine.Hardware(item)),
            .. wanted.Outside.Select(one => new CostLine.Outside(one)),
            .. TravelOf(terms, job),
        ];
        var slack = promised - labour.Sum(share => share.Minutes);
        List<CostLine> contingency =
        [
            .. (CostLine[])(slack > 0 ? [new CostLine.Slack(slack, terms.Rate.Of(slack))] : []),
            .. timber.Spares.Select(board => new CostLine.Spare(board)),
        ];
        var consumables = ConsumablesOf(terms, wanted, SumOf([.. work, .. bought, .. contingency], timber.Total.Currency));
        List<CostLine> lines = [.. work, .. bought.Where(line => line is not CostLine.Travel), .. consumables, .. bought.Where(line => line is CostLine.Travel), .. contingency];
        var price = terms.Margin.PriceOf(SumOf(lines, timber.Total.Currency));
        return new()
        {
            Terms = terms,
            Lines = lines,
            Reckoned = price.Rounded(),
            Quoted = Quoted.Of(price, DeliveryOf(lines), terms, wanted.Price),
            IsGiven = wanted.Price is not null,
        };
    }

    /// <summary>Glue, abrasives and finish: a share of the price depends on the price, which depends on it.</summary>
    private static IEnumerable<CostLine> ConsumablesOf(PricingTerms terms, Commission wanted, Money others)
    {
        if (wanted.Consumables is { } own)
        {
            return [new CostLine.Consumables(null, own.Rounded())];
        }

        switch (terms.Consumables)
        {
            case ConsumablesRule.Amount { Price: { } amount }:
                return [new CostLine.Consumables(null, amount.Rounded())];
            case ConsumablesRule.OfPrice { Share: var percent }:
                var share = (decimal)percent.Value / 100;
                var left = 1 - terms.Margin.Share - share;
                return left > 0
                    ? [new CostLine.Consumables(percent, (others with { Amount = others.Amount * share / left }).Rounded())]
                    : throw new ArgumentException("margin and consumables leave nothing of the price", nameof(terms));
            default:
                return [];
        }
    }

    private static IEnumerable<CostLine> TravelOf(PricingTerms terms, Job job)
    {
        var kilometres = job.Work.Sum(task => task.PaidKilometres);
        if (kilometres > 0 && terms.Travel is { } each)
        {
            var way = new PaidWay(kilometres, each);
            yield return new CostLine.Travel(way, way.Price);
        }

        if (job.Commission.Travel is { } amount)
        {
            yield return new CostLine.Travel(null, amount.Rounded());
        }
    }

    /// <summary>Which share of the cost is for delivery.</summary>
    private static decimal DeliveryOf(IReadOnlyList<CostLine> lines)
    {
        var all = lines.Sum(line => line.Amount.Amount);
        return all == 0 ? 0 : lines.Where(line => line is CostLine.Travel or CostLine.Labour { Share.Kind: LabourKind.Delivery }).Sum(line => line.Amount.Amount) / all;
    }

    private Money Sum(IEnumerable<CostLine> lines) => SumOf(lines, Reckoned.Currency);

    private static Money SumOf(IEnumerable<CostLine> lines, Currency currency) => Money.Sum(lines.Select(line => line.Amount), currency);
}
