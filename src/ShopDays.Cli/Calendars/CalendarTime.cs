using NodaTime;
using NodaTime.Text;

namespace ShopDays.Cli.Calendars;

/// <summary>
/// Dates and times as a calendar has them (RFC 5545, 3.3.4 and 3.3.5). Times are the shop's wall clock with its zone, so
/// that a session stays at its hour when a zone's law is changed after the file was written.
/// </summary>
internal static class CalendarTime
{
    private static readonly LocalDatePattern DatePattern = LocalDatePattern.CreateWithInvariantCulture("uuuuMMdd");
    private static readonly LocalDateTimePattern LocalPattern = LocalDateTimePattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss");
    private static readonly InstantPattern UtcPattern = InstantPattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss'Z'");

    /// <summary>A moment in universal time: <c>20270412T073000Z</c>.</summary>
    public static string Utc(Instant moment) => UtcPattern.Format(moment);

    /// <summary>A time on a clock, without a zone: <c>20270412T083000</c>.</summary>
    public static string Local(LocalDateTime time) => LocalPattern.Format(time);

    /// <summary>A property of a whole day.</summary>
    public static string Line(string name, LocalDate date) => $"{name};VALUE=DATE:{DatePattern.Format(date)}";

    /// <summary>
    /// A property of a time. A clock's time with its zone; where the clock shows that time twice and the second is meant,
    /// universal time, since the first would be understood (RFC 5545, 3.3.5).
    /// </summary>
    public static string Line(string name, ZonedDateTime time) => time.Zone.MapLocal(time.LocalDateTime) is { Count: 2 } twice && twice.Last() == time
        ? $"{name}:{Utc(time.ToInstant())}"
        : $"{name};TZID={time.Zone.Id}:{Local(time.LocalDateTime)}";

    /// <summary>When a property of a time says; null when it cannot be understood. A whole day begins with its universal date: to order events, no more is wanted.</summary>
    public static Instant? Of(string line)
    {
        var value = line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..];
        if (UtcPattern.Parse(value) is { Success: true } utc)
        {
            return utc.Value;
        }

        if (DatePattern.Parse(value) is { Success: true } date)
        {
            return date.Value.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant();
        }

        return ZoneOf(line) is { } id && DateTimeZoneProviders.Tzdb.GetZoneOrNull(id) is { } zone && LocalPattern.Parse(value) is { Success: true } local
            ? local.Value.InZone(zone, NodaTime.TimeZones.Resolvers.LenientResolver).ToInstant()
            : null;
    }

    /// <summary>The zone that a property names; null for none.</summary>
    public static string? ZoneOf(string line)
    {
        const string Parameter = ";TZID=";
        var at = line.IndexOf(Parameter, StringComparison.Ordinal);
        var end = line.IndexOf(':', StringComparison.Ordinal);
        return at < 0 || end < at ? null : line[(at + Parameter.Length)..end];
    }
}
