using NodaTime;
using NodaTime.TimeZones;

namespace ShopDays.Days;

/// <summary>What wall-clock hours mean on a day when the clock is put forward or back.</summary>
public static class ClockChange
{
    /// <summary>
    /// Hours begin at the first moment when the clock shows their time. A time that it skips is read by the clock as it was
    /// before: where it jumps from one to two, 01:15 is a quarter past two (RFC 5545, 3.3.5).
    /// </summary>
    /// <remarks>A maker comes in when the clock says so, and does not wait for it to say so again.</remarks>
    public static ZoneLocalMappingResolver Beginning { get; } =
        Resolvers.CreateMappingResolver(Resolvers.ReturnEarlier, Resolvers.ReturnForwardShifted);

    /// <summary>Hours end at the last moment when the clock shows their time. A time that it skips is read as that of a beginning is.</summary>
    /// <remarks>What was written runs until the time is up for good, so neither pass of a doubled hour is lost; so far hours go beyond RFC 5545, which knows the first only.</remarks>
    public static ZoneLocalMappingResolver End { get; } =
        Resolvers.CreateMappingResolver(Resolvers.ReturnLater, Resolvers.ReturnForwardShifted);

    /// <summary>Whether the clock shows this time for the second time, having been put back.</summary>
    public static bool IsSecondPass(ZonedDateTime time)
    {
        var there = time.Zone.MapLocal(time.LocalDateTime);
        return there.Count == 2 && there.Last() == time;
    }

    /// <summary>Whether the clock shows a time twice.</summary>
    public static bool IsDoubled(LocalDateTime time, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        return zone.MapLocal(time).Count == 2;
    }

    /// <summary>What a clock that is put forward skips around a time: the first time that it does not show, and the first that it shows again; null for a time that it shows.</summary>
    public static (LocalDateTime From, LocalDateTime To)? GapAt(LocalDateTime time, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        var there = zone.MapLocal(time);
        return there.Count == 0 ? (there.EarlyInterval.IsoLocalEnd, there.LateInterval.IsoLocalStart) : null;
    }

    /// <summary>The real time of hours that begin on a date; nothing when the clock leaves nothing of them, or the whole date out.</summary>
    /// <remarks>24:00 is where the next date begins, even when the clock comes back to midnight later.</remarks>
    public static Interval? RealTime(DayHours hours, LocalDate date, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        var begin = zone.ResolveLocal(date + hours.From, Beginning);
        if (begin.Date != date)
        {
            return null;
        }

        var start = begin.ToInstant();
        var end = hours.EndWithTheDay
            ? zone.AtStartOfDay(date.PlusDays(1)).ToInstant()
            : zone.ResolveLocal(date.PlusDays(hours.PassMidnight ? 1 : 0) + hours.To, End).ToInstant();
        return start < end ? new Interval(start, end) : null;
    }
}
