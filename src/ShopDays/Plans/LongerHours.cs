using System.Collections.Immutable;
using NodaTime;
using ShopDays.Days;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans;

/// <summary>Looks for the day on which the least more hours would let some work be done, and tries them in the very calendars.</summary>
internal sealed class LongerHours(PlanRequest request, OpenHours hours)
{
    private const int UsualOpening = 9 * 60;

    /// <summary>Nobody opens the shop at seven minutes past: hours are said to the next five minutes, on the longer side.</summary>
    private const int Step = 5;

    /// <summary>The least more hours of a day in the year from a date; null when no day is long enough.</summary>
    /// <param name="lone">The work by itself.</param>
    /// <param name="crew">How many people must be there, 1 or more.</param>
    /// <param name="from">The first date that can be used.</param>
    public HoursWanted? InTheYearFrom(ScheduleProblem lone, int crew, LocalDate from)
    {
        var dates = Enumerable.Range(0, OpenHours.FirstDays).Select(from.PlusDays).ToList();
        return Least(lone, crew, team => dates
            .Where(date => team.All(worker => !IsClosed(request.Calendars[worker], date)))
            .GroupBy(date => team.Any(worker => request.Calendars[worker].Extra.On(date) is not null) ? (IsoDayOfWeek.None, date) : (date.DayOfWeek, default))
            .Select(alike => alike.MinBy(date => (IsBegun(date), Drawbacks(team, date)))), null);

        // Of the first day a part may be over, or taken by what must come before.
        bool IsBegun(LocalDate date) => hours.MinuteOf(date) < lone.Tasks.Max(task => task.NotBefore) || hours.MinuteOf(date) < hours.Begin;
    }

    /// <summary>The least more hours of one date; null when the date is not long enough or work may not be done at such a time.</summary>
    /// <param name="lone">The work by itself.</param>
    /// <param name="crew">How many people must be there, 1 or more.</param>
    /// <param name="date">The date.</param>
    /// <param name="opening">When the shop would be opened for it; null for any time.</param>
    public HoursWanted? On(ScheduleProblem lone, int crew, LocalDate date, int? opening) => Least(lone, crew, _ => [date], opening) is { } wanted ? wanted with { EveryWeek = false } : null;

    /// <summary>Whether anybody has hours every week.</summary>
    public bool HasWeek => request.Calendars.Any(calendar => Enum.GetValues<IsoDayOfWeek>().Any(day => day != IsoDayOfWeek.None && calendar.Week[day].Items.Any()));

    /// <summary>The least that the hours of somebody's extra date must end later.</summary>
    /// <param name="isEnough">Whether the workers' calendars are enough.</param>
    /// <returns>The date with its hours; null when none can be made long enough.</returns>
    public HoursWanted? OfExtraDates(Func<ImmutableArray<CompiledCalendar>, bool> isEnough)
    {
        HoursWanted? best = null;
        foreach (var (worker, calendar) in request.Calendars.Index())
        {
            foreach (var date in Enumerable.Range(0, hours.Days).Select(hours.First.PlusDays).Where(date => calendar.Extra.On(date) is { } own && own.Items.Any()))
            {
                var last = HoursOn(calendar, date).Items.Max(one => HoursMinutes.Of(one).To);
                if (Shortest(HoursMinutes.Day - last, more => isEnough(With(worker, date, last, last + more))) is { } more && Wanted([worker], date, last, Later(last + more)) is var wanted && (best is null || wanted.More < best.More))
                {
                    best = wanted;
                }
            }
        }

        return best;
    }

    private ImmutableArray<CompiledCalendar> With(int worker, LocalDate date, int from, int to)
    {
        var calendar = request.Calendars[worker];
        var longer = calendar with { Extra = calendar.Extra.With(new(new Dictionary<LocalDate, ShopHours> { [date] = HoursMinutes.With(HoursOn(calendar, date), from, to) })) };
        var sessions = hours.Sessions[worker].Where(one => one.Date != date).Concat(longer.On(date).Sessions).OrderBy(one => one.Start.ToInstant());
        return hours.Calendars.SetItem(worker, CompiledCalendar.Of([.. sessions], hours.Origin, hours.First, hours.Begin));
    }

    private HoursWanted? Least(ScheduleProblem lone, int crew, Func<int[], IEnumerable<LocalDate>> datesOf, int? opening)
    {
        HoursWanted? best = null;
        foreach (var team in lone.TeamsOf(crew))
        {
            foreach (var date in datesOf(team).Order())
            {
                foreach (var (from, to) in Spans(lone, team, date, opening))
                {
                    var wanted = Wanted(team, date, from, to);
                    best = best is null || wanted.More < best.More ? wanted : best;
                }
            }
        }

        return best;
    }

    /// <summary>The shortest spans that would do, one for each time with which they may begin or end: the least more begins or ends with hours that there are.</summary>
    private IEnumerable<(int From, int To)> Spans(ScheduleProblem lone, int[] team, LocalDate date, int? opening)
    {
        var there = team.SelectMany(worker => HoursOn(request.Calendars[worker], date).Items).Select(HoursMinutes.Of).ToList();
        IEnumerable<int> own = opening is { } first ? [first] : there.Count == 0 ? [UsualOpening] : [];
        foreach (var begin in there.Select(one => one.From).Concat(own.Select(Sooner)).Distinct())
        {
            if (Shortest(HoursMinutes.Day - begin, length => WouldDo(lone, team, date, begin, begin + length)) is { } length)
            {
                // In the first of them there may be quiet hours, in which nobody need be there.
                var end = begin + length;
                yield return (Math.Max(begin, Sooner(end - (Shortest(length, less => WouldDo(lone, team, date, end - less, end)) ?? length))), there.Exists(one => one.To == end) ? end : Later(end));
            }
        }

        foreach (var last in there.Select(one => one.To).Distinct())
        {
            if (Shortest(last, length => WouldDo(lone, team, date, last - length, last)) is { } length)
            {
                var begin = there.Exists(one => one.From == last - length) ? last - length : Sooner(last - length);
                yield return (begin, Math.Min(last, Later(begin + (Shortest(last - begin, less => WouldDo(lone, team, date, begin, begin + less)) ?? length))));
            }
        }
    }

    private static int Sooner(int minute) => minute - (minute % Step);

    private static int Later(int minute) => Math.Min(HoursMinutes.Day, (minute + Step - 1) / Step * Step);

    private static int? Shortest(int longest, Func<int, bool> wouldDo)
    {
        if (longest < 1 || !wouldDo(longest))
        {
            return null;
        }

        var (tooShort, enough) = (0, longest);
        while (enough - tooShort > 1)
        {
            var middle = (tooShort + enough) / 2;
            (tooShort, enough) = wouldDo(middle) ? (tooShort, middle) : (middle, enough);
        }

        return enough;
    }

    private bool WouldDo(ScheduleProblem lone, int[] team, LocalDate date, int from, int to) => LoneWork.CanBeDone(Changed.Workers(lone, [.. request.Calendars.Select((calendar, worker) =>
    {
        var other = team.Contains(worker)
            ? calendar with { Extra = calendar.Extra.With(new(new Dictionary<LocalDate, ShopHours> { [date] = HoursMinutes.With(HoursOn(calendar, date), from, to) })) }
            : calendar;
        return CompiledCalendar.Of(other.On(date).Sessions, hours.Origin, hours.First, hours.Begin);
    })]));

    private HoursWanted Wanted(int[] team, LocalDate date, int from, int to)
    {
        var (begin, end, more) = (0, HoursMinutes.Day, 0);
        foreach (var calendar in team.Select(worker => request.Calendars[worker]))
        {
            var before = HoursOn(calendar, date);
            var after = HoursMinutes.With(before, from, to);
            var around = after.Items.Select(HoursMinutes.Of).Single(one => one.From <= from && to <= one.To);
            (begin, end) = (Math.Max(begin, around.From), Math.Min(end, around.To));
            more += HoursMinutes.Total(after) - HoursMinutes.Total(before);
        }

        return new(
            [.. team.Select(worker => request.Calendars[worker].Worker)],
            request.Calendars.Count > team.Length,
            date,
            team.All(worker => request.Calendars[worker].Extra.On(date) is null),
            HoursMinutes.Between(begin, end),
            more)
        {
            EndsTwice = end < HoursMinutes.Day && ClockChange.IsDoubled(date + LocalTime.FromMinutesSinceMidnight(end), request.Zone),
        };
    }

    /// <summary>What makes a date one that does not stand for all with its day of the week, the worst first; the least is the best.</summary>
    private (bool ClockChanges, bool Promised, double Dark) Drawbacks(int[] team, LocalDate date)
    {
        var zone = request.Zone;
        var day = new Interval(zone.AtStartOfDay(date).ToInstant(), zone.AtStartOfDay(date.PlusDays(1)).ToInstant());
        var calendar = request.Calendars[team[0]];
        return (
            day.Duration != Duration.FromDays(1),
            team.Any(worker => request.Calendars[worker].Appointments.Any(one => one.On == date)),
            -Daylight.In(day, calendar.Place, calendar.Daylight).Total.TotalMinutes);
    }

    private static bool IsClosed(WorkingCalendar calendar, LocalDate date) => calendar.Extra.On(date) is null && calendar.Closed.Contains(date);

    /// <summary>The hours that are written for a date, before daylight and appointments.</summary>
    public static ShopHours HoursOn(WorkingCalendar calendar, LocalDate date) => calendar.Extra.On(date) ?? (calendar.Closed.Contains(date) ? ShopHours.None : calendar.Week[date.DayOfWeek]);
}
