using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Logbook;

/// <summary>How far a task has come.</summary>
public enum TaskState
{
    /// <summary>Nothing of it is logged.</summary>
    ToDo,

    /// <summary>It is begun and not finished.</summary>
    HalfDone,

    /// <summary>An entry finished it.</summary>
    Done,
}

/// <summary>How far one task of a job has come.</summary>
public sealed record TaskStanding
{
    /// <summary>The task.</summary>
    public required ShopTask Task { get; init; }

    /// <summary>How far.</summary>
    public required TaskState State { get; init; }

    /// <summary>Time at it so far, work that is running now included; above zero unless it is to do.</summary>
    public WorkTime Spent { get; init; }

    /// <summary>
    /// How much of its quantity is done, in the operation's unit, for a task that is begun and whose entries all say it;
    /// above 0, and less than the whole. Null where that is not known.
    /// </summary>
    public double? QuantityDone { get; init; }

    /// <summary>When the last of its time was logged; for a task that is done, when it was finished. Null for one to do.</summary>
    public WorkedOn? Last { get; init; }
}

/// <summary>Time logged for a task that the job does not have: a part has another name now, or the boards are laid out otherwise.</summary>
/// <param name="Task">The task by the name in the log.</param>
/// <param name="Operation">Its operation by the log; null where the log does not say.</param>
/// <param name="Spent">Time at it; above zero.</param>
/// <param name="IsDone">Whether an entry finished it.</param>
/// <param name="Last">When the last of it was logged.</param>
public sealed record StrayWork(string Task, string? Operation, WorkTime Spent, bool IsDone, WorkedOn Last);

/// <summary>Work that is begun and still goes on: not in the log yet.</summary>
/// <param name="Task">The task by its name.</param>
/// <param name="SoFar">Time at it, pauses taken off; zero or more.</param>
/// <param name="On">The moment up to which that is counted, on its date.</param>
/// <param name="Stopped">Where it was stopped when it was laid aside; may be empty.</param>
public sealed record RunningWork(string Task, WorkTime SoFar, WorkedOn On, string Stopped = "");
