using System.Diagnostics;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>One thing that made a difference between what a job takes and what was promised.</summary>
/// <param name="Mark">The task's mark; empty for one that is not in the job, or for several.</param>
/// <param name="What">What it is: a task, or an operation that is still to do.</param>
/// <param name="Why">What it takes, beside what was promised.</param>
/// <param name="Difference">What it takes more; below zero when less.</param>
internal sealed record DifferenceRow(string Mark, string What, string Why, WorkTime Difference)
{
    /// <summary>
    /// All of them, the greatest first: each task for itself, but promised tasks that are still to do by their operations.
    /// They add up to the job's difference; those without any are not among them.
    /// </summary>
    /// <param name="progress">The job.</param>
    /// <param name="marks">The marks of its tasks.</param>
    public static IReadOnlyList<DifferenceRow> Of(JobProgress progress, TaskMarks marks)
    {
        var inJob = progress.Standing.Tasks.Select(one => one.Task.Name).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. progress.Changes
                .Where(one => one is not { State: TaskState.ToDo, Kind: ChangeKind.SameTask })
                .Select(one => new DifferenceRow(inJob.Contains(one.Task) ? marks.Of(one.Task) : "", one.Task, WhyOf(one), one.Difference))
                .Concat(OperationChange.Of(progress).Select(one => new DifferenceRow("", one.Operation, WhyOf(one), one.Difference)))
                .Where(row => row.Difference != WorkTime.Zero)
                .OrderByDescending(row => Math.Abs(row.Difference.Minutes))
                .ThenBy(row => row.What, StringComparer.Ordinal),
        ];
    }

    private static string WhyOf(TaskChange one) => (one.Kind, one.State) switch
    {
        (ChangeKind.SameTask, TaskState.Done) => $"took {HourWords.Of(one.Spent)}, promised {HourWords.Of(one.Promised)}",
        (ChangeKind.SameTask, _) => $"half done: {HourWords.Of(one.Spent)} so far and about {HourWords.Of(one.Left)} left, promised {HourWords.Of(one.Promised)}",
        (ChangeKind.CameIn, TaskState.ToDo) => $"came in since, about {HourWords.Of(one.Left)}",
        (ChangeKind.CameIn, _) => $"came in since, takes {HourWords.Of(one.Now)}",
        (ChangeKind.WentOut, _) when one.Spent == WorkTime.Zero => $"not in the job any more, promised {HourWords.Of(one.Promised)}",
        (ChangeKind.WentOut, _) => $"took {HourWords.Of(one.Spent)}, promised {HourWords.Of(one.Promised)}; not in the job any more",
        (ChangeKind.SawnUnlogged, _) => "sawn, no time logged",
        (ChangeKind.OnlyLogged, _) => $"logged {HourWords.Of(one.Spent)}; neither promised nor in the job",
        _ => throw new UnreachableException(),
    };

    private static string WhyOf(OperationChange one) => $"{CountWords.Of(one.Tasks, "task")} to do, now {HourWords.Of(one.Now)}, promised {HourWords.Of(one.Promised)}";
}
