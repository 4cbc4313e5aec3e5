namespace ShopDays.Plans.Scheduling;

/// <summary>What the scheduler knows of a task. Times are whole minutes.</summary>
internal sealed record CompiledTask
{
    /// <summary>Work, 1 or more when somebody does it.</summary>
    public required int Minutes { get; init; }

    /// <summary>Workers it takes at the same time; 0 goes on by itself, by the clock.</summary>
    public int Crew { get; init; } = 1;

    /// <summary>Of what goes on by itself: whether whole days of it are days of the calendar, to the same time by the clock.</summary>
    public bool IsByCalendar { get; init; }

    /// <summary>Whether it may be broken off and go on later; otherwise it is done in one stretch.</summary>
    public bool IsSplittable { get; init; }

    /// <summary>The least stretch worth beginning, unless less is left to do.</summary>
    public int LeastPiece { get; init; } = 1;

    /// <summary>Whether what is left after a break is worth beginning too: then no stretch of it is shorter than the least, but for a task that is.</summary>
    public bool EndsInAPiece { get; init; }

    /// <summary>Whether it counts against the cap on heavy work.</summary>
    public bool IsHeavy { get; init; }

    /// <summary>Whether it is barred in quiet hours.</summary>
    public bool IsNoisy { get; init; }

    /// <summary>Work with one key shares one set-up; below 0 it needs none.</summary>
    public int SetupKey { get; init; } = -1;

    /// <summary>The first minute in which it may begin.</summary>
    public int NotBefore { get; init; }

    /// <summary>The minute before which it must begin: that of an appointment; <see cref="CompiledCalendar.Never"/> for none.</summary>
    public int StartBy { get; init; } = CompiledCalendar.Never;

    /// <summary>Clock time after the first minute of its order before it may begin.</summary>
    public int WaitAtStart { get; init; }

    /// <summary>The order that it belongs to.</summary>
    public int Order { get; init; }

    /// <summary>Clock time after its end before its order can be finished.</summary>
    public int WaitAtEnd { get; init; }

    /// <summary>The number of what sets in that time and may take longer.</summary>
    public int SetsAtEnd { get; init; }

    /// <summary>The number of the stretches that are too cold for it.</summary>
    public int TooCold { get; init; }

    /// <summary>The resource of which it takes one while it is being worked on; below 0 none.</summary>
    public int Place { get; init; } = -1;

    /// <summary>Whether it raises dust while it is being worked on.</summary>
    public bool IsDusty { get; init; }

    /// <summary>Clock time after its end in which dust would spoil it; above 0 for a coat, which bears no dust while it is laid on either.</summary>
    public int WetAfter { get; init; }

    /// <summary>The number of what dries in that time and may take longer.</summary>
    public int DriesAfter { get; init; }

    /// <summary>Clock time before its beginning in which dust would spoil it: the time after its end of a shop whose clock runs backwards.</summary>
    public int WetBefore { get; init; }

    /// <summary>
    /// What it keeps from its beginning to its end and beyond, the place that it is worked at not among it. Of a row all is
    /// kept for the same time, and what only a part of the row will do for comes first.
    /// </summary>
    public IReadOnlyList<Hold> Holds { get; init; } = [];
}

/// <summary>
/// Resources kept from some minutes before a task's beginning until some minutes after its end. They may be taken from any of a row of
/// resources, the first ones first, and are not exchanged while they are kept.
/// </summary>
/// <param name="First">The first resource that will do.</param>
/// <param name="Last">The last one.</param>
/// <param name="Count">How many.</param>
/// <param name="MinutesAfter">Clock time for which they are kept after the end.</param>
/// <param name="MinutesBefore">Clock time for which they are kept before the beginning.</param>
/// <param name="Sets">The number of what sets after the end, and for which they may be kept longer.</param>
internal readonly record struct Hold(int First, int Last, int Count, int MinutesAfter = 0, int MinutesBefore = 0, int Sets = CompiledNights.Nothing)
{
    /// <summary>Whether it may come after another hold of the same row and task: it can take all that the other can, for the same time.</summary>
    public bool MayFollow(Hold other) =>
        First <= other.First && other.Last <= Last && (MinutesAfter, MinutesBefore, Sets) == (other.MinutesAfter, other.MinutesBefore, other.Sets);
}

/// <summary>One task comes before another.</summary>
/// <param name="Before">The earlier.</param>
/// <param name="After">The later.</param>
/// <param name="Lag">Clock time between the earlier's end and the later's beginning, 0 or more.</param>
/// <param name="SameSession">Whether the later begins in the session in which the earlier ends.</param>
/// <param name="Sets">The number of what sets between the two; the lag is then the least that it may take.</param>
internal readonly record struct CompiledPrecedence(int Before, int After, int Lag = 0, bool SameSession = false, int Sets = CompiledNights.Nothing)
{
    /// <summary>Whether the lag is the same whenever the earlier ends.</summary>
    public bool IsEven => Sets == CompiledNights.Nothing;
}
