namespace ShopDays.Work;

/// <summary>
/// Edges go dull by use: each lasts so many minutes of cutting, fewer in harder timber. Before the task that would use up
/// what is left of it, or that wants it keen, it is sharpened, all of its kind together.
/// </summary>
internal static class Sharpening
{
    private const string Ripping = "rip";
    private const string BeforeDull = "a saw is touched up before its teeth are through";

    /// <summary>Touches up the saw before the rip of the sawing out with which its teeth would be through; it comes to the job sharp.</summary>
    /// <returns>The sawing in turns, each from one touch-up to the next, the first without one.</returns>
    public static IReadOnlyList<SawTurn> AddTouchUps(Draft draft)
    {
        if (draft.Operations[Ripping].MethodIn(draft.Job).Edge is not { } saw)
        {
            return [];
        }

        List<int> sawing = [.. draft.Tasks.Where(task => EdgeOf(task)?.Name == saw.Name).Select(task => task.Id)];
        var turns = new List<SawTurn>();
        var begun = 0;
        int? touchUp = null;
        foreach (var (task, times) in Due(draft, saw.Name, usedAtFirst: 0))
        {
            var end = sawing.IndexOf(task.Id);
            turns.Add(new(touchUp, sawing[begun..end]));
            (begun, touchUp) = (end, Before(draft, task, saw, times));
        }

        return [.. turns, new(touchUp, sawing[begun..])];
    }

    /// <summary>
    /// Keeps the turns of the saw apart in a plan. An order of boards that suits other ends would leave two touch-ups side by
    /// side, and a dull saw before or after. A maker may well saw in another order: that passes nothing over.
    /// </summary>
    public static void KeepTurns(Draft draft, IReadOnlyList<SawTurn> turns)
    {
        foreach (var (before, turn) in turns.Zip(turns.Skip(1)))
        {
            var touchUp = turn.TouchUp!.Value;
            draft.Precedences.AddRange(before.Sawing.Select(id => new Precedence(id, touchUp, "the saw is touched up when it is dull") { IsForThePlan = true }));
            draft.Precedences.AddRange(turn.Sawing.Skip(1).Select(id => new Precedence(touchUp, id, BeforeDull) { IsForThePlan = true }));
        }
    }

    /// <summary>
    /// Hones edges at the start of the work that would find them dull, the first time of the first: as part of that work,
    /// so that no keen edge lies waiting for a week.
    /// </summary>
    public static void AddHonings(Draft draft)
    {
        var edges = draft.Tasks.Select(EdgeOf).OfType<CuttingEdge>().Where(edge => edge.IsHoned).Select(edge => (edge.Name, edge.Life)).Distinct().ToList();
        foreach (var (name, life) in edges)
        {
            foreach (var (task, times) in Due(draft, name, usedAtFirst: life))
            {
                HoneFirst(draft, task, times);
            }
        }
    }

    /// <summary>The tasks before which an edge is sharpened, in the order in which they are written, and how often each has it.</summary>
    private static List<(ShopTask Task, int Times)> Due(Draft draft, string edgeName, double usedAtFirst)
    {
        var due = new List<(ShopTask, int)>();
        var used = usedAtFirst;
        foreach (var task in draft.Tasks)
        {
            if (EdgeOf(task) is not { } edge || edge.Name != edgeName)
            {
                continue;
            }

            var use = CuttingEdge.UseBy((TaskTiming.ByOperation)task.Timing, IsGritty(draft, task));
            if (used + use <= edge.Life && !(edge.IsForKeenWork && used > edge.Life / 2))
            {
                used += use;
                continue;
            }

            // A task that outlasts an edge goes through several, each used as long as the others.
            var times = Math.Max(1, (int)Math.Ceiling(use / edge.Life));
            used = use / times;
            due.Add((task, times));
        }

        return due;
    }

    private static bool IsGritty(Draft draft, ShopTask task) =>
        draft.Layout.Boards.Any(board => board.Board.Name == task.Board && board.Board.Species.IsGritty)
        || task.Parts.SelectMany(name => Holders.PartsOf(name, draft.Job)).Any(part => part.Species.IsGritty);

    private static CuttingEdge? EdgeOf(ShopTask task) => (task.Timing as TaskTiming.ByOperation)?.Method.Edge;

    private static void HoneFirst(Draft draft, ShopTask task, int times)
    {
        var work = (TaskTiming.ByOperation)task.Timing;
        var edge = work.Method.Edge!;
        var timing = draft.TimingOf(new TaskSketch { Stage = task.Stage, Operation = edge.SharpenedBy, Name = edge.SharpenedBy, Quantity = edge.AtATime, Run = edge.AtATime, Batch = edge.AtATime });
        var honing = new Honing(edge.Name, edge.AtATime, times, (edge.HoningEach is { } each ? each * edge.AtATime : CentralTime.Of(timing)) * times);
        draft.Change(task with
        {
            Timing = work with { Besides = work.Besides + honing.Time },
            Honed = honing,
            Cautions = [.. task.Cautions.Concat(timing.Operation.Cautions).Concat(timing.Method.Cautions).Distinct(StringComparer.Ordinal)],
        });
    }

    // Sharpened when the wood for the next work is ready, so that it is not all done on the first day.
    private static int Before(Draft draft, ShopTask task, CuttingEdge saw, int times)
    {
        var id = draft.Add(new TaskSketch
        {
            Stage = task.Stage,
            Operation = saw.SharpenedBy,
            Name = $"touch up the {saw.Name}, before: {task.Name}",
            Quantity = times,
            Run = times,
            Batch = times,
        });
        draft.Before(draft.Precedences.Where(one => one.After == task.Id).Select(one => one.Before).ToList(), id, "sharpened for the work in hand");
        draft.Change(draft.Tasks[id] with { Sharpens = saw });
        draft.Before(id, task.Id, BeforeDull);
        return id;
    }
}
