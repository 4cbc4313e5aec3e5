using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Bench.Pages;
using ShopDays.Cli.Files;
using ShopDays.Cli.Paper;
using ShopDays.Cli.Phrases;
using ShopDays.Layouts;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Bench.Sheets;

/// <summary>Puts together what is to be known of a part or a board.</summary>
/// <param name="log">The log now.</param>
/// <param name="job">The job.</param>
/// <param name="drawings">The drawings of boards.</param>
internal sealed class PieceMaker(LogReading log, JobAtHand job, DrawingsKept drawings)
{
    private LengthFormat Format => job.Read.Located.Format;

    /// <summary>The sheet of a part.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The sheet; null where the job has no such part.</returns>
    public PieceSheet? OfPart(string name)
    {
        if (job.Read.Job.Parts.FirstOrDefault(part => part.Name == name) is not { } part)
        {
            return null;
        }

        List<BoardLayout> boards = [.. job.Workings.Layout.ToCut.Where(board => board.Blanks.Any(placed => placed.Blank.Part.Name == name))];
        return Sheet(
            part.Name,
            [
                $"{CountWords.Number(part.Count)} of {Wording.Sides(Format, part.Length, part.Width, part.Thickness)}, {part.Species.Name}",
                .. Movement.Of(job.Read.Job, job.Workings.Layout, job.Read.Waits)
                    .Where(one => one.Part.Name == name)
                    .Select(one => $"It may shrink by {MovementWords.By(one.Shrinks, Format)} and swell by {MovementWords.By(one.Swells, Format)} across the grain ({MovementWords.Made(one)})."),
            ],
            [.. job.Graph.Tasks.Where(task => task.Parts.Contains(name))],
            boards,
            [.. boards.Select(board => new Link(PieceAddress.OfBoard(job.Name, board.Board.Name), $"board {board.Board.Name}"))]);
    }

    /// <summary>The sheet of a board.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The sheet; null where the job has no such board, or it is sawn.</returns>
    public PieceSheet? OfBoard(string name)
    {
        if (job.Workings.Layout.ToCut.FirstOrDefault(board => board.Board.Name == name) is not { } board)
        {
            return null;
        }

        return Sheet(
            $"Board {name}",
            [],
            [.. job.Graph.Tasks.Where(task => task.Board == name)],
            [board],
            [.. board.Blanks.Select(placed => placed.Blank.Part.Name).Distinct().Select(part => new Link(PieceAddress.OfPart(job.Name, part), part))]);
    }

    private PieceSheet Sheet(string title, IReadOnlyList<string> about, List<ShopTask> tasks, List<BoardLayout> boards, IReadOnlyList<Link> others)
    {
        var next = tasks.FirstOrDefault(task => StateOf(task) != TaskState.Done);
        return new()
        {
            Title = title,
            Job = JobMaker.LinkTo(job),
            About = about,
            Next = next is null ? tasks.Count == 0 ? "" : "All work on it is done." : $"Next: {job.Marks.Of(next.Name)} {next.Name}{(next.Note.Length == 0 ? "" : $"; {next.Note}")}",
            Boards = [.. boards.Select((board, place) => SheetOf(board, place))],
            Work = new("Work on it", [new("work", false), new("as it stands", false), new("expected")], [.. tasks.Select(RowOf)]),
            Others = others,
            Cautions = tasks.Count == 0 ? [] : [.. Caution.For(tasks.Where(task => StateOf(task) != TaskState.Done), BuiltIn.Cautions).Select(caution => $"{caution.Text} ({caution.SaidBy})")],
        };
    }

    private BoardSheet SheetOf(BoardLayout board, int place)
    {
        var next = CutGroups.In(job.Graph, board).FirstOrDefault(one => StateOf(one.Task) != TaskState.Done);
        return new(
            $"Board {board.Board.Name}, {Wording.Sides(Format, board.Board.Length, board.Board.Width, board.Board.Thickness)}",
            drawings.Of(board, place, job.Read),
            next.Task is null ? "" : $"Next cut: {string.Join("; then ", next.Cuts.Select(InWords))}.",
            new(
                "Cuts in their order",
                [new("cut", false), new("what", false), new("where"), new("long"), new("comes free", false)],
                [.. board.Cuts.OrderBy(cut => cut.Order).Select(cut => (string[])[CountWords.Number(cut.Order), CutWords.Of(cut.Kind), $"{Format.Write(cut.At)} from the {CutWords.MeasuredFrom(cut.Kind)}", Format.Write(cut.Length), cut.Frees])]));
    }

    private string InWords(Cut cut) => $"{CutWords.Of(cut.Kind)} {Format.Write(cut.At)} from the {CutWords.MeasuredFrom(cut.Kind)} (cut {CountWords.Number(cut.Order)})";

    private IReadOnlyList<string> RowOf(ShopTask task) =>
    [
        $"{job.Marks.Of(task.Name)} {task.Name}",
        StateOf(task) switch { TaskState.Done => "done", TaskState.HalfDone => "half done", _ => "to do" },
        job.Ranges.TryGetValue(task.Name, out var range) && StateOf(task) != TaskState.Done ? WorkTimeText.Write(range.P50) : "",
    ];

    /// <summary>How far a task has come: the log may know of more than what was worked out.</summary>
    private TaskState StateOf(ShopTask task) => log.IsDone(job.Name, task.Name) ? TaskState.Done
        : job.Standing.Standing.Tasks[task.Id].State is TaskState.ToDo && log.Begun.Any(work => work.Job == job.Name && work.Task == task.Name) ? TaskState.HalfDone
        : job.Standing.Standing.Tasks[task.Id].State;
}
