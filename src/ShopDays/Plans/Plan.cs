using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>The work of all orders in hand in the shop's sessions.</summary>
public sealed record Plan
{
    /// <summary>The sessions in which work is done, in order of their beginning, the maker's before a helper's.</summary>
    public required IReadOnlyList<PlannedSession> Sessions { get; init; }

    /// <summary>All waits, in order of their beginning.</summary>
    public required IReadOnlyList<PlannedWait> Waits { get; init; }

    /// <summary>When the first order begins: the first moment of its date, or from when the rest of it is planned.</summary>
    public required ZonedDateTime Begin { get; init; }

    /// <summary>The end of the last task and of all waits at the end.</summary>
    public required ZonedDateTime Finish { get; init; }

    /// <summary>When each order is finished, in their order: its last task and all waits at its end.</summary>
    public required IReadOnlyList<ZonedDateTime> Finishes { get; init; }

    /// <summary>When no plan could be finished before.</summary>
    public required PlanBound LowerBound { get; init; }

    /// <summary>Days on which somebody works.</summary>
    public required int ShopDays { get; init; }

    /// <summary>The days on which somebody beside the first worker is needed, in order; none where one works alone.</summary>
    public IReadOnlyList<HelperVisit> Visits { get; init; } = [];

    /// <summary>Heavy work that goes on beyond a bout without a rest or anything lighter, all added up.</summary>
    public WorkTime HeavyInARow { get; init; }

    /// <summary>Turns from one operation or method to another within sessions.</summary>
    public required int Changeovers { get; init; }

    /// <summary>Schedules that were looked at.</summary>
    public required int Schedules { get; init; }

    /// <summary>Clock time by which the plan finishes after its lower bound, zero or more; some of it may be beyond any plan.</summary>
    public Duration Gap => Finish.ToInstant() - LowerBound.At.ToInstant();

    /// <summary>The gap as a share of the clock time from beginning to lower bound, 0 or more; 0 when there is no such time.</summary>
    public double GapShare => LowerBound.At.ToInstant() == Begin.ToInstant() ? 0 : Gap / (LowerBound.At.ToInstant() - Begin.ToInstant());
}

/// <summary>A session with its work.</summary>
/// <param name="Session">The session.</param>
/// <param name="Work">What is done in it, in order; at least one.</param>
public sealed record PlannedSession(Session Session, IReadOnlyList<PlannedWork> Work);

/// <summary>A stretch of one worker's work on one task. Work for a crew stands in the session of each of them.</summary>
public sealed record PlannedWork
{
    /// <summary>The order that it is for.</summary>
    public required string Order { get; init; }

    /// <summary>The task.</summary>
    public required ShopTask Task { get; init; }

    /// <summary>Who.</summary>
    public required string Worker { get; init; }

    /// <summary>The first stroke.</summary>
    public required ZonedDateTime Start { get; init; }

    /// <summary>The last stroke.</summary>
    public required ZonedDateTime End { get; init; }

    /// <summary>Hands-on time in this stretch.</summary>
    public required WorkTime HandsOn { get; init; }

    /// <summary>Left free just before it for turning from other work; zero at the beginning of a session and after like work.</summary>
    public required WorkTime Changeover { get; init; }

    /// <summary>What is to be said of honing in it; empty for nothing.</summary>
    public string Honing { get; init; } = "";

    /// <summary>The bouts in which heavy work is taken; null for other work, and for what is done in one.</summary>
    public WorkBouts? Bouts { get; init; }

    /// <summary>Whether the task begins with it.</summary>
    public required bool IsFirstPiece { get; init; }

    /// <summary>Whether the task is done with it.</summary>
    public required bool IsLastPiece { get; init; }
}

/// <summary>A wait in the plan.</summary>
/// <param name="Order">The order that waits.</param>
/// <param name="After">The task with whose end it begins; null for one that begins with the job or on a date.</param>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it is over, as it is planned; what it holds back may begin later still.</param>
/// <param name="Reason">Why.</param>
public sealed record PlannedWait(string Order, ShopTask? After, ZonedDateTime Start, ZonedDateTime End, string Reason)
{
    /// <summary>The board that is recorded as sawn and with whose sawing it began; null for all other waits.</summary>
    public string? Sawn { get; init; }

    /// <summary>What it begins with, in words: a task's name, or the sawing of a board. Null where it begins with neither.</summary>
    public string? AfterWhat => After?.Name ?? (Sawn is { } board ? SawingOf(board) : null);

    /// <summary>What is awaited from others; null for a wait of the work's own.</summary>
    public AwaitedInPlan? Awaited { get; init; }

    /// <summary>What the shop's nights make of it; null where they change nothing.</summary>
    public SlowedWait? Slowed { get; init; }

    /// <summary>Whether clamps stay on until it is over: somebody has to take them off then.</summary>
    public bool HoldsClamps { get; init; }

    /// <summary>The sawing of a board, which is no task where it is recorded as sawn.</summary>
    internal static string SawingOf(string board) => "sawing " + board;
}

/// <summary>What is awaited from others, in the plan.</summary>
/// <param name="One">What.</param>
/// <param name="Early">One time in ten it is over before this.</param>
/// <param name="Late">One time in ten it is not over by then.</param>
/// <param name="DaysLate">Days by which it is later than that, as things stand; 0 when it is not.</param>
public sealed record AwaitedInPlan(Awaited One, ZonedDateTime Early, ZonedDateTime Late, int DaysLate);

/// <summary>When no plan could be finished before.</summary>
/// <param name="At">When.</param>
/// <param name="Reason">What binds, in a maker's words.</param>
public sealed record PlanBound(ZonedDateTime At, string Reason)
{
    /// <summary>What binds, in a word or two: waits, an appointment, a not-before date, a single task, a row of work, people together, worked hours, heavy work, noisy work, or clamps and bench.</summary>
    public string Kind { get; init; } = "";

    /// <summary>All that the bound rests on, what weighs most first: it would be sooner without any of these. None where there is only the work itself, or where two things bind alike.</summary>
    public IReadOnlyList<BindingLimit> Binds { get; init; } = [];

    /// <summary>The row of tasks that takes so long, or all those that share too few hours or things.</summary>
    public IReadOnlyList<ShopTask> Tasks { get; init; } = [];

    /// <summary>Before which none of them can begin; null where it is not known.</summary>
    public ZonedDateTime? From { get; init; }

    /// <summary>By when they would have to be done for a finish before the bound; null where it is not known.</summary>
    public ZonedDateTime? By { get; init; }

    /// <summary>What they take: worked time, for clamps and bench the time they are in use, all together; for a row of tasks the time by the clock.</summary>
    public WorkTime? Needed { get; init; }

    /// <summary>What there is from the one to the other, in the same measure; as much as is needed when what binds lies before or after other work.</summary>
    public WorkTime? There { get; init; }
}

/// <summary>One of the things that a bound rests on.</summary>
/// <param name="Kind">What it is, in the words of <see cref="PlanBound.Kind"/>.</param>
/// <param name="Task">The task whose date it is; null for all else.</param>
/// <param name="Without">The bound if it were not for this.</param>
public sealed record BindingLimit(string Kind, ShopTask? Task, ZonedDateTime Without);
