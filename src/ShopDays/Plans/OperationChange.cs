using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Plans;

/// <summary>Promised work of one operation that is still to do, and how its expected time has changed by what was learned.</summary>
/// <param name="Operation">The operation; for a task timed by a guess its name.</param>
/// <param name="Tasks">How many tasks of it are to do.</param>
/// <param name="Promised">What was expected of them.</param>
/// <param name="Now">What is expected of them now.</param>
public sealed record OperationChange(string Operation, int Tasks, WorkTime Promised, WorkTime Now)
{
    /// <summary>What they take more than was promised; below zero when less.</summary>
    public WorkTime Difference => Now - Promised;

    /// <summary>The operations whose promised tasks are still to do, the greatest difference first.</summary>
    public static IReadOnlyList<OperationChange> Of(JobProgress progress) =>
    [
        .. progress.Changes
            .Where(one => one is { State: TaskState.ToDo, Kind: ChangeKind.SameTask })
            .GroupBy(one => one.Operation ?? one.Task, StringComparer.Ordinal)
            .Select(group => new OperationChange(group.Key, group.Count(), JobProgress.Sum(group, one => one.Promised), JobProgress.Sum(group, one => one.Now)))
            .OrderByDescending(one => Math.Abs(one.Difference.Minutes)),
    ];
}
