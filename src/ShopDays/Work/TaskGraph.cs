using NodaTime;

namespace ShopDays.Work;

/// <summary>A wait at the end of the job: the piece is not finished before it is over.</summary>
/// <param name="After">The id of the task with whose end it begins.</param>
/// <param name="Wait">The wait.</param>
public sealed record ClosingWait(int After, Wait Wait);

/// <summary>A rest of what came of a board that is recorded as sawn: it began with the sawing, which is no task of the job any more.</summary>
/// <param name="Board">The board.</param>
/// <param name="SawnOn">The date on which it was sawn; null where that is not written down.</param>
/// <param name="Wait">The rest.</param>
/// <param name="Holds">The id of the task before which it has to be over.</param>
public sealed record SawnRest(string Board, LocalDate? SawnOn, Wait Wait, int Holds);

/// <summary>All the tasks of a job and what must come before what. Checked when made: no cycle, no unknown task.</summary>
public sealed class TaskGraph
{
    /// <summary>Makes a graph.</summary>
    /// <exception cref="ArgumentException">Ids are not 0, 1, 2 and so on, a precedence or something awaited names no task, or the order goes round.</exception>
    public TaskGraph(IReadOnlyList<ShopTask> tasks, IReadOnlyList<Precedence> precedences, IReadOnlyList<Awaited> awaited, IReadOnlyList<ClosingWait> closingWaits)
    {
        Tasks = tasks;
        Precedences = precedences;
        Awaited = awaited;
        ClosingWaits = closingWaits;
        for (var id = 0; id < tasks.Count; id++)
        {
            if (tasks[id].Id != id)
            {
                throw new ArgumentException($"task '{tasks[id].Name}' stands at {id} but has the id {tasks[id].Id}", nameof(tasks));
            }
        }

        if (precedences.FirstOrDefault(one => (uint)one.Before >= (uint)tasks.Count || (uint)one.After >= (uint)tasks.Count) is { } stray)
        {
            throw new ArgumentException($"a precedence goes from {stray.Before} to {stray.After}, and there are {tasks.Count} tasks", nameof(precedences));
        }

        for (var place = 0; place < awaited.Count; place++)
        {
            var one = awaited[place];
            if (one.After.Concat(one.Holds).Any(id => (uint)id >= (uint)tasks.Count) || one.AfterOthers.Any(other => (uint)other >= (uint)place))
            {
                throw new ArgumentException($"'{one.Name}' waits for, or holds back, what is not there", nameof(awaited));
            }
        }

        if (TaskCycle.Find(tasks.Count, precedences) is { } cycle)
        {
            throw new ArgumentException("the order of work goes round: " + string.Join(", ", cycle.Select(id => tasks[id].Name)), nameof(precedences));
        }
    }

    /// <summary>The tasks; each stands at its id.</summary>
    public IReadOnlyList<ShopTask> Tasks { get; }

    /// <summary>What must come before what.</summary>
    public IReadOnlyList<Precedence> Precedences { get; }

    /// <summary>What is waited for from others; of what waits for another, that stands before it.</summary>
    public IReadOnlyList<Awaited> Awaited { get; }

    /// <summary>Waits that end the job.</summary>
    public IReadOnlyList<ClosingWait> ClosingWaits { get; }

    /// <summary>Rests of what came of boards that are sawn already.</summary>
    public IReadOnlyList<SawnRest> SawnRests { get; init; } = [];

    /// <summary>The same job with what was known on a date of what others owe.</summary>
    /// <param name="date">The date.</param>
    public TaskGraph AsKnownOn(LocalDate date) => new(Tasks, Precedences, [.. Awaited.Select(one => one.AsKnownOn(date))], ClosingWaits) { SawnRests = SawnRests };
}
