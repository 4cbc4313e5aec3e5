using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Parts;

/// <summary>Parts glued together in one go.</summary>
public sealed record GlueUp
{
    /// <summary>What comes out of it, for example <c>carcass</c>; one of a kind among parts and glue-ups.</summary>
    public required string Name { get; init; }

    /// <summary>The parts and earlier glue-ups that it joins.</summary>
    public required IReadOnlyList<string> Joins { get; init; }

    /// <summary>The adhesive, by its name in the table of waits.</summary>
    public required string Adhesive { get; init; }

    /// <summary>Joints closed in this glue-up; null to count them from the job's joints.</summary>
    public int? Joints { get; init; }

    /// <summary>The clamps held until it has set: how many of at least each reach.</summary>
    public IReadOnlyList<ClampsHeld> Clamps { get; init; } = [];
}

/// <summary>Clamps in use.</summary>
/// <param name="Reach">The least reach that will do.</param>
/// <param name="Count">How many, at least 1.</param>
public readonly record struct ClampsHeld(Length Reach, int Count);

/// <summary>A finish on parts or glue-ups.</summary>
public sealed record FinishWork
{
    /// <summary>The finish, by its name in the table of waits.</summary>
    public required string Finish { get; init; }

    /// <summary>The parts and glue-ups that get it.</summary>
    public required IReadOnlyList<string> On { get; init; }

    /// <summary>Coats, at least 1.</summary>
    public int Coats { get; init; } = 1;
}

/// <summary>Work that the parts do not imply: drawings, hardware, delivery.</summary>
public sealed record FreeTask
{
    /// <summary>What is done; one of a kind in its job.</summary>
    public required string Name { get; init; }

    /// <summary>The maker's own guess of the time; null when an operation gives it.</summary>
    public TimeGuess? Guess { get; init; }

    /// <summary>The operation that times it; null when guessed.</summary>
    public string? Operation { get; init; }

    /// <summary>How much of the operation, in its unit; 0 when guessed.</summary>
    public double Quantity { get; init; }

    /// <summary>The parts it is done on; may be empty.</summary>
    public IReadOnlyList<string> On { get; init; } = [];

    /// <summary>Stages, parts, glue-ups, tasks or decisions that it must come before.</summary>
    public IReadOnlyList<string> Before { get; init; } = [];

    /// <summary>Stages, parts, glue-ups, tasks or decisions that it must come after.</summary>
    public IReadOnlyList<string> After { get; init; } = [];

    /// <summary>Whether it counts as heavy work.</summary>
    public bool IsHeavy { get; init; }

    /// <summary>Whether it is noisy.</summary>
    public bool IsNoisy { get; init; }

    /// <summary>How many people it takes, at least 1: two for what one cannot lift.</summary>
    public int People { get; init; } = 1;

    /// <summary>The first date on which it may be done; null for any.</summary>
    public LocalDate? NotBefore { get; init; }

    /// <summary>When it is agreed on with somebody else: a client, a fitter, a carrier; null when it is not.</summary>
    public AppointedTime? Appointed { get; init; }

    /// <summary>Kilometres of travel that are charged; 0 when none.</summary>
    public double PaidKilometres { get; init; }
}

/// <summary>A maker's guess of hands-on time.</summary>
/// <param name="Low">One time in ten it is quicker.</param>
/// <param name="Likely">As likely more as less.</param>
/// <param name="High">One time in ten it is slower.</param>
public readonly record struct TimeGuess(WorkTime Low, WorkTime Likely, WorkTime High);
