using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Tests.Days;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>Each cure is done exactly as it is said, and with one step less of it there is still no plan.</summary>
public sealed class CureTests
{
    [Fact]
    public void Hours_longer_by_what_is_said_give_sessions() => Cures(
        UnplannableKind.NoSessions,
        "hours from 09:00 to 09:10 on Mondays, 2 min more",
        more => new AJob().Worker(Span(9, 0, 8 + more)).Task("plane", 5),
        2);

    [Fact]
    public void A_least_session_of_what_is_said_gives_sessions() => Cures(
        UnplannableKind.NoSessions,
        "a 'least-session' of 8 min",
        less => new AJob().Worker("09:00-09:08").With(calendar => calendar with { LeastUseful = WorkTime.FromMinutes(10 - less) }).Task("plane", 5),
        2);

    [Fact]
    public void Hours_in_the_light_that_is_said_give_sessions()
    {
        var dark = new AJob().Worker("21:30-23:00").With(calendar => calendar with { Daylight = new(DaylightLimit.SunriseSunset, Duration.Zero) }).Task("plane", 60);
        Assert.Contains("between 05:12 and 20:19 on 2027-06-2", Cure(dark, UnplannableKind.NoSessions), StringComparison.Ordinal);
        new AJob().Worker("05:12-20:19").With(calendar => calendar with { Daylight = new(DaylightLimit.SunriseSunset, Duration.Zero) }).Task("plane", 60).Plan();
    }

    [Fact]
    public void A_date_that_is_opened_gives_a_session()
    {
        static AJob Job(ExtraDates extra) => new AJob { Extra = extra }.Worker("09:00-11:00").With(calendar => calendar with { Closed = new(new DateInterval(AJob.Monday, AJob.Monday.PlusYears(2))) }).Task("plane", 60);
        Assert.Contains("such as 2027-03-01, 09:00-11:00", Cure(Job(ExtraDates.None), UnplannableKind.NoSessions), StringComparison.Ordinal);
        Job(Shops.Extra("2027-03-01", "09:00-11:00")).Plan();
    }

    [Fact]
    public void As_many_people_more_as_are_said_are_a_crew() => Cures(
        UnplannableKind.CrewTooLarge,
        "2 more under 'workers': maker, helper 1 and helper 2 all there from 09:00 to 09:30 on Mondays, 30 min from door to door",
        more => Enumerable.Range(0, more).Aggregate(new AJob().Worker("09:00-11:00"), (job, helper) => job.Worker("09:00-11:00", name: $"helper {helper}")).Task("carry", 30, task => task with { Crew = 3 }),
        2);

    [Fact]
    public void As_many_clamps_more_as_are_said_are_enough() => Cures(
        UnplannableKind.NotEnoughClamps,
        "2 more clamps of 915 mm",
        more => new AJob { Limits = new() { Clamps = [new(Length.FromInches(24m), 8), new(Length.FromInches(36m), 2), new(Length.FromMillimetres(915m), more)] } }.Task("glue", 30, task => task with { Clamps = [new(Length.FromInches(36m), 4)] }),
        2);

    [Fact]
    public void As_much_floor_as_is_said_is_enough()
    {
        // 3.7137 m2 are written as 3.72 m2; each step is a hundredth.
        Cures(
            UnplannableKind.FloorTooSmall,
            "3.72 m2 of free floor",
            more => new AJob { Limits = new() { Floor = Area.FromSquareMetres((300 + more) / 100.0) } }.Task("glue", 30, task => task with { Floor = Area.FromSquareMetres(3.7137) }),
            72);

        // 23.4567 sq ft are 217.92 square decimetres, in whole ones 218, and those 23.47 sq ft.
        static AJob InFeet(double feet) => new AJob { Limits = new() { Floor = Area.FromSquareFeet(feet) }, Lengths = LengthFormat.Inches(16) }.Task("glue", 30, task => task with { Floor = Area.FromSquareFeet(23.4567) });
        Assert.Contains("23.5 sq ft of free floor", Cure(InFeet(20), UnplannableKind.FloorTooSmall), StringComparison.Ordinal);
        InFeet(23.5).Plan();
        Assert.Equal(UnplannableKind.FloorTooSmall, Assert.Single(InFeet(23.4).Reasons()).Kind);
    }

    [Fact]
    public void A_session_as_long_as_is_said_holds_the_task() => Cures(
        UnplannableKind.NoSessionLongEnough,
        "hours from 09:00 to 11:05 on Mondays, 5 min more",
        more => new AJob().Worker(Span(9, 0, 120 + more)).Task("glue the carcass", 125),
        5);

    [Fact]
    public void Noise_fits_into_as_much_as_is_said_outside_quiet_hours() => Cures(
        UnplannableKind.QuietHours,
        "hours from 17:30 to 21:00 on Mondays, 30 min more",
        more => new AJob().Worker($"{Clock((18 * 60) - more)}-21:00", quiet: "20:00-08:00").Task("chop", 150, task => task with { IsNoisy = true }),
        30);

    [Fact]
    public void As_much_heavy_work_as_is_said_makes_room() => Cures(
        UnplannableKind.TooHeavyForADay,
        "1 h 30 min as 'heavy-per-day' under 'limits'",
        more => new AJob { Limits = new() { HeavyPerDay = WorkTime.FromMinutes(60 + more) } }.Task("resaw", 90, task => task with { WorkClass = WorkClass.Heavy }),
        30);

    [Fact]
    public void Sessions_that_overlap_by_what_is_said_hold_a_crew() => Cures(
        UnplannableKind.NotTogetherLongEnough,
        "maker and helper both there from 10:30 to 11:15 on Mondays, 45 min from door to door",
        more => new AJob().Worker("09:00-11:00").Worker($"10:{30 - more:00}-12:00", name: "helper").Task("carry", 45, task => task with { Crew = 2 }),
        15);

    [Fact]
    public void A_session_as_long_as_is_said_holds_work_that_belongs_together() => Cures(
        UnplannableKind.NoSessionForAllOfThem,
        "hours from 09:00 to 11:35 on Mondays, 35 min more",
        more => new AJob().Worker(Span(9, 0, 120 + more))
            .Task("spread", 70)
            .Task("square up", 60)
            .Then("spread", "square up", new Wait(Duration.FromMinutes(25), "it grips"), sameSession: true),
        35);

    [Fact]
    public void As_much_heavy_work_a_day_as_is_said_ends_within_the_years() => Cures(
        UnplannableKind.TooLong,
        "19 min as 'heavy-per-day' under 'limits'",
        more => new AJob { Limits = new() { HeavyPerDay = WorkTime.FromMinutes(10 + more) } }.Task("rip", 20_000, task => task with { WorkClass = WorkClass.Heavy, IsSplittable = true }),
        9);

    [Fact]
    public void As_many_hours_a_week_as_are_said_end_within_the_years() => Cures(
        UnplannableKind.TooLong,
        "17 min more of work a week",
        more => new AJob().Worker(Span(9, 0, 60 + more), days: IsoDayOfWeek.Monday).Task("carve", 20_000, task => task with { IsSplittable = true }),
        17);

    [Fact]
    public void A_wait_shorter_by_what_is_said_ends_within_the_years() => Cures(
        UnplannableKind.TooLong,
        "a wait that is 6 d shorter",
        less => new AJob().Task("stack", 60).Task("plane", 60).Then("stack", "plane", new Wait(Duration.FromDays(1830) - Duration.FromMinutes(less), "it dries")),
        6 * 24 * 60);

    [Fact]
    public void Helpers_who_come_again_after_what_must_be_done_first_are_a_crew()
    {
        // The helper comes on one morning only; what must be done first takes the week.
        static AJob Job(string date) => new AJob()
            .Worker("09:00-11:00")
            .Worker("09:00-11:00", name: "helper")
            .With(calendar => calendar with { Week = new(new Dictionary<IsoDayOfWeek, ShopHours>()), Extra = Shops.Extra(date, "09:00-11:00") })
            .Task("joints", 540, task => task with { IsSplittable = true })
            .Task("turn it over", 30, task => task with { Crew = 2 })
            .Then("joints", "turn it over");
        var cure = Cure(Job("2027-03-02"), UnplannableKind.NotTogetherLongEnough);
        Assert.Equal("maker and helper both there from 09:00 to 09:30 on Mondays, 30 min from door to door", cure);
        Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(Job("2027-03-02").Request().Cured(cure)));
        Assert.IsType<PlanAnswer.CannotBePlanned>(PlanMaker.Plan(Job("2027-03-02").Request().Cured(cure, less: 1)));
        Job("2027-03-05").Plan();
        Assert.Equal(UnplannableKind.NotTogetherLongEnough, Assert.Single(Job("2027-03-04").Reasons()).Kind);
    }

    [Fact]
    public void A_date_beyond_the_years_is_said_so()
    {
        static AJob Job(LocalDate date) => new AJob().Task("plane", 60, task => task with { NotBefore = date });
        Assert.Contains("a date before 2032-03-01", Cure(Job(new(2032, 3, 1)), UnplannableKind.TooLong), StringComparison.Ordinal);
        Job(new(2032, 2, 27)).Plan();
    }

    [Fact]
    public void Hours_that_are_said_hold_an_appointment() => Cures(
        UnplannableKind.AppointmentNotKept,
        "hours from 13:50 to 15:15 on 2027-03-02",
        more => new AJob { Extra = more == 0 ? ExtraDates.None : new(new Dictionary<LocalDate, ShopHours> { [new(2027, 3, 2)] = Shops.Hours($"13:50-{Clock((13 * 60) + 50 + more)}") }) }
            .Worker("09:00-11:00", overhead: Shops.TenAndFifteen)
            .Task("client chooses", 60, task => task with { Appointed = new(new(2027, 3, 2), new(14, 0)) }),
        85);

    [Fact]
    public void An_appointment_at_the_time_that_is_said_is_kept()
    {
        // Two hours from Monday 09:00, the third on Tuesday until 10:00.
        static AJob Job(LocalTime at) => new AJob()
            .Task("plane", 180, task => task with { IsSplittable = true })
            .Task("client chooses", 30, task => task with { Appointed = new(new(2027, 3, 2), at) })
            .Then("plane", "client chooses");
        var reason = Assert.Single(Job(new(9, 15)).Reasons());
        Assert.Equal(UnplannableKind.AppointmentNotKept, reason.Kind);
        Assert.Contains("it is fixed for 2027-03-02 09:15, and what must come before it is not done by then", reason.Limit, StringComparison.Ordinal);
        Assert.Contains("agree on 2027-03-02 10:05", reason.Cure, StringComparison.Ordinal);
        Job(new(10, 5)).Plan();
        Assert.Equal(UnplannableKind.AppointmentNotKept, Assert.Single(Job(new(10, 4)).Reasons()).Kind);
    }

    [Fact]
    public void An_appointment_is_kept_when_work_begins_by_the_date_that_is_said()
    {
        // Five hours in sessions of two: by Friday morning they are done when they begin on Tuesday.
        static AJob Job(LocalDate start) => new AJob { Start = start }
            .Task("plane", 300, task => task with { IsSplittable = true })
            .Task("client chooses", 30, task => task with { Appointed = new(new(2027, 3, 5), new(9, 5)) })
            .Then("plane", "client chooses");
        Assert.EndsWith("; or begin by 2027-03-02, if that is still to come", Cure(Job(new(2027, 3, 4)), UnplannableKind.AppointmentNotKept), StringComparison.Ordinal);
        Assert.Equal(UnplannableKind.AppointmentNotKept, Assert.Single(Job(new(2027, 3, 3)).Reasons()).Kind);
        Job(new(2027, 3, 2)).Plan();
    }

    [Fact]
    public void Two_appointments_at_one_time_are_told_apart()
    {
        static AJob Job(LocalTime at) => new AJob()
            .Task("timber comes", 30, task => task with { Appointed = new(new(2027, 3, 2), new(9, 30)) })
            .Task("client chooses", 30, task => task with { Appointed = new(new(2027, 3, 2), at) });
        var reason = Assert.Single(Job(new(9, 45)).Reasons());
        Assert.Contains("leaves no time for it", reason.Limit, StringComparison.Ordinal);
        Assert.Contains("agree on 2027-03-02 10:20", reason.Cure, StringComparison.Ordinal);
    }

    [Fact]
    public void An_appointment_that_is_past_is_said_so()
    {
        var reason = Assert.Single(new AJob().Task("client chooses", 30, task => task with { Appointed = new(new(2027, 2, 26), new(9, 30)) }).Reasons());
        Assert.Equal(UnplannableKind.AppointmentNotKept, reason.Kind);
        Assert.Contains("2027-02-26 09:30, which is past", reason.Limit, StringComparison.Ordinal);
    }

    /// <summary>Nothing done is not enough and is said with its cure; one step less than the cure is not enough; the cure is.</summary>
    private static void Cures(UnplannableKind kind, string cure, Func<int, AJob> done, int steps)
    {
        Assert.Contains(cure, Cure(done(0), kind), StringComparison.Ordinal);
        Assert.Equal(kind, Assert.Single(done(steps - 1).Reasons()).Kind);
        done(steps).Plan();
    }

    private static string Cure(AJob job, UnplannableKind kind)
    {
        var reason = Assert.Single(job.Reasons());
        Assert.Equal(kind, reason.Kind);
        return reason.Cure;
    }

    private static string Span(int hour, int minute, int minutes) => FormattableString.Invariant($"{hour:00}:{minute:00}-{Clock((hour * 60) + minute + minutes)}");

    private static string Clock(int minutes) => FormattableString.Invariant($"{minutes / 60:00}:{minutes % 60:00}");
}
