using NodaTime;
using ShopDays.Plans;

namespace ShopDays.Cli.Json;

/// <summary>What of a promise is for pieces that may be spoiled, for programs.</summary>
internal static class SpoilingJson
{
    /// <summary>As an object to be written.</summary>
    /// <param name="spoiling">What is known of it.</param>
    /// <param name="notes">The same in words.</param>
    public static object Of(SpoilingForecast spoiling, IReadOnlyList<string> notes) => new
    {
        Pieces = Rounded(spoiling.Expected),
        ChanceOfNone = Rounded(spoiling.ChanceOfNone),
        ChanceOfWaiting = Rounded(spoiling.ChanceOfWaiting),
        P80Without = JsonAnswer.Time(spoiling.P80Without),
        DaysInPromise = spoiling.Later is { } later ? Days(later) : (double?)null,
        DaysInBadLuck = spoiling.LaterWithBadLuck is { } unlucky ? Days(unlucky) : (double?)null,
        Asked = spoiling.Asked.Select(one => new { one.Part, one.Spares }),
        AskedSaveWaits = Rounded(spoiling.AskedSaveWaits),
        Spares = spoiling.Spares.Select(spare => new
        {
            spare.Part,
            SavedWaits = Rounded(spare.SavedWaits),
            HandsOnP80Minutes = JsonAnswer.Minutes(spare.HandsOn),
            DaysEarlier = Days(spare.Earlier),
            DaysEarlierOnAverage = Days(spare.EarlierOnAverage),
        }),
        Notes = notes,
    };

    private static double Days(Duration time) => Math.Round(time.TotalDays, 3, MidpointRounding.AwayFromZero);

    private static double Rounded(double share) => Math.Round(share, 4, MidpointRounding.AwayFromZero);
}
