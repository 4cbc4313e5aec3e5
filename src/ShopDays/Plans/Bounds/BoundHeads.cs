using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Bounds;

/// <summary>
/// How early each task can begin and end: after what comes before it, and not before all that comes before it has gone
/// through the hours and the things that there are.
/// </summary>
internal sealed class BoundHeads
{
    private readonly ScheduleProblem problem;
    private readonly IReadOnlyList<BoundLoad> loads;
    private readonly int[] ready;
    private readonly int[] start;
    private readonly int[] end;
    private readonly int[] heldBy;
    private readonly BoundCause?[] cause;

    /// <summary>Goes through the tasks in an order of work.</summary>
    public BoundHeads(ScheduleProblem problem, IReadOnlyList<BoundLoad> loads)
    {
        this.problem = problem;
        this.loads = loads;
        var tasks = problem.Tasks.Length;
        (ready, start, end, heldBy, cause) = (new int[tasks], new int[tasks], new int[tasks], new int[tasks], new BoundCause?[tasks]);
        Ancestors = new bool[tasks][];
        var fitter = new TaskFitter(problem, new ShopFloor(problem));
        var fit = new TaskFit();
        foreach (var task in problem.InOrder)
        {
            Await(task);
            var plan = problem.Tasks[task];

            // The least useful piece is left out: taking every minute that there is can then not be bettered.
            var split = new WorkSplit(plan.Minutes, plan.IsSplittable, LeastPiece: 1, WholeBelow: 1);
            var fits = ready[task] < CompiledCalendar.Never && fitter.TryFit(task, split, ready[task], CompiledCalendar.Never, ref fit);
            end[task] = fits ? fit.End : CompiledCalendar.Never;
            start[task] = !fits || plan.IsSplittable ? ready[task] : end[task] - plan.Minutes;
        }
    }

    /// <summary>Which tasks come before each.</summary>
    public bool[][] Ancestors { get; }

    /// <summary>The first minute in which each can begin.</summary>
    public ReadOnlySpan<int> Start => start;

    /// <summary>The first minute by which each can be done.</summary>
    public ReadOnlySpan<int> End => end;

    /// <summary>What a task waits for: the work before it if that is what holds it back, otherwise null.</summary>
    public BoundCause? CauseOf(int task) => cause[task];

    /// <summary>The task right before a task that holds it back; below 0 when none does.</summary>
    public int HeldBy(int task) => heldBy[task];

    private void Await(int task)
    {
        var own = new bool[problem.Tasks.Length];
        var leastLag = CompiledCalendar.Never;
        (ready[task], heldBy[task]) = (problem.Tasks[task].NotBefore, -1);
        foreach (var one in problem.Before(task))
        {
            leastLag = Math.Min(leastLag, one.Lag);
            own[one.Before] = true;
            for (var other = 0; other < own.Length; other++)
            {
                own[other] |= Ancestors[one.Before][other];
            }

            var over = one.Sets == CompiledNights.Nothing ? end[one.Before] + one.Lag : problem.ReadyAfter(one, end[one.Before]);
            if (over > ready[task])
            {
                (ready[task], heldBy[task]) = (Math.Min(CompiledCalendar.Never, over), one.Before);
            }
        }

        Ancestors[task] = own;
        foreach (var load in loads)
        {
            AwaitLoad(task, load, own, leastLag);
        }
    }

    /// <summary>What comes before and cannot begin before a minute has to go through what there is from then on.</summary>
    private void AwaitLoad(int task, BoundLoad load, bool[] before, int leastLag)
    {
        var work = 0L;
        var those = load.Tasks.Where(other => before[other] && load.Inside[other] > 0).OrderByDescending(other => start[other]).ToArray();
        for (var one = 0; one < those.Length && ready[task] < CompiledCalendar.Never; one++)
        {
            work += load.Inside[those[one]];
            var from = start[those[one]];
            if ((one + 1 < those.Length && start[those[one + 1]] == from) || load.Capacity.Between(from, ready[task] - leastLag) >= work)
            {
                continue;
            }

            var filled = load.Capacity.Filled(from, work);
            ready[task] = Math.Min(CompiledCalendar.Never, filled + leastLag);
            heldBy[task] = -1;
            cause[task] = new(load.Kind, [.. those[..(one + 1)]], from, filled, work, work);
        }
    }
}
