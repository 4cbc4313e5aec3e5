using ShopDays.Cli.Phrases;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Json;

/// <summary>The answer of <c>shopdays estimate --json</c>.</summary>
internal static class EstimateJson
{
    /// <summary>The estimate as an object to be written.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="without">All hands-on time by the built-in rates alone, where the log has changed it.</param>
    /// <param name="behind">What the times come from.</param>
    /// <param name="remarks">What to know before work begins.</param>
    public static object Of(JobEstimate estimate, TimeRange? without, TimesBehind behind, IReadOnlyList<Remark> remarks) => new
    {
        HandsOnMinutes = RangeOf(estimate.HandsOn),
        PriorHandsOnMinutes = RangeOf(without ?? estimate.HandsOn),
        HeavyMinutes = RangeOf(estimate.Heavy),
        Spoiling = estimate.Spoiling is not { } spoiling ? null : new
        {
            Pieces = Math.Round(spoiling.Pieces, 4, MidpointRounding.AwayFromZero),
            spoiling.ChanceOfNone,
            MeanMinutes = JsonAnswer.Minutes(spoiling.Mean),
            AddsToP80Minutes = JsonAnswer.Minutes(spoiling.AddsToPromise),
        },
        Operations = estimate.Operations.Select(one => new
        {
            one.Operation,
            one.Method,
            Quantity = Math.Round(one.Quantity, 3, MidpointRounding.AwayFromZero),
            one.Unit,
            one.Tasks,
            P10 = JsonAnswer.Minutes(one.Time.P10),
            P50 = JsonAnswer.Minutes(one.Time.P50),
            P80 = JsonAnswer.Minutes(one.Time.P80),
            P90 = JsonAnswer.Minutes(one.Time.P90),
        }),
        estimate.Tasks,
        WaitMinutes = Math.Round(estimate.Waits.TotalMinutes, 2, MidpointRounding.AwayFromZero),
        estimate.Seed,
        estimate.Draws,
        behind.Entries,
        behind.PriorOnly,
        Times = TimesJson.Of(behind),
        Remarks = remarks.Select(RemarkJson.Of),
    };

    /// <summary>A range in minutes.</summary>
    public static object RangeOf(TimeRange range) => new
    {
        P10 = JsonAnswer.Minutes(range.P10),
        P50 = JsonAnswer.Minutes(range.P50),
        P80 = JsonAnswer.Minutes(range.P80),
        P90 = JsonAnswer.Minutes(range.P90),
        Mean = JsonAnswer.Minutes(range.Mean),
    };
}
