using ShopDays.Cli.Paper.Setting;
using ShopDays.Plans;

namespace ShopDays.Cli.Paper.Days;

/// <summary>What a day sheet says of waits: those over by then or during the day, and those still running.</summary>
internal static class DayWaits
{
    /// <summary>The notes; none where nothing waits.</summary>
    public static IEnumerable<Block> Of(PlanPaper plan, PaperDay day)
    {
        var previous = plan.Plan.Sessions.Where(one => one.Work.Count > 0 && one.Session.Date < day.Date).Select(one => one.Session.Date).DefaultIfEmpty(day.Date.PlusDays(-1)).Max();
        // What ended on a day between two shop days is news on the second.
        var over = plan.Plan.Waits.Where(wait => wait.End.Date <= day.Date && wait.End.Date > previous).OrderBy(wait => wait.End.ToInstant()).ToList();
        var running = plan.Plan.Waits.Where(wait => wait.Start.Date <= day.Date && wait.End.Date > day.Date).OrderBy(wait => wait.End.ToInstant()).ToList();
        if (over.Count == 0 && running.Count == 0) yield break;
        yield return new NoteBox(
            "Waits",
            [
                .. over.Select(wait => $"Over {(wait.End.Date == day.Date ? "at " + Wording.At(wait.End) : "since " + Wording.When(wait.End))}: {Words(wait)}"),
                .. running.Select(wait => $"Until {Wording.When(wait.End)}: {Words(wait)}"),
            ],
            TypeScale.Body);
    }

    private static string Words(PlannedWait wait) => wait.After is { } after ? $"{wait.Reason} (after {after.Name})" : wait.Reason;
}
