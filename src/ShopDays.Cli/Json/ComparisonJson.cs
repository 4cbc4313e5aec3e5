using ShopDays.Choices;
using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Json;

/// <summary>The answer of <c>shopdays compare --json</c>.</summary>
internal static class ComparisonJson
{
    /// <summary>The comparison as an object to be written.</summary>
    public static object Of(ToldComparison told) => new
    {
        Job = told.Read.Job.Name,
        Currency = told.Read.Shop.Currency.Code,
        told.Risk,
        AsIs = WayOf(told, told.AsIs),
        Variants = told.Others.Select(other => WayOf(told, other)),
        SingleChangesTried = told.Suggested,
        told.IsBegun,
        told.Seed,
        Times = TimesJson.Of(told.Behind),
    };

    private static object WayOf(ToldComparison told, Tried way) => new
    {
        Variant = way.Name,
        Change = way.Text,
        CannotBeDone = way.Outcome is null ? way.Against : null,
        Outcome = way.Outcome is { } outcome ? OutcomeOf(outcome) : null,
        Difference = !ReferenceEquals(way, told.AsIs) && told.Of(way) is { } difference ? DifferenceOf(difference) : null,
    };

    private static object OutcomeOf(Outcome outcome) => new
    {
        outcome.Plan.ShopDays,
        P50 = JsonAnswer.Time(outcome.Forecast.P50),
        P80 = JsonAnswer.Time(outcome.Forecast.P80),
        HandsOnMinutes = EstimateJson.RangeOf(outcome.Estimate.HandsOn),
        HeavyMinutes = EstimateJson.RangeOf(outcome.Estimate.Heavy),
        DaysCalledIn = outcome.CalledIn,
        outcome.Boards,
        BoughtCubicMetres = outcome.Bought.CubicMetres,
        LostCubicMetres = outcome.Lost.CubicMetres,
        Timber = outcome.Money is null ? null : CostJson.Text(outcome.Timber.Total),
        Cost = outcome.Money is { } cost ? CostJson.Text(cost.Cost) : null,
        LeastPrice = outcome.Money is { } least ? CostJson.Text(least.Least) : null,
        BoundKind = outcome.Plan.LowerBound.Kind,
        LowerBound = JsonAnswer.Time(outcome.Plan.LowerBound.At),
    };

    private static object DifferenceOf(Difference difference) => new
    {
        difference.ShopDays,
        difference.DaysAtP50,
        difference.DaysAtP80,
        HandsOnMinutes = JsonAnswer.Minutes(difference.HandsOn),
        HeavyMinutes = JsonAnswer.Minutes(difference.Heavy),
        DaysCalledIn = difference.CalledIn,
        difference.Boards,
        Timber = difference.Timber is { } timber ? CostJson.Text(timber) : null,
        Cost = difference.Cost is { } cost ? CostJson.Text(cost) : null,
        LeastPrice = difference.Least is { } least ? CostJson.Text(least) : null,
        Hours = difference.Hours.Select(one => new { one.Operation, Before = one.Methods, After = one.OtherMethods, Minutes = JsonAnswer.Minutes(one.By) }),
        WaitMinutes = difference.Waits.TotalMinutes,
        difference.IsNone,
    };
}
