using NodaTime;

namespace ShopDays.Days;

/// <summary>Why written hours, or a piece of them, gave no session.</summary>
public enum UnusedReason
{
    /// <summary>The shop is closed on that date.</summary>
    Closed,

    /// <summary>The clock was put forward over them.</summary>
    ClockSkipped,

    /// <summary>There is no light to work by.</summary>
    NoDaylight,

    /// <summary>They are promised to something else.</summary>
    Appointment,

    /// <summary>What is left after opening up and sweeping up is less than is worth coming in for.</summary>
    TooShort,
}

/// <summary>Written hours, or a piece of them, that gave no session, so that the plan can say why.</summary>
/// <param name="Worker">Whose hours.</param>
/// <param name="Date">The date on which they are written.</param>
/// <param name="Hours">The hours as written, those that touch as one.</param>
/// <param name="Reason">Why there is no session.</param>
/// <param name="Left">The real time that there would have been, door to door: the light, when that is what was too short.</param>
public sealed record UnusedHours(string Worker, LocalDate Date, DayHours Hours, UnusedReason Reason, Duration Left)
{
    /// <summary>What they are promised to; null for any other reason. The hours are then those of the appointment, and the time left is what it takes of a stay.</summary>
    public string? Appointment { get; init; }
}
