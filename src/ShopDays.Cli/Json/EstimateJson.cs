using ShopDays.Cli.Files.Jobs;
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
    /// <param name="faces">What rougher hidden faces save.</param>
    /// <param name="remarks">What to know before work begins.</param>
    public static object Of(JobEstimate estimate, TimeRange? without, TimesBehind behind, FaceSavings faces, IReadOnlyList<Remark> remarks) => new
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
        Honing = new { Edges = estimate.EdgesHoned, Minutes = JsonAnswer.Minutes(estimate.Honing) },
        HiddenFaces = new
        {
            SavedMinutes = JsonAnswer.Minutes(faces.Already),
            Written = faces.Written.Select(FaceOf),
            Further = faces.Further.Select(one => new { Standard = SurfaceWords.Of(one.Standard), SavedMinutes = JsonAnswer.Minutes(one.Saved), Faces = one.Faces.Select(FaceOf) }),
        },
        estimate.Tasks,
        WaitMinutes = Math.Round(estimate.Waits.TotalMinutes, 2, MidpointRounding.AwayFromZero),
        WaitMinutesInNights = estimate.InNights is { } nights ? Math.Round(nights.Waits.TotalMinutes, 2, MidpointRounding.AwayFromZero) : (double?)null,
        estimate.Seed,
        estimate.Draws,
        behind.Entries,
        behind.PriorOnly,
        Times = TimesJson.Of(behind),
        Remarks = remarks.Select(RemarkJson.Of),
    };

    private static object FaceOf(HiddenFace face) => new { Part = face.Part.Name, Surface = SurfaceWords.Of(face.Surface), Standard = SurfaceWords.Of(face.Now) };

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
