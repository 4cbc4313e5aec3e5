using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Plans;

namespace ShopDays.Cli.Paper.Days;

/// <summary>The work of one session as rows to be ticked, with room for the times that it took.</summary>
internal static class SessionTable
{
    private const double Expected = 7.6;

    // Room for a mark of three letters, set smaller than the row; the few longer ones are set smaller still.
    private const double MarkLetters = 2.25;

    // Times of day and expected times need more room in larger letters; what a pencil writes does not.
    private static Column[] ColumnsOf(TextStyle style, bool named) =>
    [
        Column.Fixed("", 13),
        Column.Fixed(named ? "Mark" : "", MarkLetters * style.Size),
        Column.Fixed(named ? "At" : "", 3.1 * style.Size),
        Column.Shared(named ? "Work" : ""),
        Column.Fixed(named ? "Expect" : "", Expected * style.Size),
        Column.Fixed(named ? "Start" : "", 32),
        Column.Fixed(named ? "Stop" : "", 32),
        Column.Fixed(named ? "Took" : "", 32),
    ];

    /// <summary>The hours of a session, whose they are where more than one works, and what of them goes to opening and sweeping up.</summary>
    public static string HoursOf(PlannedSession session, bool nameWorker)
    {
        var one = session.Session;
        List<string> said = [$"{DateWords.At(one.Start)} to {DateWords.At(one.End)}"];
        if (nameWorker)
        {
            said.Add(one.Worker);
        }

        if (one.WorkStart != one.Start)
        {
            said.Add($"open up {Minutes(one.Start, one.WorkStart)}");
        }

        if (one.WorkEnd != one.End)
        {
            said.Add($"sweep up from {DateWords.At(one.WorkEnd)}");
        }

        return string.Join(", ", said);
    }

    /// <summary>The table.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="session">The session.</param>
    /// <param name="style">How the rows are set: as large as the day's work lets them be.</param>
    /// <param name="padding">White above and below the text of a row, in points.</param>
    /// <param name="named">Whether the names of the columns stand above it.</param>
    public static Table Of(PlanPaper plan, PlannedSession session, TextStyle style, double padding, bool named)
    {
        Row[] rows = [.. session.Work.OrderBy(work => work.Start.ToInstant()).Select(work => RowOf(plan, work, style))];
        return new Table(ColumnsOf(style, named), rows, style) { Distance = 5.5, Padding = padding, After = 6 };
    }

    private static string Minutes(NodaTime.ZonedDateTime from, NodaTime.ZonedDateTime to) =>
        WorkTimeText.Write(WorkTime.FromMinutes((to - from).TotalMinutes));

    private static Row RowOf(PlanPaper plan, PlannedWork work, TextStyle style)
    {
        var (range, mark) = (plan.TaskTimes[work.Task.Id], plan.Marks.Of(work.Task.Name));
        // Read at arm's length too, but after the name of the work.
        var remark = (style with { Size = Math.Max(8.5, style.Size - 2) }).In(0.15);
        var share = WorkWords.ShareOf(work, range);
        return Row.Of(
            new TickCell(),
            new TextCell(mark) { Style = remark.Fitted(mark, MarkLetters * style.Size, 6) },
            new TextCell(DateWords.ClockAt(work.Start)) { Note = ClockChange.IsSecondPass(work.Start) ? "second time" : null, NoteStyle = remark },
            new TextCell(work.Task.Name) { Note = WorkWords.NoteOf(work, range.P50), NoteStyle = remark, NoteRunsOn = true },
            ExpectationOf(work.HandsOn, range, share, style, remark),
            new PencilCell(),
            new PencilCell(),
            new PencilCell());
    }

    /// <summary>The time and its range: beside each other where that is short, else one below the other.</summary>
    private static TextCell ExpectationOf(WorkTime time, Times.TimeRange range, double share, TextStyle style, TextStyle remark)
    {
        var (likely, span) = (WorkTimeText.Write(time), Wording.Span(range, share));
        var inOneLine = $"{likely} ({span.Replace(" min", "", StringComparison.Ordinal).Replace(" to ", "–", StringComparison.Ordinal)})";
        return style.WidthOf(inOneLine) <= Expected * style.Size
            ? new TextCell(inOneLine)
            : new TextCell(likely) { Note = span, NoteStyle = remark };
    }
}
