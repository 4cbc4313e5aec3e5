using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Plans;

namespace ShopDays.Cli.Phrases;

/// <summary>The tasks that have come equally far, added up.</summary>
/// <param name="Name">How far.</param>
/// <param name="Tasks">How many.</param>
/// <param name="Promised">What was expected of them.</param>
/// <param name="Spent">What they have taken so far.</param>
/// <param name="Left">What is expected of the rest of them.</param>
internal sealed record StateRow(string Name, int Tasks, WorkTime Promised, WorkTime Spent, WorkTime Left)
{
    /// <summary>What they take in all.</summary>
    public WorkTime Now => Spent + Left;

    /// <summary>What they take more than was promised; below zero when less.</summary>
    public WorkTime Difference => Now - Promised;

    /// <summary>Done, half done and to do, what is not in the job any more where there is any, and all together.</summary>
    public static IReadOnlyList<StateRow> Of(JobProgress progress)
    {
        List<TaskChange> inJob = [.. progress.Changes.Where(one => one.Kind is ChangeKind.SameTask or ChangeKind.CameIn)];
        List<TaskChange> gone = [.. progress.Changes.Where(one => one.Kind is not (ChangeKind.SameTask or ChangeKind.CameIn))];
        return
        [
            Sum("done", inJob.Where(one => one.State == TaskState.Done)),
            Sum("half done", inJob.Where(one => one.State == TaskState.HalfDone)),
            Sum("to do", inJob.Where(one => one.State == TaskState.ToDo)),
            .. gone.Count == 0 ? (StateRow[])[] : [Sum("not in the job any more", gone)],
            Sum("all", progress.Changes),
        ];
    }

    private static StateRow Sum(string name, IEnumerable<TaskChange> changes)
    {
        List<TaskChange> all = [.. changes];
        return new(name, all.Count, JobProgress.Sum(all, one => one.Promised), JobProgress.Sum(all, one => one.Spent), JobProgress.Sum(all, one => one.Left));
    }
}
