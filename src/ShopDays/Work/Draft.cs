using System.Globalization;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>The order of work while it is being written: tasks, precedences, and how far each piece has come.</summary>
internal sealed class Draft(Job job, Layout layout, OperationCatalogue operations, WaitTable waits, ShopLimits limits, WorkTime longestSession)
{
    private readonly List<ShopTask> tasks = [];
    private readonly HashSet<string> names = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<Piece, IReadOnlyList<int>> last = [];
    private readonly Dictionary<Piece, BoardLayout> sawn = [];
    private readonly HashSet<(string What, string To)> once = [];
    private readonly Dictionary<string, Setting> settings = new(StringComparer.Ordinal);

    public Job Job { get; } = job;

    public Layout Layout { get; } = layout;

    public OperationCatalogue Operations { get; } = operations;

    public WaitTable Waits { get; } = waits;

    public ShopLimits Limits { get; } = limits;

    public WorkTime LongestSession { get; } = longestSession;

    public IReadOnlyList<ShopTask> Tasks => tasks;

    public List<Precedence> Precedences { get; } = [];

    public List<Awaited> Awaited { get; } = [];

    public List<ClosingWait> ClosingWaits { get; } = [];

    public List<SawnRest> SawnRests { get; } = [];

    public List<Remark> Remarks { get; } = [];

    /// <summary>The task of each free task that is written already.</summary>
    public Dictionary<string, int> FreeTasks { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>A glue in the shop's nights; null in a heated shop.</summary>
    public Setting? SettingOf(Adhesive glue) => Limits.Nights is { } nights ? Known(glue.Name, () => Setting.Of(glue, Waits, nights)) : null;

    /// <summary>A coat in the shop's nights; null in a heated shop.</summary>
    public Setting? SettingOf(Finish finish) => Limits.Nights is { } nights ? Known(finish.Name, () => Setting.Of(finish, Waits, nights)) : null;

    public TaskTiming.ByOperation TimingOf(TaskSketch sketch)
    {
        var operation = Operations[sketch.Operation];
        var method = operation.MethodIn(Job);
        return new TaskTiming.ByOperation
        {
            Operation = operation,
            Method = method,
            Quantity = sketch.Quantity,
            Setups = method.IsSetUpOnce ? 1 : sketch.Each,
            Run = sketch.Run,
            Batch = sketch.Batch,
            MorePassesFollow = sketch.MorePassesFollow,
            Covariates = sketch.Covariates,
            Factor = sketch.Factor,
            Besides = sketch.Besides,
        };
    }

    /// <summary>
    /// How long a run of an operation may be. Work that ends in its session gets 60 % of the longest, since one time in
    /// twenty it takes nearly twice its central time, and no more than 75 minutes (common practice, no source); other
    /// work the whole session, heavy work no more than a day allows.
    /// </summary>
    public WorkTime RunLimit(string operation)
    {
        var method = Operations[operation].MethodIn(Job);
        var minutes = method.IsSplittable ? LongestSession.Minutes : Math.Min(LongestSession.Minutes * 0.6, 75);
        return WorkTime.FromMinutes(method.WorkClass == WorkClass.Heavy ? Math.Min(minutes, Limits.MostHeavyPerDay.Minutes) : minutes);
    }

    /// <summary>Writes a task down; its id.</summary>
    public int Add(TaskSketch sketch)
    {
        var timing = TimingOf(sketch);
        var method = timing.Method;
        var isHeavy = Limits.IsForTwo(sketch.Lift);
        string[] lifting = isHeavy ? ["heavy lifts"] : [];
        var cautions = timing.Operation.Cautions.Concat(method.Cautions).Concat(sketch.Cautions).Concat(lifting).ToList();
        if (Limits.Workers < 2 && (isHeavy || cautions.Contains("machines")))
        {
            cautions.Add("working alone");
        }

        return Add(id => new ShopTask
        {
            Id = id,
            Name = Unique(sketch.Name),
            Stage = sketch.Stage,
            Timing = timing,
            Parts = sketch.Parts,
            Board = sketch.Board,
            WorkClass = method.WorkClass,
            IsNoisy = method.IsNoisy,
            IsDusty = timing.Operation.IsDustyBy(method),
            DustFreeAfter = sketch.DustFreeAfter,
            Sets = sketch.Sets,
            SetsFor = sketch.SetsFor,
            IsSplittable = method.IsSplittable,
            LeastUseful = method.LeastUseful,
            Crew = Math.Max(method.Crew, sketch.Crew),
            Clamps = sketch.Clamps,
            Floor = sketch.Floor,
            Lift = sketch.Lift,
            Cautions = [.. cautions.Distinct(StringComparer.Ordinal)],
            Note = NoteOf(sketch),
        });
    }

    private Setting Known(string name, Func<Setting> make) => settings.TryGetValue(name, out var known) ? known : settings[name] = make();

    private static string NoteOf(TaskSketch sketch)
    {
        List<int> inRoom = [.. ShopNights.AllMonths.Where(month => sketch.Sets?.Nights.IsWarmRoomUsed(month) == true)];
        var room = inRoom.Count == 0 ? "" : inRoom.Count == ShopNights.AllMonths.Count ? "overnight in the warm room" : $"overnight in the warm room ({MonthText.Runs(inRoom)})";
        return string.Join("; ", new[] { room, sketch.Note }.Where(text => text.Length > 0));
    }

    /// <summary>Writes down a task made by hand; its id.</summary>
    public int Add(Func<int, ShopTask> make)
    {
        tasks.Add(make(tasks.Count));
        return tasks.Count - 1;
    }

    /// <summary>Puts a task in the place of the one with its id.</summary>
    public void Change(ShopTask task) => tasks[task.Id] = task;

    /// <summary>Whether something is done to a part for the first time: a part that two glue-ups share is not treated twice.</summary>
    public bool IsFirst(string what, string part) => once.Add((what, part));

    public string Unique(string name)
    {
        var unique = name;
        for (var number = 2; !names.Add(unique); number++)
        {
            unique = name + " (" + number.ToString(CultureInfo.InvariantCulture) + ")";
        }

        return unique;
    }

    public void Before(int first, int later, string reason, Wait? wait = null, bool sameSession = false) =>
        Precedences.Add(new Precedence(first, later, reason, wait, sameSession));

    public void Before(IEnumerable<int> first, int later, string reason, Wait? wait = null)
    {
        foreach (var one in first.Distinct())
        {
            Before(one, later, reason, wait);
        }
    }

    /// <summary>Says that some pieces came of a board that is sawn already.</summary>
    public void CameSawn(IEnumerable<Piece> pieces, BoardLayout board)
    {
        foreach (var piece in pieces)
        {
            sawn[piece] = board;
        }
    }

    /// <summary>A rest after the saw of some pieces before a task: of those whose boards are sawn already it runs from the sawing, which is no task any more.</summary>
    public void RestBefore(IReadOnlyList<Piece> pieces, int later, Wait rest) => SawnRests.AddRange(
        pieces.Where(sawn.ContainsKey).Select(piece => sawn[piece]).DistinctBy(board => board.Board.Name).Select(board => new SawnRest(board.Board.Name, board.SawnOn, rest, later)));

    /// <summary>Runs of like pieces follow each other; the first follows none.</summary>
    public void AfterTheRunBefore(int? before, int id)
    {
        if (before is { } earlier)
        {
            Before(earlier, id, "one after the other, as the pieces lie");
        }
    }

    /// <summary>The last tasks of some pieces: what is done next to them comes after these.</summary>
    public IReadOnlyList<int> LastOf(IEnumerable<Piece> pieces) =>
        [.. pieces.SelectMany(piece => last.GetValueOrDefault(piece) ?? []).Distinct()];

    /// <summary>The last tasks of all pieces of a part, or of a glue-up.</summary>
    public IReadOnlyList<int> LastOf(string name) => LastOf(last.Keys.Where(piece => piece.Of == name).ToList());

    /// <summary>The pieces of a name that are there, in order.</summary>
    public IReadOnlyList<Piece> PiecesOf(string name) =>
        [.. last.Keys.Where(piece => piece.Of == name).OrderBy(piece => piece.Number).ThenBy(piece => piece.Strip)];

    /// <summary>Says which tasks some pieces have come through last.</summary>
    public void CameTo(IEnumerable<Piece> pieces, params IReadOnlyList<int> ids)
    {
        foreach (var piece in pieces)
        {
            last[piece] = ids;
        }
    }

    /// <summary>Says which pieces a task works on, beside those that it is known to work on.</summary>
    public void WorksOn(int id, IEnumerable<Piece> pieces) => Change(tasks[id] with { Pieces = [.. tasks[id].Pieces.Union(pieces)] });

    /// <summary>Forgets strips that have become a panel.</summary>
    public void Forget(IEnumerable<Piece> pieces)
    {
        foreach (var piece in pieces)
        {
            last.Remove(piece);
        }
    }

    /// <summary>Adds a task for a glue-up, a part or a panel after what was last, and moves them on to it.</summary>
    public int Then(IReadOnlyList<Piece> pieces, TaskSketch sketch, string reason, Wait? wait = null)
    {
        var id = Add(sketch);
        Before(LastOf(pieces), id, reason, wait);
        CameTo(pieces, id);
        WorksOn(id, pieces);
        return id;
    }
}
