using NodaTime;

namespace ShopDays.Logbook;

/// <summary>When a stretch of work was done.</summary>
/// <param name="Date">The date in the shop's zone on which it ended.</param>
/// <param name="Ended">The moment at which it ended; null when only the date is known, as from a pencilled sheet.</param>
public readonly record struct WorkedOn(LocalDate Date, Instant? Ended = null)
{
    /// <summary>A moment, on its date in a zone.</summary>
    public static WorkedOn At(Instant ended, DateTimeZone zone) => new(ended.InZone(zone).Date, ended);
}
