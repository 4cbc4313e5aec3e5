using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Days;

public sealed class WorkingCalendarTests
{
    private static readonly LocalDate Thursday = Shops.Date("2027-05-06");

    [Fact]
    public void Each_day_of_the_week_has_its_own_hours()
    {
        var week = new ShopWeek(new Dictionary<IsoDayOfWeek, ShopHours>
        {
            [IsoDayOfWeek.Tuesday] = Shops.Hours("19:00-21:15"),
            [IsoDayOfWeek.Saturday] = Shops.Hours("08:00-12:00", "13:00-17:30"),
        });
        var calendar = Shops.Calendar(Shops.NewYork) with { Week = week };
        var (sessions, unused) = calendar.Between(Shops.Date("2027-05-03"), Shops.Date("2027-05-09"));
        Assert.Equal(["04 19:00", "08 08:00", "08 13:00"], sessions.Select(session => FormattableString.Invariant($"{session.Start:dd HH:mm}")));
        Assert.Empty(unused);
    }

    [Fact]
    public void Opening_up_and_sweeping_up_are_taken_out_of_every_session()
    {
        var calendar = Shops.Calendar(Shops.NewYork, "08:00-12:00") with { Overhead = Shops.TenAndFifteen };
        var session = Assert.Single(calendar.On(Thursday).Sessions);
        Assert.Equal(new LocalTime(8, 10), session.WorkStart.TimeOfDay);
        Assert.Equal(new LocalTime(11, 45), session.WorkEnd.TimeOfDay);
        Assert.Equal(WorkTime.FromMinutes(215), session.UsableTime);
    }

    [Fact]
    public void A_closed_date_says_which_hours_it_took()
    {
        var calendar = Shops.Calendar(Shops.NewYork, "08:00-12:00") with { Closed = Shops.Closed("2027-05-06..2027-05-07") };
        var (sessions, unused) = calendar.Between(Thursday.PlusDays(-1), Thursday.PlusDays(2));
        Assert.Equal([5, 8], sessions.Select(session => session.Date.Day));
        Assert.Equal([(6, UnusedReason.Closed), (7, UnusedReason.Closed)], unused.Select(hours => (hours.Date.Day, hours.Reason)));
        Assert.All(unused, hours => Assert.Equal(Duration.FromHours(4), hours.Left));
    }

    [Fact]
    public void Extra_hours_stand_instead_of_the_weeks_and_win_over_closed()
    {
        var calendar = Shops.Calendar(Shops.NewYork, "08:00-12:00") with { Extra = Shops.Extra("2027-05-06", "09:00-16:00"), Closed = Shops.Closed("2027-05-06") };
        Assert.Equal(["09:00-16:00"], calendar.On(Thursday).Stays());
        Assert.Empty(calendar.On(Thursday).Unused);
    }

    [Fact]
    public void An_extra_date_without_hours_is_a_day_off() =>
        Assert.Empty((Shops.Calendar(Shops.NewYork, "08:00-12:00") with { Extra = Shops.Extra("2027-05-06") }).On(Thursday).Stays());

    [Fact]
    public void Hours_too_short_to_be_worth_opening_up_are_said_so()
    {
        var calendar = Shops.Calendar(Shops.NewYork, "08:00-09:09", "19:00-20:10") with { Overhead = Shops.TenAndFifteen };
        var day = calendar.On(Thursday);
        Assert.Equal(["19:00-20:10"], day.Stays());
        var unused = Assert.Single(day.Unused);
        Assert.Equal((UnusedReason.TooShort, Duration.FromMinutes(69), "08:00-09:09"), (unused.Reason, unused.Left, unused.Hours.ToString()));
    }

    [Fact]
    public void Polar_night_gives_no_session_and_says_why()
    {
        var calendar = Shops.Calendar(Shops.Longyearbyen, "08:00-16:00") with { Daylight = new(DaylightLimit.SunriseSunset, Duration.Zero) };
        var (sessions, unused) = calendar.Between(Shops.Date("2027-12-01"), Shops.Date("2027-12-31"));
        Assert.Empty(sessions);
        Assert.Equal(31, unused.Length);
        Assert.All(unused, hours => Assert.Equal(UnusedReason.NoDaylight, hours.Reason));
    }

    [Fact]
    public void Hours_are_cut_to_the_light_and_a_margin()
    {
        var margin = Duration.FromMinutes(15);
        var calendar = Shops.Calendar(Shops.NewYork, "06:00-19:00") with { Daylight = new(DaylightLimit.SunriseSunset, margin) };
        var date = Shops.Date("2027-03-01");
        var sun = Assert.IsType<LightPartOfDay>(Daylight.On(date, Shops.NewYork, DaylightLimit.SunriseSunset));
        var session = Assert.Single(calendar.On(date).Sessions);

        // Cut inwards to the whole minute.
        Assert.InRange(session.Span.Start - (sun.Rises[0] + margin), Duration.Zero, Duration.FromMinutes(1));
        Assert.InRange(sun.Sets[0] - margin - session.Span.End, Duration.Zero, Duration.FromMinutes(1));
        Assert.Equal((0, 0), (session.Start.Second, session.End.Second));
    }

    [Fact]
    public void Light_too_short_for_a_session_is_too_short()
    {
        var calendar = Shops.Calendar(Shops.NewYork, "17:00-22:00") with { Daylight = new(DaylightLimit.SunriseSunset, Duration.FromMinutes(15)) };
        var day = calendar.On(Shops.Date("2027-03-01"));
        Assert.Empty(day.Sessions);
        Assert.Equal(UnusedReason.TooShort, Assert.Single(day.Unused).Reason);
    }

    [Fact]
    public void Hours_to_midnight_and_from_midnight_are_two_sessions()
    {
        var (sessions, _) = Shops.Calendar(Shops.NewYork, "00:00-02:00", "22:00-24:00").Between(Thursday, Thursday.PlusDays(1));
        Assert.Equal(4, sessions.Length);
        Assert.Equal(sessions[1].End, sessions[2].Start);
        Assert.Equal(Thursday, sessions[1].Date);
    }

    [Fact]
    public void A_calendar_goes_on_for_as_long_as_it_is_asked()
    {
        var far = Shops.Calendar(Shops.NewYork, "08:00-12:00").From(Thursday).Skip(5000).First();
        Assert.Equal(Thursday.PlusDays(5000), far.Date);
        Assert.Single(far.Sessions);
    }

    [Fact]
    public void Nothing_is_not_a_least_session() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Shops.Calendar(Shops.NewYork) with { LeastUseful = WorkTime.Zero });
}
