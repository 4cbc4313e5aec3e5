using System.Collections.Immutable;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Bounds;

/// <summary>A problem in which some of what might bind does not: what could be had with more of a thing, or without a date.</summary>
/// <param name="Problem">The problem.</param>
/// <param name="LeftOut">What there is no end of.</param>
/// <param name="Openings">The first minute in which each task may begin but for its own date.</param>
/// <param name="Begins">The first minute of each task's order.</param>
internal sealed record BoundRelief(ScheduleProblem Problem, ImmutableHashSet<BoundKind> LeftOut, int[] Openings, int[] Begins)
{
    /// <summary>All that might bind, each with its task where it is a date; what is the better given up comes first.</summary>
    public IEnumerable<(BoundKind Kind, int Task)> Limits()
    {
        var kinds = BoundLoad.Of(Problem).Select(load => load.Kind).ToHashSet();
        kinds.UnionWith(Problem.Tasks.Any(task => task.IsHeavy && task.Crew > 0) && Problem.HeavyPerDay.IsAny ? [BoundKind.HeavyWork] : []);
        kinds.UnionWith(Problem.Tasks.Any(task => task.IsNoisy) && Problem.Workers.Any(worker => worker.Quiet.Any()) ? [BoundKind.NoisyWork] : []);
        BoundKind[] things = [BoundKind.Things, BoundKind.NoisyWork, BoundKind.HeavyWork, BoundKind.WorkedHours];
        return
        [
            .. things.Where(kinds.Contains).Select(kind => (kind, -1)),
            .. Problem.Tasks.Any(task => task.Crew > 1) ? [(BoundKind.Together, -1)] : Array.Empty<(BoundKind, int)>(),
            .. Enumerable.Range(0, Problem.Tasks.Length).Where(task => Problem.Tasks[task].NotBefore > Openings[task]).Select(task => (BoundKind.Date, task)),
            .. Problem.Nights.AreCold ? [(BoundKind.ColdNights, -1)] : Array.Empty<(BoundKind, int)>(),
            (BoundKind.Waits, -1),
        ];
    }

    /// <summary>The bound.</summary>
    public Bound Bound() => ScheduleBound.Of(Problem, LeftOut);

    /// <summary>The same without one of its limits.</summary>
    public BoundRelief Without((BoundKind Kind, int Task) limit) => limit.Kind switch
    {
        BoundKind.Things or BoundKind.WorkedHours => this with { LeftOut = LeftOut.Add(limit.Kind) },
        BoundKind.HeavyWork => this with { Problem = Changed.HeavyPerDay(Problem, HeavyCaps.None), LeftOut = LeftOut.Add(limit.Kind) },
        BoundKind.NoisyWork => Each((task, _) => task with { IsNoisy = false }),

        // One who is always at hand helps with it.
        BoundKind.Together => Each((task, _) => task with { Crew = Math.Min(1, task.Crew) }),
        BoundKind.ColdNights => this with { Problem = Changed.WithoutCold(Problem) },
        BoundKind.Date => Each((task, number) => number == limit.Task ? task with { NotBefore = Openings[number], StartBy = CompiledCalendar.Never } : task),
        _ => WithoutWaits(),
    };

    private BoundRelief WithoutWaits()
    {
        var unlinked = Changed.Waits(Problem, static _ => 0);
        var problem = Changed.Tasks(unlinked, (task, number) => task with
        {
            // A date of its own is not a wait; what is waited for from the beginning is.
            NotBefore = task.NotBefore > Openings[number] ? task.NotBefore : Begins[number],
            Minutes = task.Crew == 0 ? 0 : task.Minutes,
            WaitAtEnd = 0,
            SetsAtEnd = CompiledNights.Nothing,
            DriesAfter = CompiledNights.Nothing,
            TooCold = CompiledNights.Nothing,
            Holds = [.. task.Holds.Select(hold => hold with { MinutesAfter = 0, MinutesBefore = 0, Sets = CompiledNights.Nothing })],
        });
        return this with { Problem = problem, Openings = Begins };
    }

    private BoundRelief Each(Func<CompiledTask, int, CompiledTask> change) => this with { Problem = Changed.Tasks(Problem, change) };
}
