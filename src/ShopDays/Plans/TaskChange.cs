using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Plans;

/// <summary>Why a task counts in one of the two sums only, or with a time that nobody logged.</summary>
public enum ChangeKind
{
    /// <summary>It was promised and is in the job.</summary>
    SameTask,

    /// <summary>It was not promised: it came in since.</summary>
    CameIn,

    /// <summary>It was promised and is in the job no more; what was logged for it counts.</summary>
    WentOut,

    /// <summary>It went out because its board is recorded as sawn, and no time of it is logged: it counts as having taken what was promised.</summary>
    SawnUnlogged,

    /// <summary>It was neither promised nor is it in the job, and yet time of it is logged.</summary>
    OnlyLogged,
}

/// <summary>What a task was to take by the promise, and what it takes as things stand.</summary>
public sealed record TaskChange
{
    /// <summary>Its name.</summary>
    public required string Task { get; init; }

    /// <summary>Its operation; null for one timed by a guess.</summary>
    public required string? Operation { get; init; }

    /// <summary>Where it stands in the promise and the job.</summary>
    public required ChangeKind Kind { get; init; }

    /// <summary>How far it has come; one that is in the job no more counts as done.</summary>
    public required TaskState State { get; init; }

    /// <summary>What was expected of it by the promise; zero for one that was not promised.</summary>
    public required WorkTime Promised { get; init; }

    /// <summary>What it has taken so far.</summary>
    public required WorkTime Spent { get; init; }

    /// <summary>What is expected of the rest of it; zero when it is done.</summary>
    public required WorkTime Left { get; init; }

    /// <summary>What it takes in all.</summary>
    public WorkTime Now => Spent + Left;

    /// <summary>What it takes more than was promised; below zero when less.</summary>
    public WorkTime Difference => Now - Promised;
}
