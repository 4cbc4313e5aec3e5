using NodaTime;
using ShopDays.Plans;
using ShopDays.Times;

namespace ShopDays.Cli.Phrases;

/// <summary>What may be spoiled, in words, the same wherever they are read.</summary>
internal static class SpoilingWords
{
    /// <summary>Less is told in hours, and is no day of a date.</summary>
    private static readonly Duration HalfADay = Duration.FromHours(12);

    /// <summary>What it adds to an estimate.</summary>
    public static string Of(SpoilingTime spoiling) =>
        $"Spoiling is in it: {Often(spoiling.Pieces)}; in {ChanceWords.Of(spoiling.ChanceOfNone)} of the courses nothing is. To come as far again takes {HourWords.Of(spoiling.Mean)} on average and adds {HourWords.Of(spoiling.AddsToPromise)} to the promise.";

    /// <summary>What it adds to a plan's promise.</summary>
    public static string Of(SpoilingForecast spoiling) =>
        $"Spoiled work is reckoned with: {Often(spoiling.Expected)}, and in {ChanceWords.Of(spoiling.ChanceOfNone)} of the courses nothing is. {Promise(spoiling)}{Waits(spoiling)}{Asked(spoiling)}";

    /// <summary>Which spare blank would help; empty where none is known of.</summary>
    public static string Spares(SpoilingForecast spoiling)
    {
        if (spoiling.Spares is not [var best, ..])
        {
            return "";
        }

        var waits = spoiling.Spares.MaxBy(one => one.SavedWaits)!;
        var saves = waits.SavedWaits > 0 ? $" A wait for new timber would be spared most often by one of {waits.Part}, in {ChanceWords.Of(waits.SavedWaits)} of the courses." : "";
        return (best.Earlier, best.EarlierOnAverage) switch
        {
            var (earlier, _) when earlier >= HalfADay => $"A spare blank of {best.Part} would help most: the promise would be {Days(earlier)} earlier.{saves}",
            var (_, earlier) when earlier > Duration.FromHours(1) => $"A spare blank of {best.Part} would help most: the job would end {Days(earlier)} earlier on average, the promise where it is.{saves}",
            _ => $"No single spare blank would bring the finish forward, its own sawing and planing reckoned.{saves}",
        };
    }

    private static string Often(double pieces) => pieces switch
    {
        < 2.0 / 3 => $"about one piece, glue-up or coat if the job were done {CountWords.Number((int)Math.Round(1 / pieces, MidpointRounding.AwayFromZero))} times",
        < 1.5 => "about one piece, glue-up or coat each time that such a job is done",
        _ => $"about {CountWords.Number((int)Math.Round(pieces, MidpointRounding.AwayFromZero))} pieces, glue-ups or coats each time that such a job is done",
    };

    private static string Promise(SpoilingForecast spoiling) => (spoiling.Later ?? Duration.Zero, spoiling.LaterWithBadLuck ?? Duration.Zero) switch
    {
        var (later, _) when later >= HalfADay => $"{Days(later)} of the promise {(later < HalfADay * 3 ? "is" : "are")} for them.",
        var (_, later) when later >= HalfADay => $"The promise has no day for them, the date with bad luck {Days(later)}.",
        _ => "They make no date a day later.",
    };

    private static string Asked(SpoilingForecast spoiling) => spoiling.Asked.Count == 0
        ? ""
        : $" Spare blanks are laid out: {string.Join(", ", spoiling.Asked.Select(one => one.Spares == 1 ? one.Part : $"{one.Part}, {CountWords.Number(one.Spares)}"))}; {SavedByThem(spoiling.AskedSaveWaits)}.";

    private static string SavedByThem(double waits) => waits > 0 ? $"in {ChanceWords.Of(waits)} of the courses they spare a wait for new timber" : "what is spoiled of these is sawn and planed already";

    private static string Waits(SpoilingForecast spoiling) =>
        spoiling.ChanceOfWaiting > 0 ? $" In {ChanceWords.Of(spoiling.ChanceOfWaiting)} of the courses nothing that is left yields the piece again, and new timber is waited for." : "";

    private static string Days(Duration time) => time < HalfADay
        ? CountWords.Of((int)Math.Max(1, Math.Round(time.TotalHours, MidpointRounding.AwayFromZero)), "hour")
        : CountWords.Of((int)Math.Max(1, Math.Round(time.TotalDays, MidpointRounding.AwayFromZero)), "day");
}
