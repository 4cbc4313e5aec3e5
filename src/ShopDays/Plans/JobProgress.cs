using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Where a job stands against what was promised.</summary>
/// <remarks>
/// Each task counts with the time as likely more as less, as it stands on the sheets, so that tasks can be compared and
/// added up; the whole of what is left has a range of its own, whose middle is a little above that sum.
/// </remarks>
public sealed record JobProgress
{
    /// <summary>What was promised.</summary>
    public required Promise Promise { get; init; }

    /// <summary>How far the tasks have come.</summary>
    public required JobStanding Standing { get; init; }

    /// <summary>What is left to do.</summary>
    public required RemainingWork Left { get; init; }

    /// <summary>The range of the hands-on time that is left; null when nothing is.</summary>
    public required TimeRange? LeftTime { get; init; }

    /// <summary>Every task that was promised, is in the job or is in its log, once: those of the job in its order, then the others.</summary>
    public required IReadOnlyList<TaskChange> Changes { get; init; }

    /// <summary>Time that was logged for the job.</summary>
    public WorkTime Spent => Standing.Spent;

    /// <summary>What was expected of all tasks.</summary>
    public WorkTime Promised => Sum(Changes, one => one.Promised);

    /// <summary>What all tasks take as things stand.</summary>
    public WorkTime Now => Sum(Changes, one => one.Now);

    /// <summary>What the job takes more than was promised, below zero when less: the sum of all tasks' differences.</summary>
    public WorkTime Difference => Sum(Changes, one => one.Difference);

    /// <summary>Whether nothing is left to do.</summary>
    public bool IsDone => Left.Graph.Tasks.Count == 0;

    /// <summary>Adds up some tasks.</summary>
    public static WorkTime Sum(IEnumerable<TaskChange> changes, Func<TaskChange, WorkTime> what) => changes.Select(what).Aggregate(WorkTime.Zero, (sum, one) => sum + one);

    /// <summary>Compares.</summary>
    /// <param name="promise">What was promised.</param>
    /// <param name="standing">How far the tasks have come.</param>
    /// <param name="left">What is left of them.</param>
    /// <param name="model">The rates as they are known now.</param>
    /// <param name="draws">Drawn times of what is left.</param>
    /// <param name="sawnBoards">The boards that are recorded as sawn, by name.</param>
    /// <exception cref="ArgumentException">The draws are of other tasks.</exception>
    public static JobProgress Of(Promise promise, JobStanding standing, RemainingWork left, RateModel model, TimeDraws draws, IReadOnlySet<string> sawnBoards)
    {
        var leftOf = left.LikelyTimes(model, draws);
        var promised = promise.Tasks.ToDictionary(task => task.Name, StringComparer.Ordinal);
        var strays = standing.Strays.ToDictionary(stray => stray.Task, StringComparer.Ordinal);
        var known = standing.Tasks.Select(one => one.Task.Name).ToHashSet(StringComparer.Ordinal);
        return new()
        {
            Promise = promise,
            Standing = standing,
            Left = left,
            LeftTime = left.Graph.Tasks.Count == 0 ? null : draws.OfAll(),
            Changes =
            [
                .. standing.Tasks.Select(one => InTheJob(one, promised.GetValueOrDefault(one.Task.Name), leftOf.GetValueOrDefault(one.Task.Id, WorkTime.Zero))),
                .. promise.Tasks.Where(task => !known.Contains(task.Name)).Select(task => WentOut(task, strays.GetValueOrDefault(task.Name), sawnBoards)),
                .. standing.Strays.Where(stray => !promised.ContainsKey(stray.Task)).Select(OnlyLogged),
            ],
        };
    }

    private static TaskChange InTheJob(TaskStanding standing, PromisedTask? promised, WorkTime left) => new()
    {
        Task = standing.Task.Name,
        Operation = (standing.Task.Timing as TaskTiming.ByOperation)?.Operation.Name,
        Kind = promised is null ? ChangeKind.CameIn : ChangeKind.SameTask,
        State = standing.State,
        Promised = promised?.Expected ?? WorkTime.Zero,
        Spent = standing.Spent,
        Left = left,
    };

    private static TaskChange WentOut(PromisedTask promised, StrayWork? logged, IReadOnlySet<string> sawnBoards)
    {
        var isSawn = logged is null && promised.Board is { } board && sawnBoards.Contains(board);
        return new()
        {
            Task = promised.Name,
            Operation = promised.Operation,
            Kind = isSawn ? ChangeKind.SawnUnlogged : ChangeKind.WentOut,
            State = TaskState.Done,
            Promised = promised.Expected,
            Spent = isSawn ? promised.Expected : logged?.Spent ?? WorkTime.Zero,
            Left = WorkTime.Zero,
        };
    }

    private static TaskChange OnlyLogged(StrayWork stray) => new()
    {
        Task = stray.Task,
        Operation = stray.Operation,
        Kind = ChangeKind.OnlyLogged,
        State = TaskState.Done,
        Promised = WorkTime.Zero,
        Spent = stray.Spent,
        Left = WorkTime.Zero,
    };
}
