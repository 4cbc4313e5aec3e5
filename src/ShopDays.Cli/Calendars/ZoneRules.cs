using System.Globalization;
using NodaTime;
using NodaTime.TimeZones;

namespace ShopDays.Cli.Calendars;

/// <summary>
/// What a calendar says of a zone (RFC 5545, 3.6.5): each change of its clocks in the time that is spoken of, at its own
/// date. No rule for all years is guessed from them, so that what is written is just what the zone's rules gave.
/// </summary>
internal static class ZoneRules
{
    // A zone without a beginning has had its time for ever: any date before the first event will do.
    private static readonly LocalDateTime LongAgo = new(1970, 1, 1, 0, 0);

    /// <summary>The lines of a zone.</summary>
    /// <param name="zone">The zone.</param>
    /// <param name="from">The first moment that is spoken of.</param>
    /// <param name="until">The last one.</param>
    public static IEnumerable<string> Lines(DateTimeZone zone, Instant from, Instant until)
    {
        yield return "BEGIN:VTIMEZONE";
        yield return $"TZID:{zone.Id}";
        foreach (var line in zone.GetZoneIntervals(from, until + Duration.Epsilon).SelectMany(interval => LinesOf(zone, interval)))
        {
            yield return line;
        }

        yield return "END:VTIMEZONE";
    }

    private static string[] LinesOf(DateTimeZone zone, ZoneInterval interval)
    {
        var kind = interval.Savings > Offset.Zero ? "DAYLIGHT" : "STANDARD";
        var before = interval.HasStart && interval.Start > Instant.FromUtc(1900, 1, 1, 0, 0)
            ? zone.GetUtcOffset(interval.Start - Duration.Epsilon)
            : interval.WallOffset;

        // It begins at the time that the clock showed before it was changed.
        var begins = interval.HasStart && interval.Start > Instant.FromUtc(1900, 1, 1, 0, 0)
            ? interval.Start.WithOffset(before).LocalDateTime
            : LongAgo;
        return
        [
            $"BEGIN:{kind}",
            $"DTSTART:{CalendarTime.Local(begins)}",
            $"TZOFFSETFROM:{OffsetText(before)}",
            $"TZOFFSETTO:{OffsetText(interval.WallOffset)}",
            $"TZNAME:{ContentLine.Text(interval.Name)}",
            $"END:{kind}",
        ];
    }

    // Hours and minutes; seconds only where there are some (RFC 5545, 3.3.14).
    private static string OffsetText(Offset offset)
    {
        var seconds = Math.Abs(offset.Seconds);
        var text = string.Create(CultureInfo.InvariantCulture, $"{(offset.Seconds < 0 ? '-' : '+')}{seconds / 3600:00}{seconds / 60 % 60:00}");
        return seconds % 60 == 0 ? text : text + (seconds % 60).ToString("00", CultureInfo.InvariantCulture);
    }
}
