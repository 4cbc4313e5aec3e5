using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans;

/// <summary>One task, or tasks that belong in one session, by themselves: what hours they need is asked of nothing else, cold nights neither.</summary>
internal static class LoneWork
{
    /// <summary>A problem of nothing but some tasks, which keep what comes between them.</summary>
    /// <param name="problem">The whole.</param>
    /// <param name="tasks">The numbers of the tasks.</param>
    /// <param name="change">What is otherwise about them.</param>
    /// <param name="heavyPerDay">Their caps on heavy work.</param>
    public static ScheduleProblem Of(ScheduleProblem problem, IReadOnlyList<int> tasks, Func<CompiledTask, CompiledTask> change, HeavyCaps heavyPerDay) =>
        Changed.Only(problem, tasks, (task, _) => change(task) with { TooCold = CompiledNights.Nothing }, heavyPerDay);

    /// <summary>A problem of nothing but one task.</summary>
    public static ScheduleProblem Of(ScheduleProblem problem, CompiledTask task) =>
        new([task with { Order = 0, TooCold = CompiledNights.Nothing }], [], problem.Workers, problem.Capacities, problem.HeavyPerDay, problem.Changeover, clock: problem.Clock, nights: problem.Nights);

    /// <summary>Whether all of it can be done in an empty shop.</summary>
    public static bool CanBeDone(ScheduleProblem lone) =>
        new ScheduleGenerator(lone).Generate([.. Enumerable.Range(0, lone.Blocks)], lone.Minutes.AsSpan(), new(lone.Tasks.Length, lone.Orders.Length));
}
