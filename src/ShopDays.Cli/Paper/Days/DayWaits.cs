using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;

namespace ShopDays.Cli.Paper.Days;

/// <summary>What a day sheet says of waits: those over by then or during the day, and those still running.</summary>
internal static class DayWaits
{
    /// <summary>The notes; none where nothing waits.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="day">The day.</param>
    /// <param name="style">How they are set.</param>
    public static IEnumerable<Block> Of(PlanPaper plan, PaperDay day, TextStyle style)
    {
        var previous = plan.Plan.Sessions.Where(one => one.Work.Count > 0 && one.Session.Date < day.Date).Select(one => one.Session.Date).DefaultIfEmpty(day.Date.PlusDays(-1)).Max();
        // What ended on a day between two shop days is news on the second.
        var over = plan.Plan.Waits.Where(wait => wait.End.Date <= day.Date && wait.End.Date > previous).OrderBy(wait => wait.End.ToInstant()).ToList();
        var running = plan.Plan.Waits.Where(wait => wait.Start.Date <= day.Date && wait.End.Date > day.Date).OrderBy(wait => wait.End.ToInstant()).ToList();
        if (over.Count == 0 && running.Count == 0)
        {
            yield break;
        }

        yield return new NoteBox(
            "Waits",
            [
                .. Lines("Over", over, end => end.Date == day.Date ? "at " + DateWords.At(end) : "since " + DateWords.When(end)),
                .. Lines("Until", running, DateWords.When),
            ],
            style);
    }

    // Waits for one reason share a line: the boards that rest after sawing, say.
    private static IEnumerable<string> Lines(string head, IEnumerable<PlannedWait> waits, Func<ZonedDateTime, string> words) => waits
        .GroupBy(wait => wait.Reason, StringComparer.Ordinal)
        .Select(group => $"{head} {string.Join(", ", group.Select(wait => wait.After is { } after ? $"{words(wait.End)} (after {after.Name})" : words(wait.End)))}: {group.Key}");
}
