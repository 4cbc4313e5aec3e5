using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Logbook;

/// <summary>How far a job has come by its log.</summary>
/// <param name="Tasks">Every task of the job, at its id.</param>
/// <param name="Strays">Time logged for tasks that the job does not have, by name in ordinal order.</param>
public sealed record JobStanding(IReadOnlyList<TaskStanding> Tasks, IReadOnlyList<StrayWork> Strays)
{
    /// <summary>All time of the job's log, whatever it was for.</summary>
    public WorkTime Spent => Tasks.Select(one => one.Spent).Concat(Strays.Select(one => one.Spent)).Aggregate(WorkTime.Zero, (sum, one) => sum + one);

    /// <summary>Whether anything was done yet.</summary>
    public bool IsBegun => Strays.Count > 0 || Tasks.Any(one => one.State != TaskState.ToDo);

    /// <summary>The tasks that have come so far.</summary>
    public IReadOnlyList<TaskStanding> In(TaskState state) => [.. Tasks.Where(one => one.State == state)];

    /// <summary>Reads off a job's log how far its tasks have come.</summary>
    /// <param name="graph">The job's tasks.</param>
    /// <param name="log">The job's entries, in any order; those of other jobs left out.</param>
    /// <param name="running">Work of the job that goes on now.</param>
    public static JobStanding Of(TaskGraph graph, IEnumerable<LogEntry> log, IEnumerable<RunningWork>? running = null)
    {
        var entries = WorkOrder.Of(log).ToLookup(entry => entry.Task, StringComparer.Ordinal);
        var going = (running ?? []).ToLookup(one => one.Task, StringComparer.Ordinal);
        var known = graph.Tasks.Select(task => task.Name).ToHashSet(StringComparer.Ordinal);
        return new(
            [.. graph.Tasks.Select(task => StandingOf(task, [.. entries[task.Name]], [.. going[task.Name]]))],
            [
                .. entries.Select(one => one.Key).Union(going.Select(one => one.Key), StringComparer.Ordinal)
                    .Where(name => !known.Contains(name))
                    .Order(StringComparer.Ordinal)
                    .Select(name => StrayOf(name, [.. entries[name]], [.. going[name]])),
            ]);
    }

    private static TaskStanding StandingOf(ShopTask task, List<LogEntry> entries, List<RunningWork> running)
    {
        if (entries.Count + running.Count == 0)
        {
            return new() { Task = task, State = TaskState.ToDo };
        }

        var finishing = entries.Where(entry => entry.Finished).ToList();
        return new()
        {
            Task = task,
            State = finishing.Count > 0 ? TaskState.Done : TaskState.HalfDone,
            Spent = SpentOn(entries, running),
            QuantityDone = finishing.Count == 0 && running.Count == 0 ? QuantityOf(task, entries) : null,
            Last = finishing.Count > 0 ? Latest(finishing.Select(entry => entry.On)) : Latest([.. entries.Select(entry => entry.On), .. running.Select(one => one.On)]),
        };
    }

    private static StrayWork StrayOf(string name, List<LogEntry> entries, List<RunningWork> running) => new(
        name,
        entries.Select(entry => entry.Work?.Operation).LastOrDefault(operation => operation is not null),
        SpentOn(entries, running),
        entries.Exists(entry => entry.Finished),
        Latest([.. entries.Select(entry => entry.On), .. running.Select(one => one.On)]));

    private static WorkTime SpentOn(List<LogEntry> entries, List<RunningWork> running) =>
        entries.Select(entry => entry.Took).Concat(running.Select(one => one.SoFar)).Aggregate(WorkTime.Zero, (sum, one) => sum + one);

    /// <summary>Entries say a quantity in a unit; one that was logged as another operation says nothing of this one.</summary>
    private static double? QuantityOf(ShopTask task, List<LogEntry> entries)
    {
        if (task.Timing is not TaskTiming.ByOperation by || !entries.TrueForAll(entry => IsOf(entry.Work, by.Operation)))
        {
            return null;
        }

        // More than the whole and still not finished: then the figures do not say how much is left.
        var done = entries.Sum(entry => entry.Work!.Quantity);
        return done < by.Quantity ? done : null;
    }

    private static bool IsOf(LoggedWork? work, Operation operation) =>
        work is not null
        && string.Equals(work.Operation, operation.Name, StringComparison.Ordinal)
        && string.Equals(work.Unit, operation.Unit.Name, StringComparison.Ordinal);

    /// <summary>The latest; of one date one whose moment is known counts before one whose moment is not, which may have been later.</summary>
    private static WorkedOn Latest(IEnumerable<WorkedOn> days) =>
        days.OrderBy(day => day.Date).ThenBy(day => day.Ended is null).ThenBy(day => day.Ended).Last();
}
