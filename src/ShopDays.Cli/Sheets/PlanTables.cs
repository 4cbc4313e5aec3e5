using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Prices;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Sheets;

/// <summary>The tables of one plan: its parts, its work, its sessions, and the price of the job.</summary>
internal sealed record PlanTables
{
    // Three figures behind the point hold every 1/8 in and, beside the size in words, tell 1/16 and 1/32 apart.
    private const int LengthPlaces = 3;
    private const int MinutePlaces = 1;

    /// <summary>The shop.</summary>
    public required Shop Shop { get; init; }

    /// <summary>How lengths are written for this job.</summary>
    public required LengthFormat Format { get; init; }

    /// <summary>The piece.</summary>
    public required Job Job { get; init; }

    /// <summary>Where its parts come out of the boards.</summary>
    public required Layout Layout { get; init; }

    /// <summary>Its tasks, or those that are left.</summary>
    public required TaskGraph Graph { get; init; }

    /// <summary>The marks of its tasks.</summary>
    public required TaskMarks Marks { get; init; }

    /// <summary>The range of every task, each at the task's id.</summary>
    public required IReadOnlyList<TimeRange> TaskTimes { get; init; }

    /// <summary>When what is done.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The price of the job; null where the shop does not say what an hour has to earn.</summary>
    public PriceBuildUp? Price { get; init; }

    /// <summary>All of them, in the order of the workbook.</summary>
    public IReadOnlyList<SheetTable> All => [Parts(), Work(), Sessions(), .. Price is { } price ? (SheetTable[])[PriceTable.Of(price, new(Format))] : []];

    private string Unit => Format.IsInInches ? "in" : "mm";

    /// <summary>Every piece of every part, spares among them, with the board and the blank that it comes of; a panel has a row for each strip.</summary>
    private SheetTable Parts()
    {
        var placed = Layout.Boards.SelectMany(board => board.Blanks.SelectMany(blank => blank.Blank.Numbers, (blank, number) => (board.Board, blank.Blank, Number: number))).ToLookup(one => (one.Blank.Part.Name, one.Number));
        return new(
            "parts",
            [
                new("part", 22), new("number", 8), new("spare", 7), new($"length, {Unit}", 11), new($"width, {Unit}", 11), new($"thickness, {Unit}", 13),
                new("finished size", 26), new("timber", 18), new("board", 10), new("label", 24), new($"blank length, {Unit}", 16), new($"blank width, {Unit}", 16), new("blank size", 20),
            ],
            [
                .. from part in Job.Parts
                   from number in Enumerable.Range(1, part.Count + part.Spare)
                   from one in placed[(part.Name, number)].OrderBy(one => one.Blank.Strip).Select(one => ((Board Board, Blank Blank, int Number)?)one).DefaultIfEmpty()
                   select (IReadOnlyList<SheetCell>)
                   [
                       SheetCell.Of(part.Name), SheetCell.Of(number), SheetCell.Of(number > part.Count ? "yes" : "no"), Figure(part.Length), Figure(part.Width), Figure(part.Thickness),
                       SheetCell.Of(string.Join(" x ", ((Length[])[part.Length, part.Width, part.Thickness]).Select(Format.Write))), SheetCell.Of(part.Species.Name),
                       SheetCell.Of(one?.Board.Name), SheetCell.Of(one?.Blank.Label), one is { } there ? Figure(there.Blank.Length) : new SheetCell.Empty(), one is { } here ? Figure(here.Blank.Width) : new SheetCell.Empty(),
                       SheetCell.Of(one is { } blank ? $"{Format.Write(blank.Blank.Length)} x {Format.Write(blank.Blank.Width)}" : null),
                   ],
            ]);
    }

    /// <summary>Every task with its time, the session in which it begins and that in which it ends.</summary>
    private SheetTable Work()
    {
        var pieces = Plan.Sessions.SelectMany((session, place) => session.Work, (session, work) => (session.Session, Work: work)).ToLookup(one => one.Work.Task.Id);
        return new(
            "work",
            [
                new("mark", 7), new("task", 40), new("stage", 14), new("operation", 26), new("method", 12), new("quantity", 10), new("unit", 14),
                new("expected, min", 13), new("80 %, min", 10), new("90 %, min", 10), new("people", 8), new("heavy", 7), new("begins", 17), new("ends", 17), new("session", 17),
            ],
            [
                .. from task in Graph.Tasks
                   let time = TaskTimes[task.Id]
                   let timed = task.Timing as TaskTiming.ByOperation
                   let quantity = timed is null ? default : SawnWords.Of(timed.Quantity, timed.Operation.Unit.Name, Format)
                   let work = pieces[task.Id].OrderBy(one => one.Work.Start.ToInstant()).ToList()
                   orderby work.Count == 0, work.Count == 0 ? default : work[0].Work.Start.ToInstant(), task.Id
                   select (IReadOnlyList<SheetCell>)
                   [
                       SheetCell.Of(Marks.Of(task.Name)), SheetCell.Of(task.Name), SheetCell.Of(StageNames.Of(task.Stage)), SheetCell.Of(timed?.Operation.Name), SheetCell.Of(timed?.Method.Name),
                       timed is null ? new SheetCell.Empty() : SheetCell.Of(quantity.Quantity, 2), SheetCell.Of(timed is null ? null : quantity.Unit),
                       SheetCell.Of(time.P50.Minutes, MinutePlaces), SheetCell.Of(time.P80.Minutes, MinutePlaces), SheetCell.Of(time.P90.Minutes, MinutePlaces), SheetCell.Of(task.Crew), SheetCell.Of(task.WorkClass == WorkClass.Heavy ? "yes" : "no"),
                       work.Count == 0 ? new SheetCell.Empty() : SheetCell.Of(work[0].Work.Start), work.Count == 0 ? new SheetCell.Empty() : SheetCell.Of(work[^1].Work.End), work.Count == 0 ? new SheetCell.Empty() : SheetCell.Of(work[0].Session.Start),
                   ],
            ]);
    }

    /// <summary>Every stretch of work in its session.</summary>
    private SheetTable Sessions() => new(
        "plan",
        [
            new("date", 12), new("session begins", 17), new("session ends", 17), new("worker", 12), new("begins", 17), new("ends", 17), new("minutes", 9), new("mark", 7), new("task", 40), new("board", 10), new("done with it", 12),
        ],
        [
            .. from session in Plan.Sessions
               from work in session.Work.OrderBy(work => work.Start.ToInstant())
               select (IReadOnlyList<SheetCell>)
               [
                   SheetCell.Of(session.Session.Date), SheetCell.Of(session.Session.Start), SheetCell.Of(session.Session.End), SheetCell.Of(session.Session.Worker), SheetCell.Of(work.Start), SheetCell.Of(work.End),
                   SheetCell.Of(work.HandsOn.Minutes, MinutePlaces), SheetCell.Of(Marks.Of(work.Task.Name)), SheetCell.Of(work.Task.Name), SheetCell.Of(work.Task.Board), SheetCell.Of(work.IsLastPiece ? "yes" : "no"),
               ],
        ]);

    private SheetCell Figure(Length length) => Format.IsInInches
        ? SheetCell.Of(length.Millimetres / 25.4, LengthPlaces)
        : SheetCell.Of(length.Millimetres, LengthPlaces);
}
