using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Days;

/// <summary>Hours by the wall clock, from one time of day to another, the second not included.</summary>
/// <remarks>
/// An end of 00:00 is the end of the day, written 24:00. An end before the beginning is on the next day.
/// <c>default</c> is the whole day, 00:00 to 24:00.
/// </remarks>
public readonly record struct DayHours
{
    private DayHours(LocalTime from, LocalTime to) => (From, To) = (from, to);

    /// <summary>When they begin; included.</summary>
    public LocalTime From { get; }

    /// <summary>When they end; not included. 00:00 is the end of the day.</summary>
    public LocalTime To { get; }

    /// <summary>Whether they end at 24:00.</summary>
    public bool EndWithTheDay => To == LocalTime.Midnight;

    /// <summary>Whether they go on into the next day. Ending at 24:00 does not.</summary>
    public bool PassMidnight => !EndWithTheDay && To < From;

    /// <summary>Hours from one time to another; a second time of 00:00 is 24:00.</summary>
    /// <exception cref="ArgumentException">Both times are the same and not 00:00.</exception>
    public static DayHours Between(LocalTime from, LocalTime to) =>
        from == to && from != LocalTime.Midnight
            ? throw new ArgumentException("hours end at another time than they begin", nameof(to))
            : new(from, to);

    /// <summary>Reads hours of one day, such as <c>08:00-12:00</c> or <c>19:00-24:00</c>.</summary>
    public static TextResult<DayHours> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return DayHoursText.Read(text, mayPassMidnight: false);
    }

    /// <summary>Reads a time of day such as <c>10:00</c>.</summary>
    public static TextResult<LocalTime> ReadTime(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return DayHoursText.ReadOneTime(text);
    }

    /// <summary>Reads hours that may go on into the next day, such as <c>20:00-08:00</c>.</summary>
    public static TextResult<DayHours> ReadOverMidnight(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return DayHoursText.Read(text, mayPassMidnight: true);
    }

    /// <summary>As it is read: <c>08:00-12:00</c>.</summary>
    public override string ToString() =>
        DayHoursText.Write(From) + "-" + (EndWithTheDay ? "24:00" : DayHoursText.Write(To));
}
