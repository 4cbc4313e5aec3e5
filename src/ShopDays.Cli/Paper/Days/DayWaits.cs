using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;

namespace ShopDays.Cli.Paper.Days;

/// <summary>What a day sheet says of waits: those over by then or during the day, and those still running.</summary>
internal static class DayWaits
{
    private const int MostNamed = 8;

    /// <summary>The note, a line for each wait or for several that have one reason; null where nothing waits.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="day">The day.</param>
    /// <param name="style">How it is set.</param>
    /// <param name="width">The width of the page between its margins where each line is cut to it: what it does not hold of a reason stands on the list of waits. Null where lines may be broken.</param>
    public static NoteBox? Of(PlanPaper plan, PaperDay day, TextStyle style, double? width)
    {
        var previous = plan.Plan.Sessions.Where(one => one.Work.Count > 0 && one.Session.Date < day.Date).Select(one => one.Session.Date).DefaultIfEmpty(day.Date.PlusDays(-1)).Max();
        // What ended on a day between two shop days is news on the second.
        var over = plan.Plan.Waits.Where(wait => wait.End.Date <= day.Date && wait.End.Date > previous).OrderBy(wait => wait.End.ToInstant()).ToList();
        var running = plan.Plan.Waits.Where(wait => wait.Start.Date <= day.Date && wait.End.Date > day.Date).OrderBy(wait => wait.End.ToInstant()).ToList();
        string[] lines =
        [
            .. Lines(wait => wait.Awaited is null ? "Wait over" : wait.Awaited.One.Decision.IsDrying ? "Should be dry" : "Should have come", over, Fitted, end => end.Date == day.Date ? "at " + DateWords.At(end) : "since " + DateWords.When(end)),
            .. Lines(wait => wait.Awaited is null ? "Wait until" : "Likely until", running, Fitted, DateWords.When),
        ];
        return lines.Length == 0 ? null : new NoteBox("", lines, style) { Padding = 1.5 };

        string Fitted(string line) => width is { } most ? style.Shortened(line, most - 20) : line;
    }

    // Those for one reason share a line, the boards that rest after sawing, say.
    private static IEnumerable<string> Lines(Func<PlannedWait, string> head, List<PlannedWait> waits, Func<string, string> fitted, Func<ZonedDateTime, string> words) => waits
        .GroupBy(wait => wait.Reason, StringComparer.Ordinal)
        .Select(group => group.ToList() is [var only] ? fitted($"{head(only)} {words(only.End)}{After(only)}: {group.Key}") : $"{head(group.First())} {Several([.. group], words)}: {group.Key}");

    // All their ends: of one date only the hour is said again, and of very many only when, not after what.
    private static string Several(List<PlannedWait> waits, Func<ZonedDateTime, string> words) => string.Join(", ", waits.Select((wait, place) =>
        (place > 0 && waits[place - 1].End.Date == wait.End.Date ? DateWords.At(wait.End) : words(wait.End)) + (waits.Count > MostNamed ? "" : After(wait))));

    // A reason that names the thing itself needs no task to say what it is about.
    private static string After(PlannedWait wait) =>
        wait.AfterWhat is { } after && !wait.Reason.StartsWith(after[(after.LastIndexOf(": ", StringComparison.Ordinal) is var colon and >= 0 ? colon + 2 : 0)..], StringComparison.Ordinal)
            ? $" ({after})"
            : "";
}
