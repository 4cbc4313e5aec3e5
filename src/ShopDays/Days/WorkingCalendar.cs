using System.Collections.Immutable;
using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Days;

/// <summary>One worker's sessions, made from what is written about the shop. Several workers have several calendars.</summary>
/// <remarks>
/// In this order: the week's hours or the extra date's, closed dates, the clock, daylight, appointments, opening and sweeping up.
/// Every date is worked out by itself, so a calendar is asked for as far ahead as is wanted and keeps nothing.
/// </remarks>
public sealed record WorkingCalendar
{
    private const int DaysOfYear = 366;

    /// <summary>Whose calendar.</summary>
    public required string Worker { get; init; }

    /// <summary>Where the shop is.</summary>
    public required ShopPlace Place { get; init; }

    /// <summary>The hours of an ordinary week.</summary>
    public required ShopWeek Week { get; init; }

    /// <summary>Dates with hours of their own.</summary>
    public ExtraDates Extra { get; init; } = ExtraDates.None;

    /// <summary>Dates without sessions, unless they are extra.</summary>
    public ClosedDates Closed { get; init; } = ClosedDates.None;

    /// <summary>Hours that are promised to something else; where they fall into a session, it is broken in two.</summary>
    public IReadOnlyList<Appointment> Appointments { get; init; } = [];

    /// <summary>How the hours are cut to the light.</summary>
    public DaylightRule Daylight { get; init; } = DaylightRule.Lamps;

    /// <summary>When there must be no noise.</summary>
    public QuietHours Quiet { get; init; } = QuietHours.None;

    /// <summary>What every session loses at either end.</summary>
    public Overhead Overhead { get; init; } = Overhead.None;

    /// <summary>The least work that is worth coming in for; 45 minutes unless said otherwise (common practice, no source).</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is set to nothing or less.</exception>
    public WorkTime LeastUseful
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(value, WorkTime.Zero);
            field = value;
        }
    } = WorkTime.FromMinutes(45);

    /// <summary>One date.</summary>
    public ShopDay On(LocalDate date)
    {
        var day = new DayInTheMaking(this, date);
        var written = day.WrittenHours();
        var open = day.OpenHours(written);
        var real = day.RealTime(open);
        var light = day.InTheLight(real);
        var sessions = day.Sessions(light);
        return new(date, [.. sessions], [.. day.Unused.OrderBy(unused => unused.Hours.From)]);
    }

    /// <summary>Every date from one on, without end: the caller stops. Dates without hours are there, with nothing in them.</summary>
    public IEnumerable<ShopDay> From(LocalDate first)
    {
        for (var date = first; date < LocalDate.MaxIsoValue; date = date.PlusDays(1))
        {
            yield return On(date);
        }
    }

    /// <summary>The sessions and the unused hours of a span of dates, both ends included, in order.</summary>
    /// <exception cref="ArgumentException">The last date comes before the first.</exception>
    public (ImmutableArray<Session> Sessions, ImmutableArray<UnusedHours> Unused) Between(LocalDate first, LocalDate last)
    {
        var days = new DateInterval(first, last).Select(On).ToList();
        return ([.. days.SelectMany(day => day.Sessions)], [.. days.SelectMany(day => day.Unused)]);
    }

    /// <summary>The longest time to work in that any session of a year offers; null when the year has none.</summary>
    /// <param name="first">The first date of the year, which ends on the same date, included.</param>
    public WorkTime? LongestSession(LocalDate first) =>
        Between(first, first.PlusDays(DaysOfYear)).Sessions.Select(session => (WorkTime?)session.UsableTime).Max();
}
