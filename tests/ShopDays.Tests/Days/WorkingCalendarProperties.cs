using CsCheck;
using NodaTime;
using ShopDays.Days;
using Xunit;

namespace ShopDays.Tests.Days;

public sealed class WorkingCalendarProperties
{
    private const int Days = 7;

    [Fact]
    public void The_calendar_is_the_same_minute_by_minute() =>
        AnyCalendar.WithDate.Sample(
            (calendar, first) =>
            {
                var slow = new SlowCalendar(calendar);
                foreach (var day in calendar.From(first).Take(Days))
                {
                    Assert.Equal(slow.Sessions(day.Date), day.Sessions.Select(session => session.Span));
                }
            },
            iter: 150);

    [Fact]
    public void Sessions_follow_each_other() =>
        Each((_, sessions, _) => Assert.All(sessions.Zip(sessions.Skip(1)), pair => Assert.True(pair.First.Span.End <= pair.Second.Span.Start)));

    [Fact]
    public void Usable_time_is_the_stay_less_overhead_and_worth_coming_for() =>
        Each((calendar, sessions, _) => Assert.All(sessions, session =>
        {
            // Minutes are a double; sums of whole minutes are exact to far below this.
            var left = session.Span.Duration.TotalMinutes - calendar.Overhead.OpenUp.Minutes - calendar.Overhead.SweepUp.Minutes;
            Assert.Equal(left, session.UsableTime.Minutes, 1e-9);
            Assert.True(session.UsableTime >= calendar.LeastUseful);
        }));

    [Fact]
    public void No_session_is_on_a_closed_date_that_is_not_extra() =>
        Each((calendar, sessions, _) => Assert.All(sessions, session => Assert.True(calendar.Extra.On(session.Date) is not null || !calendar.Closed.Contains(session.Date))));

    [Fact]
    public void Every_session_lies_in_written_hours_and_every_written_hour_is_a_session_or_has_a_reason() =>
        Each((calendar, sessions, unused) =>
        {
            foreach (var date in sessions.Select(session => session.Date).Concat(unused.Select(hours => hours.Date)).Distinct())
            {
                var written = (calendar.Extra.On(date) ?? calendar.Week[date.DayOfWeek]).Items;
                var real = written.Select(hours => ClockChange.RealTime(hours, date, calendar.Place.Zone)).ToList();
                var all = new Stretches(real.OfType<Interval>());
                Assert.All(sessions.Where(session => session.Date == date), session => Assert.Contains(all.Items, span => Covers(span, session.Span)));

                // Hours that run into each other when the clock is put back share one session, so the joined stretch counts.
                Assert.All(written.Zip(real), hours => Assert.True(
                    unused.Any(one => one.Date == date && one.Hours.From <= hours.First.From && (one.Hours.EndWithTheDay || one.Hours.To >= hours.First.To))
                    || sessions.Any(session => hours.Second is { } span && all.Items.Any(stretch => Covers(stretch, span) && Covers(stretch, session.Span)))));
            }
        });

    [Fact]
    public void No_minute_of_a_session_is_dark() =>
        Each((calendar, sessions, _) =>
        {
            if (calendar.Daylight.Limit == DaylightLimit.None)
            {
                return;
            }

            var horizon = new Horizon(calendar.Place, calendar.Daylight.Limit);
            foreach (var session in sessions)
            {
                for (var at = session.Span.Start - calendar.Daylight.Margin; at <= session.Span.End + calendar.Daylight.Margin; at += Duration.FromMinutes(7))
                {
                    Assert.True(horizon.IsLight(at));
                }
            }
        });

    [Fact]
    public void Quiet_and_noisy_time_make_up_the_work() =>
        Each((_, sessions, _) => Assert.All(sessions, session =>
        {
            Assert.Equal(session.Work.Duration, session.Quiet.Within(session.Work).Total + session.NoisyWork.Total);
            Assert.All(session.NoisyWork.Items, span => Assert.True(session.Quiet.Within(span).IsEmpty));
        }));

    [Fact]
    public void More_hours_never_take_a_session_away() =>
        Gen.Select(AnyCalendar.WithDate, AnyCalendar.Week).Sample(
            (any, more) =>
            {
                var (calendar, first) = any;
                var last = first.PlusDays(Days - 1);
                var sessions = calendar.Between(first, last).Sessions;
                var richer = (calendar with { Week = Both(calendar.Week, more) }).Between(first, last).Sessions;
                Assert.All(sessions, session => Assert.Contains(richer, other => Covers(other.Span, session.Span)));
            },
            iter: 200);

    [Fact]
    public void A_span_of_dates_is_its_days_one_by_one() =>
        AnyCalendar.WithDate.Sample(
            (calendar, first) =>
            {
                var (sessions, unused) = calendar.Between(first, first.PlusDays(Days - 1));
                var days = calendar.From(first).Take(Days).ToList();
                Assert.Equal(sessions, days.SelectMany(day => day.Sessions));
                Assert.Equal(unused, days.SelectMany(day => day.Unused));
            },
            iter: 100);

    private static void Each(Action<WorkingCalendar, IReadOnlyList<Session>, IReadOnlyList<UnusedHours>> check) =>
        AnyCalendar.WithDate.Sample(
            (calendar, first) =>
            {
                var (sessions, unused) = calendar.Between(first, first.PlusDays(Days - 1));
                check(calendar, sessions, unused);
            },
            iter: 200);

    private static bool Covers(Interval outer, Interval inner) => outer.Start <= inner.Start && inner.End <= outer.End;

    private static ShopWeek Both(ShopWeek one, ShopWeek other) =>
        new(Enum.GetValues<IsoDayOfWeek>().Where(day => day != IsoDayOfWeek.None).ToDictionary(day => day, day => Both(one[day], other[day])));

    private static ShopHours Both(ShopHours one, ShopHours other)
    {
        var joined = new List<DayHours>();
        foreach (var next in one.Items.Concat(other.Items).OrderBy(hours => hours.From))
        {
            if (joined.Count > 0 && (joined[^1].EndWithTheDay || next.From <= joined[^1].To))
            {
                var further = joined[^1].EndWithTheDay || next.EndWithTheDay ? LocalTime.Midnight : LocalTime.Max(joined[^1].To, next.To);
                joined[^1] = DayHours.Between(joined[^1].From, further);
            }
            else
            {
                joined.Add(next);
            }
        }

        return new(joined);
    }
}
