using NodaTime;
using ShopDays.Days;

namespace ShopDays.Tests.Days;

/// <summary>The calendar again, minute by minute and without any cleverness, to hold the fast one against.</summary>
internal sealed class SlowCalendar(WorkingCalendar calendar)
{
    private static readonly Duration Minute = Duration.FromMinutes(1);
    private readonly Dictionary<Instant, bool> seen = [];

    /// <summary>Door to door, each session of a date.</summary>
    public List<Interval> Sessions(LocalDate date)
    {
        var least = calendar.Overhead.OpenUp + calendar.Overhead.SweepUp + calendar.LeastUseful;
        return [.. Runs(MinutesInside(date).Distinct().Where(IsLight)).Where(run => run.Duration.TotalMinutes >= least.Minutes)];
    }

    private IEnumerable<Instant> MinutesInside(LocalDate date)
    {
        var extra = calendar.Extra.On(date);
        if (extra is null && calendar.Closed.Contains(date))
        {
            return [];
        }

        var noon = date.AtMidnight().InUtc().ToInstant() + Duration.FromHours(12);

        // A day and a half either way holds every minute of the date in every zone.
        var clock = Enumerable.Range(-36 * 60, 72 * 60)
            .Select(minute => noon + (Minute * minute))
            .Select(instant => (Instant: instant, Local: instant.InZone(calendar.Place.Zone).LocalDateTime))
            .Where(tick => tick.Local.Date == date)
            .ToList();
        return (extra ?? calendar.Week[date.DayOfWeek]).Items.SelectMany(hours => FromFirstToLast(clock, hours));
    }

    private static IEnumerable<Instant> FromFirstToLast(List<(Instant Instant, LocalDateTime Local)> clock, DayHours hours)
    {
        var (from, to) = (Shown(clock, hours.From), Shown(clock, hours.To));
        var inside = clock.FindAll(tick => tick.Local.TimeOfDay >= from && (hours.EndWithTheDay || tick.Local.TimeOfDay < to));
        if (inside.Count == 0)
        {
            yield break;
        }

        for (var minute = inside[0].Instant; minute <= inside[^1].Instant; minute += Minute)
        {
            yield return minute;
        }
    }

    // A time that the clock skips is as much later as it skips (RFC 5545, 3.3.5).
    private static LocalTime Shown(List<(Instant Instant, LocalDateTime Local)> clock, LocalTime time)
    {
        if (clock.Exists(tick => tick.Local.TimeOfDay == time) || !clock.Exists(tick => tick.Local.TimeOfDay > time))
        {
            return time;
        }

        var next = clock.Find(tick => tick.Local.TimeOfDay > time).Local.TimeOfDay;
        var last = clock.FindLast(tick => tick.Local.TimeOfDay < time) is { Instant: var at, Local: var local } && at != default ? local.TimeOfDay.PlusMinutes(1) : LocalTime.Midnight;
        return time + (next - last);
    }

    private bool IsLight(Instant minute)
    {
        if (calendar.Daylight.Limit == DaylightLimit.None)
        {
            return true;
        }

        for (var at = minute - calendar.Daylight.Margin; at <= minute + Minute + calendar.Daylight.Margin; at += Minute)
        {
            if (!IsLit(at))
            {
                return false;
            }
        }

        return true;
    }

    private bool IsLit(Instant at)
    {
        if (!seen.TryGetValue(at, out var lit))
        {
            seen[at] = lit = new Horizon(calendar.Place, calendar.Daylight.Limit).IsLight(at);
        }

        return lit;
    }

    private static IEnumerable<Interval> Runs(IEnumerable<Instant> minutes)
    {
        Interval? run = null;
        foreach (var minute in minutes.Order())
        {
            if (run is { } going && going.End == minute)
            {
                run = new Interval(going.Start, minute + Minute);
                continue;
            }

            if (run is { } done)
            {
                yield return done;
            }

            run = new Interval(minute, minute + Minute);
        }

        if (run is { } last)
        {
            yield return last;
        }
    }
}
