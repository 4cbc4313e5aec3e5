using System.Collections.Immutable;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Bounds;

/// <summary>What keeps a job from finishing sooner.</summary>
internal enum BoundKind
{
    /// <summary>Heavy work, so much a day.</summary>
    HeavyWork,

    /// <summary>All the work in all the hours.</summary>
    WorkedHours,

    /// <summary>Noisy work in the hours that are not quiet.</summary>
    NoisyWork,

    /// <summary>Clamps, the bench, the floor: things that are kept by the clock.</summary>
    Things,

    /// <summary>The longest way of work and waits.</summary>
    Waits,

    /// <summary>An appointment, or a date before which a task does not begin.</summary>
    Date,

    /// <summary>Those whom a task takes at the same time, and who are seldom there together.</summary>
    Together,

    /// <summary>Nights in which glue and coats set slowly, or not at all.</summary>
    ColdNights,
}

/// <summary>What all tasks together ask of something of which there is only so much.</summary>
internal sealed class BoundLoad
{
    private BoundLoad(BoundKind kind, BoundCapacity capacity, long[] inside, int[] before, int[] after, long[] whole)
    {
        (Kind, Capacity, Inside, Before, After, Whole) = (kind, capacity, inside, before, after, whole);
        Tasks = [.. Enumerable.Range(0, whole.Length).Where(task => whole[task] > 0)];
    }

    /// <summary>What it is.</summary>
    public BoundKind Kind { get; }

    /// <summary>How much there is.</summary>
    public BoundCapacity Capacity { get; }

    /// <summary>What each task takes from its beginning to its end at least.</summary>
    public long[] Inside { get; }

    /// <summary>For how many minutes before its beginning each may take some.</summary>
    public int[] Before { get; }

    /// <summary>For how many minutes after its end each may take some.</summary>
    public int[] After { get; }

    /// <summary>What each takes altogether at least.</summary>
    public long[] Whole { get; }

    /// <summary>The tasks that take any.</summary>
    public ImmutableArray<int> Tasks { get; }

    /// <summary>All that there is only so much of, and that is asked for.</summary>
    public static IEnumerable<BoundLoad> Of(ScheduleProblem problem)
    {
        BoundLoad[] loads =
        [
            OfWork(problem, BoundKind.HeavyWork, task => task.IsHeavy, () => new BoundHours(problem, perDay: problem.HeavyPerDay)),
            OfWork(problem, BoundKind.WorkedHours, _ => true, () => new BoundHours(problem)),
            OfWork(problem, BoundKind.NoisyWork, task => task.IsNoisy, () => new BoundHours(problem, isNoisy: true)),
            .. Rows(problem).Select(row => OfThings(problem, row.First, row.Last)),
        ];
        return loads.Where(load => load.Tasks.Length > 1);
    }

    private static BoundLoad OfWork(ScheduleProblem problem, BoundKind kind, Func<CompiledTask, bool> counts, Func<BoundHours> hours)
    {
        var work = problem.Tasks.Select(task => counts(task) ? (long)task.Minutes * task.Crew : 0).ToArray();
        return new(kind, hours(), work, new int[work.Length], new int[work.Length], work);
    }

    /// <summary>The rows of things that some task takes any of, and the places.</summary>
    private static IEnumerable<(int First, int Last)> Rows(ScheduleProblem problem) => problem.Tasks
        .SelectMany(task => task.Holds.Select(hold => (hold.First, hold.Last)).Concat(task.Place < 0 ? [] : [(task.Place, task.Place)]))
        .Distinct();

    /// <summary>What lies within a row of things cannot be taken from elsewhere.</summary>
    private static BoundLoad OfThings(ScheduleProblem problem, int first, int last)
    {
        var tasks = problem.Tasks.Length;
        var (inside, whole, before, after) = (new long[tasks], new long[tasks], new int[tasks], new int[tasks]);
        for (var task = 0; task < tasks; task++)
        {
            var plan = problem.Tasks[task];
            if (plan.Place >= first && plan.Place <= last && plan.Crew > 0)
            {
                inside[task] += plan.Minutes;
                whole[task] += plan.Minutes;
            }

            foreach (var hold in plan.Holds)
            {
                if (hold.First < first || hold.Last > last)
                {
                    continue;
                }

                inside[task] += (long)hold.Count * plan.Minutes;
                whole[task] += (long)hold.Count * ((long)hold.MinutesBefore + plan.Minutes + hold.MinutesAfter);
                before[task] = Math.Max(before[task], hold.MinutesBefore);
                after[task] = Math.Max(after[task], hold.MinutesAfter);
            }
        }

        return new(BoundKind.Things, new ClockCapacity(Enumerable.Range(first, last - first + 1).Sum(thing => problem.Capacities[thing])), inside, before, after, whole);
    }
}
