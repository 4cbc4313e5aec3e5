using ShopDays.Cli.Bench.Pages;
using ShopDays.Cli.Phrases;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Bench.Sheets;

/// <summary>The way to an entry of the log, in a list of them.</summary>
internal static class EntryLinks
{
    /// <summary>What was done, and beside it for which job, how long and when.</summary>
    public static Link Of(LogEntry entry) => new(
        FormattableString.Invariant($"/log/{entry.Id.Number}"),
        LogPhrases.Plain(entry.Job is null ? LogPhrases.Whole(entry) : entry.Task))
    {
        Besides = $"{entry.Id}: {(entry.Job is { } job ? LogPhrases.Plain(job) + ", " : "")}{WorkTimeText.Write(entry.Took)}{(entry.Finished || entry.Job is null ? "" : ", half done")}, {DateWords.Of(entry.On.Date)}",
    };
}
