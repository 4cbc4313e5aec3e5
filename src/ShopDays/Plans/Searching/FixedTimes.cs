using System.Collections.Immutable;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>
/// Looks for orders of work with which tasks that are fixed for a time begin then: of nothing but each of them and what must
/// come before it, which is little enough to be searched well. One seed gives one answer.
/// </summary>
internal sealed class FixedTimes
{
    /// <summary>Schedules for one of them.</summary>
    private const int Budget = 2000;

    private readonly ScheduleProblem problem;
    private readonly int seed;

    /// <summary>Looks at a problem.</summary>
    public FixedTimes(ScheduleProblem problem, int seed)
    {
        (this.problem, this.seed) = (problem, seed);
        Tasks = [.. Enumerable.Range(0, problem.Tasks.Length).Where(task => problem.Tasks[task].StartBy < CompiledCalendar.Never).OrderBy(task => problem.Tasks[task].StartBy)];
    }

    /// <summary>The tasks that are fixed for a time, in the order of their times.</summary>
    public ImmutableArray<int> Tasks { get; }

    /// <summary>The first minute that was found in which a task can begin, whatever it is fixed for.</summary>
    /// <param name="task">The task.</param>
    /// <param name="kept">Others that are fixed for a time and begin then.</param>
    /// <returns>The minute; null when there is none, or the others were not found to begin in time.</returns>
    public int? Earliest(int task, IReadOnlyList<int> kept)
    {
        var settled = new Begun([], 0);
        var before = new List<int>();
        foreach (var one in kept)
        {
            if (With(one, settled, before) is not { } begun || begun.Start >= problem.Tasks[one].StartBy)
            {
                return null;
            }

            settled = begun;
            before.Add(one);
        }

        return With(task, settled, before)?.Start;
    }

    /// <summary>The blocks of all that is fixed for a time and of what must come before it, in an order in which as much of it as was found begins in time.</summary>
    public IReadOnlyList<int> Order()
    {
        var settled = new Begun([], 0);
        var kept = new List<int>();
        foreach (var task in Tasks)
        {
            if (With(task, settled, kept) is { } begun && begun.Start < problem.Tasks[task].StartBy)
            {
                settled = begun;
                kept.Add(task);
            }
        }

        return settled.Blocks;
    }

    /// <summary>The blocks of some tasks with all that must come before them, each task's in turn.</summary>
    public static IReadOnlyList<int> UpTo(ScheduleProblem problem, IReadOnlyList<int> tasks)
    {
        var met = new HashSet<int>();
        var order = new List<int>();
        foreach (var block in tasks.Select(problem.BlockOf))
        {
            Add(block);
        }

        return order;

        void Add(int block)
        {
            if (!met.Add(block))
            {
                return;
            }

            foreach (var before in problem.BlocksBefore(block).ToArray())
            {
                Add(before);
            }

            order.Add(block);
        }
    }

    /// <summary>Another task beside some that begin in time: as early as is found, whatever it is fixed for.</summary>
    private Begun? With(int task, Begun settled, List<int> kept)
    {
        var all = UpTo(problem, [.. kept, task]);
        List<IReadOnlyList<int>> known = [[.. settled.Blocks, .. all.Except(settled.Blocks)]];
        if (kept.Count > 0 && With(task, new([], 0), []) is { } alone)
        {
            known.Add([.. settled.Blocks, .. alone.Blocks.Except(settled.Blocks)]);
            known.Add([.. alone.Blocks, .. settled.Blocks.Except(alone.Blocks)]);
        }

        var numbers = all.Order().SelectMany(block => problem.Members(block).ToArray()).ToList();
        var part = Part(numbers, task);
        var plan = problem.Tasks[task];
        var search = new ScheduleSearch(part, seed)
        {
            Known = [.. known.Select(order => order.Select(block => part.BlockOf(numbers.IndexOf(problem.Members(block)[0]))).ToArray())],
            IsForTheFinishAlone = true,
            NoneBefore = Math.Min(CompiledCalendar.Never, plan.StartBy - 1L + plan.Minutes),
        };
        if (search.Find(Budget) is not { } found)
        {
            return null;
        }

        var schedule = new Schedule(part.Tasks.Length, part.Orders.Length);
        new ScheduleGenerator(part).Generate(found, part.Minutes.AsSpan(), schedule);
        return new([.. found.Select(block => problem.BlockOf(numbers[part.Members(block)[0]]))], schedule.Start[numbers.IndexOf(task)]);
    }

    /// <summary>A problem of nothing but some tasks, in the shop as it stands; one of them may begin at any later time.</summary>
    private ScheduleProblem Part(List<int> tasks, int lifted) =>
        Changed.Only(problem, tasks, (task, number) => number == lifted ? task with { StartBy = CompiledCalendar.Never } : task, problem.HeavyPerDay, problem.Standing);

    /// <summary>Blocks of the problem in their order, and when the last of the fixed tasks among them begins.</summary>
    private sealed record Begun(IReadOnlyList<int> Blocks, int Start);
}
