using CsCheck;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Prices;
using ShopDays.Tests.Layouts;

namespace ShopDays.Tests.Prices;

/// <summary>Prices made by chance: any currency, rate, margin, rounding, tax and stages.</summary>
internal static class AnyPrice
{
    public static readonly Gen<Currency> Currencies = Gen.Int[0, 2].Select(at => ((Currency[])[new("JPY", 0), new("USD", 2), new("KWD", 3)])[at]);

    private static Gen<RoundingRule?> Roundings(Currency currency) =>
        from step in Gen.Int[0, 4].Select(at => ((decimal[])[0, 1, 5, 10, 50])[at])
        from way in Gen.Enum<RoundingWay>()
        select step == 0 ? null : new RoundingRule(new(step, currency), way);

    private static readonly Gen<TaxRule> Taxes =
        from rate in Gen.Int[0, 2_500]
        from delivery in Gen.Int[-1, 2_500]
        from isIncluded in Gen.Bool
        select new TaxRule(Percent.FromPercent(rate / 100.0)) { OnDelivery = delivery < 0 ? null : Percent.FromPercent(delivery / 100.0), IsIncluded = isIncluded };

    public static readonly Gen<IReadOnlyList<StageShare>> Stages =
        from cuts in Gen.Int[1, 99].HashSet[0, 3]
        select (IReadOnlyList<StageShare>)[.. SharesOf([.. cuts.Order()]).Select((share, at) => new StageShare((StagePoint)at, share))];

    public static readonly Gen<PriceBuildUp> All =
        from currency in Currencies
        from perHour in Gen.Int[0, 9_000]
        from margin in Gen.Int[0, 60]
        from consumables in Gen.Int[-1, 20]
        from rounding in Roundings(currency)
        from tax in Taxes
        from stages in Stages
        from hours in Gen.Int[1, 6_000].Array[1, 5]
        from slack in Gen.Int[0, 3_000]
        from timber in Gen.Int[0, 900_000].Array[1, 3]
        from hardware in Gen.Int[0, 90_000].Array[0, 4]
        from kilometres in Gen.Int[0, 900]
        from given in Gen.Int[-9_000, 9_000]
        select Build(currency, perHour, margin, consumables, rounding, tax, stages, hours, slack, timber, hardware, kilometres, given);

    private static PriceBuildUp Build(
        Currency currency, int perHour, int margin, int consumables, RoundingRule? rounding, TaxRule tax, IReadOnlyList<StageShare> stages, int[] hours, int slack, int[] timber, int[] hardware, int kilometres, int given)
    {
        Money Units(int units) => new(units * currency.MinorUnit, currency);
        var terms = new PricingTerms
        {
            Rate = ShopRate.Given(Units(perHour)),
            Margin = Margin.Of(margin / 100m),
            Consumables = consumables < 0 ? new ConsumablesRule.Amount(Units(4_500)) : new ConsumablesRule.OfPrice(Percent.FromPercent(consumables / 10.0)),
            Rounding = rounding,
            Tax = tax,
            Stages = stages,
            Travel = new(Units(70), PriceUnit.Mile),
        };
        var bill = new TimberBill
        {
            Lines = [.. timber.Select(units => new TimberLine(Timber.Oak, 1, Volume.Zero, Volume.Zero, Units(units / 3), Units(units - (units / 3))))],
            Total = Units(timber.Sum()),
            Spares = [],
            AssumedBoardFoot = null,
        };
        var job = new Job
        {
            Name = "Anything",
            Start = new(2027, 3, 1),
            Work = [new() { Name = "deliver", PaidKilometres = kilometres }],
            Commission = new() { Hardware = [.. hardware.Select(units => new BoughtItem("knob", 3, Units(units)))], Price = given < 0 ? null : new(given, currency) },
        };
        LabourShare[] labour = [.. hours.Select((minutes, at) => new LabourShare((LabourKind)at, minutes))];
        return PriceBuildUp.Of(terms, labour, labour.Sum(share => share.Minutes) + slack, bill, job);
    }

    private static IEnumerable<decimal> SharesOf(int[] cuts) => cuts.Append(100).Zip(cuts.Prepend(0), (to, from) => (to - from) / 100m);
}
