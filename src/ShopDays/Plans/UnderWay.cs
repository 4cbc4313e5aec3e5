using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>How the shop stands when the rest of a job is planned in the middle of it.</summary>
public sealed record UnderWay
{
    /// <summary>The moment from which is planned: of a session that has begun only the rest is there.</summary>
    public required Instant From { get; init; }

    /// <summary>The moment up to which it is known what has come from others, not after <see cref="From"/>; null for that itself.</summary>
    public Instant? Known { get; init; }

    /// <summary>Waits after work that is done, as far as they are not over.</summary>
    public IReadOnlyList<RunningWait> Waits { get; init; } = [];

    /// <summary>What work that is done still keeps.</summary>
    public IReadOnlyList<StillHeld> Held { get; init; } = [];

    /// <summary>Heavy work that each worker, by name, has done already on the date from which is planned.</summary>
    public IReadOnlyDictionary<string, WorkTime> HeavyToday { get; init; } = new Dictionary<string, WorkTime>();

    /// <summary>Heavy work that each worker, by name, did on the date before that.</summary>
    public IReadOnlyDictionary<string, WorkTime> HeavyYesterday { get; init; } = new Dictionary<string, WorkTime>();
}

/// <summary>A wait that began with the end of work that is done.</summary>
/// <param name="After">That work; it is not among the tasks that are planned. Null where it is the sawing of a board that is recorded as sawn.</param>
/// <param name="Start">When it began.</param>
/// <param name="Until">When it is over.</param>
/// <param name="Reason">Why.</param>
/// <param name="Holds">The ids of the planned tasks that it holds back; none for a wait at the end of the job.</param>
/// <param name="EndsTheJob">Whether the job is not finished before it is over.</param>
public sealed record RunningWait(ShopTask? After, Instant Start, Instant Until, string Reason, IReadOnlyList<int> Holds, bool EndsTheJob)
{
    /// <summary>The board with whose sawing it began; null where it began with a task.</summary>
    public string? Sawn { get; init; }

    /// <summary>What it began with, in words: a task's name, or the sawing of a board.</summary>
    public string AfterWhat => After?.Name ?? PlannedWait.SawingOf(Sawn ?? "");
}

/// <summary>What work that is done keeps for a while longer; what it keeps no more is null.</summary>
/// <param name="By">That work, with its clamps.</param>
/// <param name="ClampsUntil">When its clamps come off.</param>
/// <param name="BenchUntil">When the bench is free.</param>
/// <param name="WetUntil">When its coat takes no dust any more.</param>
/// <param name="FloorUntil">When the floor it stands on is free.</param>
public sealed record StillHeld(ShopTask By, Instant? ClampsUntil, Instant? BenchUntil, Instant? WetUntil, Instant? FloorUntil = null)
{
    /// <summary>The clamps.</summary>
    public IReadOnlyList<ClampsHeld> Clamps => ClampsUntil is null ? [] : By.Clamps;
}
