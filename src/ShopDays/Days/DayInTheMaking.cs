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
        var known = new List<Stay>();
        foreach (var hours in open)
        {
            if (ClockChange.RealTime(hours, date, calendar.Place.Zone) is { } real && real.End > free)
            {
                known.Add(new(hours, new Interval(Instant.Max(free, real.Start), real.End)));
            }
            else
            {
                Drop(hours, UnusedReason.ClockSkipped, Duration.Zero);
            }
        }

        // Put back, the clock can show the next hours' beginning before these hours are over; put forward, it moves hours that it skips into others.
        foreach (var stay in known.OrderBy(one => one.Time.Start))
        {
            if (stays.Count == 0 || stay.Time.Start > stays[^1].Time.End)
            {
                stays.Add(stay);
            }
            else if (stay.Time.End > stays[^1].Time.End)
            {
                stays[^1] = new(DayHours.Between(stays[^1].Hours.From, stay.Hours.To), new Interval(stays[^1].Time.Start, stay.Time.End));
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

    /// <summary>Step 6, appointments and overhead: sessions of what is worth opening up for.</summary>
    public IReadOnlyList<Session> Sessions(IReadOnlyList<Stay> stays)
    {
        var zone = calendar.Place.Zone;
        var taken = Appointments();
        var sessions = new List<Session>();
        foreach (var stay in stays)
        {
            foreach (var (appointment, time) in taken)
            {
                if (new Stretches(time).Within(stay.Time) is { IsEmpty: false } lost)
                {
                    unused.Add(new(calendar.Worker, date, appointment.Hours, UnusedReason.Appointment, lost.Total) { Appointment = appointment.Name });
                }
            }

            var (used, tooShort) = BrokenStay.Of(stay.Time, new(taken.Select(one => one.Time)), calendar.Overhead, Duration.FromMinutes(calendar.LeastUseful.Minutes));
            foreach (var piece in tooShort)
            {
                Drop(piece == stay.Time ? stay.Hours : Written(piece, stay.Hours), UnusedReason.TooShort, piece.Duration);
            }

            sessions.AddRange(used.Select(piece => new Session(calendar.Worker, date, piece.Time.Start.InZone(zone), piece.Time.End.InZone(zone), piece.Overhead, calendar.Quiet)));
        }

        return sessions;
    }

    /// <summary>The appointments that may fall into the date's hours, in real time.</summary>
    private List<(Appointment Appointment, Interval Time)> Appointments()
    {
        var known = new List<(Appointment, Interval)>();
        foreach (var one in calendar.Appointments.Where(one => one.On == date))
        {
            if (ClockChange.RealTime(one.Hours, one.On, calendar.Place.Zone) is { } time)
            {
                known.Add((one, time));
            }
        }

        return known;
    }

    /// <summary>A piece of some hours by the clock; the hours themselves where the clock shows one time at both its ends.</summary>
    private DayHours Written(Interval piece, DayHours hours)
    {
        var (from, to) = (piece.Start.InZone(calendar.Place.Zone).TimeOfDay, piece.End.InZone(calendar.Place.Zone).TimeOfDay);
        return from == to ? hours : DayHours.Between(from, to);
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
