using NodaTime;

namespace ShopDays.Days;

/// <summary>The steps from written hours to sessions for one date; what is lost on the way is kept with its reason.</summary>
internal sealed class DayInTheMaking(WorkingCalendar calendar, LocalDate date)
{
    private readonly List<UnusedHours> unused = [];

    public IReadOnlyList<UnusedHours> Unused => unused;

    /// <summary>Steps 1 and 2, week and extra: an extra date has its own hours only.</summary>
    public IReadOnlyList<DayHours> WrittenHours() => HoursOf(date).Items;

    /// <summary>Step 3, closed: nothing on a closed date, unless it is extra.</summary>
    public IReadOnlyList<DayHours> OpenHours(IReadOnlyList<DayHours> written)
    {
        if (!IsClosed(date))
        {
            return written;
        }

        foreach (var hours in written)
        {
            var real = ClockChange.RealTime(hours, date, calendar.Place.Zone);
            Drop(hours, UnusedReason.Closed, real?.Duration ?? Duration.Zero);
        }

        return [];
    }

    /// <summary>Step 4, the clock: real time, of which nothing is skipped or counted twice.</summary>
    public IReadOnlyList<Stay> RealTime(IReadOnlyList<DayHours> open)
    {
        var stays = new List<Stay>();
        var free = EndOfTheDayBefore();
        foreach (var hours in open)
        {
            if (ClockChange.RealTime(hours, date, calendar.Place.Zone) is not { } real || real.End <= free)
            {
                Drop(hours, UnusedReason.ClockSkipped, Duration.Zero);
            }
            else if (stays.Count > 0 && real.Start <= stays[^1].Time.End)
            {
                // Put back, the clock can show the next hours' beginning before these hours are over.
                stays[^1] = new(DayHours.Between(stays[^1].Hours.From, hours.To), new Interval(stays[^1].Time.Start, real.End));
            }
            else
            {
                stays.Add(new(hours, new Interval(Instant.Max(free, real.Start), real.End)));
            }
        }

        return stays;
    }

    /// <summary>Step 5, daylight: each stay cut to the light, perhaps into several.</summary>
    public IReadOnlyList<Stay> InTheLight(IReadOnlyList<Stay> stays)
    {
        var lit = new List<Stay>();
        foreach (var stay in stays)
        {
            var light = Daylight.In(stay.Time, calendar.Place, calendar.Daylight).Items;
            if (light.IsEmpty)
            {
                Drop(stay.Hours, UnusedReason.NoDaylight, Duration.Zero);
            }

            lit.AddRange(light.Select(piece => stay with { Time = piece }));
        }

        return lit;
    }

    /// <summary>Step 6, overhead: sessions of those that are worth opening up for.</summary>
    public IReadOnlyList<Session> Sessions(IReadOnlyList<Stay> stays)
    {
        var least = calendar.Overhead.OpenUpOnTheClock + calendar.Overhead.SweepUpOnTheClock + Duration.FromMinutes(calendar.LeastUseful.Minutes);
        var sessions = new List<Session>();
        foreach (var stay in stays)
        {
            if (stay.Time.Duration < least)
            {
                Drop(stay.Hours, UnusedReason.TooShort, stay.Time.Duration);
                continue;
            }

            var zone = calendar.Place.Zone;
            sessions.Add(new(calendar.Worker, date, stay.Time.Start.InZone(zone), stay.Time.End.InZone(zone), calendar.Overhead, calendar.Quiet));
        }

        return sessions;
    }

    private Instant EndOfTheDayBefore()
    {
        // A clock put back over midnight shows the end of yesterday after the beginning of today.
        var before = date.PlusDays(-1);
        if (IsClosed(before))
        {
            return Instant.MinValue;
        }

        var ends = HoursOf(before).Items.Select(hours => ClockChange.RealTime(hours, before, calendar.Place.Zone)?.End ?? Instant.MinValue);
        return ends.DefaultIfEmpty(Instant.MinValue).Max();
    }

    private ShopHours HoursOf(LocalDate day) => calendar.Extra.On(day) ?? calendar.Week[day.DayOfWeek];

    private bool IsClosed(LocalDate day) => calendar.Extra.On(day) is null && calendar.Closed.Contains(day);

    private void Drop(DayHours hours, UnusedReason reason, Duration left) =>
        unused.Add(new(calendar.Worker, date, hours, reason, left));

    /// <summary>Hours with the real time that is still left of them.</summary>
    internal sealed record Stay(DayHours Hours, Interval Time);
}
