using System.Globalization;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Measures;
using ShopDays.Plans;

namespace ShopDays.Cli.Paper.Days;

/// <summary>The work of one session as rows to be ticked, with room for the times that it took.</summary>
internal static class SessionTable
{
    // Read at arm's length too, but after the name of the work.
    private static readonly TextStyle Remark = TypeScale.Body.In(0.15);

    private static readonly Column[] Columns =
    [
        Column.Fixed("", 14),
        Column.Fixed("At", 38),
        Column.Shared("Work"),
        Column.Fixed("Expect", 90),
        Column.Fixed("Start", 42),
        Column.Fixed("Stop", 42),
        Column.Fixed("Took", 42),
    ];

    /// <summary>The hours of a session, and whose they are where more than one works.</summary>
    public static string HoursOf(PlannedSession session, bool nameWorker)
    {
        var hours = $"{Wording.At(session.Session.Start)} to {Wording.At(session.Session.End)}";
        return nameWorker ? $"{hours}, {session.Session.Worker}" : hours;
    }

    /// <summary>The table.</summary>
    public static Table Of(PlanPaper plan, PlannedSession session)
    {
        var one = session.Session;
        List<Row> rows = [];
        if (one.WorkStart != one.Start)
            rows.Add(Round("open up", one.Start, WorkTime.FromMinutes((one.WorkStart - one.Start).TotalMinutes)));
        rows.AddRange(session.Work.OrderBy(work => work.Start.ToInstant()).Select(work => RowOf(plan, work)));
        if (one.WorkEnd != one.End)
            rows.Add(Round("sweep up", one.WorkEnd, WorkTime.FromMinutes((one.End - one.WorkEnd).TotalMinutes)));
        return new Table(Columns, rows, TypeScale.Bench);
    }

    private static Row Round(string what, NodaTime.ZonedDateTime at, WorkTime time) => Row.Of(
        new TickCell(),
        Wording.At(at),
        new TextCell(what) { Style = TypeScale.Bench.In(0.25) },
        new TextCell(Wording.Time(time)) { Style = TypeScale.Bench.In(0.25) },
        "",
        "",
        "");

    private static Row RowOf(PlanPaper plan, PlannedWork work)
    {
        var range = plan.TaskTimes[work.Task.Id];
        // A piece of a task that is split has its share of the task's range.
        var whole = work.IsFirstPiece && work.IsLastPiece;
        var share = whole || range.P50 <= WorkTime.Zero ? 1 : Math.Min(1, work.Minutes / range.P50);
        return Row.Of(
            new TickCell(),
            Wording.At(work.Start),
            new TextCell(work.Task.Name) { Note = NoteOf(work, range.P50), NoteStyle = Remark },
            new TextCell(Wording.Time(work.Minutes)) { Note = Wording.Span(range, share), NoteStyle = Remark },
            new PencilCell(),
            new PencilCell(),
            new PencilCell());
    }

    private static string? NoteOf(PlannedWork work, WorkTime all)
    {
        List<string> notes = [];
        if (PieceOf(work) is { } piece) notes.Add(string.Create(CultureInfo.InvariantCulture, $"{piece}, of {Wording.Time(all)} in all"));
        // What the name of the task says already is not said again.
        if (work.Task.Board is { } board && !Says(work.Task.Name, board)) notes.Add($"board {board}");
        string[] parts = [.. work.Task.Parts.Where(part => !Says(work.Task.Name, part))];
        if (parts.Length > 0) notes.Add(Wording.Names(parts, 4));
        if (work.Task.Crew > 1) notes.Add($"{Wording.Number(work.Task.Crew)} people");
        if (work.Task.Note.Length > 0) notes.Add(work.Task.Note);
        return notes.Count == 0 ? null : string.Join("; ", notes);
    }

    private static bool Says(string name, string word) => name.Contains(word, StringComparison.OrdinalIgnoreCase);

    private static string? PieceOf(PlannedWork work) => (work.IsFirstPiece, work.IsLastPiece) switch
    {
        (true, true) => null,
        (true, false) => "begins",
        (false, false) => "goes on",
        (false, true) => "ends",
    };
}
