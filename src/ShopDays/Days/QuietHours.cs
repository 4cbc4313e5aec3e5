using System.Collections.Immutable;
using NodaTime;

namespace ShopDays.Days;

/// <summary>Hours of every day in which no mallet is swung and no machine runs, for the neighbours' sake.</summary>
public sealed class QuietHours
{
    /// <summary>Quiet hours; they may pass midnight, overlap and touch.</summary>
    public QuietHours(params IEnumerable<DayHours> hours)
    {
        ArgumentNullException.ThrowIfNull(hours);
        Hours = [.. hours];
    }

    /// <summary>Noise at any hour.</summary>
    public static QuietHours None { get; } = new();

    /// <summary>The hours as written.</summary>
    public ImmutableArray<DayHours> Hours { get; }

    /// <summary>What of a span is quiet.</summary>
    /// <param name="span">Real time with a beginning and an end.</param>
    /// <param name="zone">The zone of the shop's clock.</param>
    public Stretches QuietIn(Interval span, DateTimeZone zone)
    {
        // Hours that began the evening before may reach into the span.
        var first = span.Start.InZone(zone).Date.PlusDays(-1);
        var last = span.End.InZone(zone).Date;
        var dates = Enumerable.Range(0, Period.DaysBetween(first, last) + 1).Select(first.PlusDays);
        var quiet = from date in dates
                    from hours in Hours
                    let real = ClockChange.RealTime(hours, date, zone)
                    where real is not null
                    select real.Value;
        return new Stretches(quiet).Within(span);
    }
}
