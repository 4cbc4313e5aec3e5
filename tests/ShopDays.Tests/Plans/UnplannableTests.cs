using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Tests.Days;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class UnplannableTests
{
    [Fact]
    public void Of_a_task_that_is_too_long_the_honing_in_it_is_told()
    {
        var reason = Assert.Single(new AJob().Task("shoot a joint", 125, task => task with { Honed = new("plane irons", 2, 1, WorkTime.FromMinutes(24)) }).Reasons());
        Assert.Equal("it takes 2 h 05 min in one go (24 min of it to hone the plane irons), and the longest session has 2 h of work", reason.Limit);
    }

    [Fact]
    public void Of_what_may_be_broken_off_the_honing_in_the_whole_of_it_is_told()
    {
        var reason = Assert.Single(new AJob().Task("shoot a joint", 300, task => task with { IsSplittable = true, LeastUseful = WorkTime.FromMinutes(125), Honed = new("plane irons", 2, 1, WorkTime.FromMinutes(24)) }).Reasons());
        Assert.Equal("it is worth beginning for 2 h 05 min at least (24 min of the whole to hone the plane irons), and the longest session has 2 h of work", reason.Limit);
    }

    [Fact]
    public void The_honing_is_told_too_where_it_is_only_when_a_task_can_begin_that_it_is_too_long()
    {
        // Sessions of three hours on two Saturdays, and then none: the first task lasts until they are over.
        var job = new AJob { Extra = Shops.Extra("2027-03-06", "09:00-12:00") }.Worker("09:00-10:00")
            .Task("saw", 2400, task => task with { IsSplittable = true }).Task("shoot a joint", 90, task => task with { Honed = new("plane irons", 2, 1, WorkTime.FromMinutes(24)) }).Then("saw", "shoot a joint");
        var reason = Assert.Single(job.Reasons());
        Assert.Contains("no session has 1 h 30 min of work (24 min of it to hone the plane irons) within the five years", reason.Limit, StringComparison.Ordinal);
    }

    [Fact]
    public void Tasks_that_are_all_too_long_are_cured_by_the_hours_of_the_longest()
    {
        var job = new AJob().Task("glue the carcass", 125).Task("glue the top", 147).Task("glue the base", 130);
        var reasons = job.Reasons();
        Assert.Equal(["glue the carcass", "glue the top", "glue the base"], reasons.Select(reason => reason.Task!.Name));
        Assert.All(reasons, reason => Assert.Equal("hours from 09:00 to 11:30 on Tuesdays, 30 min more", reason.Cure));
        Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(job.Request().Cured(reasons[0].Cure)));
        Assert.IsType<PlanAnswer.CannotBePlanned>(PlanMaker.Plan(job.Request().Cured(reasons[0].Cure, less: 1)));
    }

    [Theory]
    [InlineData(121, "11:05")]
    [InlineData(127, "11:10")]
    [InlineData(130, "11:10")]
    public void Hours_are_said_to_the_next_five_minutes(double minutes, string until) =>
        Assert.StartsWith($"hours from 09:00 to {until} on Mondays", Assert.Single(new AJob().Task("glue", minutes).Reasons()).Cure, StringComparison.Ordinal);

    [Fact]
    public void Hours_that_are_all_shorter_than_the_least_session_are_told_with_that_limit()
    {
        var reason = Assert.Single(new AJob().Worker("09:00-09:08").Task("plane", 5).Reasons());
        Assert.Equal(UnplannableKind.NoSessions, reason.Kind);
        Assert.Contains("10 min", reason.Limit, StringComparison.Ordinal);
        Assert.Contains("'least-session'", reason.Limit, StringComparison.Ordinal);
    }

    [Fact]
    public void A_task_longer_than_every_session_is_named_with_the_session_that_would_do() =>
        Is(new AJob().Task("glue the carcass", 125), UnplannableKind.NoSessionLongEnough, "glue the carcass", "it takes 2 h 05 min in one go, and the longest session has 2 h of work", "hours from 09:00 to 11:05 on Mondays, 5 min more");

    [Fact]
    public void Noise_that_fits_into_no_loud_stretch_is_named() =>
        Is(new AJob().Worker("18:00-21:00", quiet: "20:00-08:00").Task("chop", 150, task => task with { IsNoisy = true }), UnplannableKind.QuietHours, "chop", "no session has more than 2 h", "hours from 17:30 to 21:00 on Mondays, 30 min more");

    [Fact]
    public void A_heavy_task_over_the_cap_is_named() =>
        Is(new AJob { Limits = new() { HeavyPerDay = WorkTime.FromMinutes(60) } }.Task("resaw", 90, task => task with { WorkClass = WorkClass.Heavy }), UnplannableKind.TooHeavyForADay, "resaw", "'heavy-per-day' under 'limits' allows 1 h a day", "1 h 30 min as 'heavy-per-day' under 'limits'");

    [Fact]
    public void Clamps_that_are_not_owned_are_counted() =>
        Is(
            new AJob { Limits = new() { Clamps = [new(Length.FromInches(24m), 8), new(Length.FromInches(48m), 2)] } }.Task("glue", 30, task => task with { Clamps = [new(Length.FromInches(36m), 4)] }),
            UnplannableKind.NotEnoughClamps,
            "glue",
            "it takes 4 clamps of 914 mm or longer, and the shop has 2",
            "2 more clamps of 915 mm");

    [Fact]
    public void Clamps_of_two_reaches_that_are_not_owned_are_counted_together() =>
        Is(
            new AJob { Limits = new() { Clamps = [new(Length.FromMillimetres(600m), 4), new(Length.FromMillimetres(1200m), 2)] } }
                .Task("glue", 30, task => task with { Clamps = [new(Length.FromMillimetres(1200m), 4), new(Length.FromMillimetres(600m), 8)] }),
            UnplannableKind.NotEnoughClamps,
            "glue",
            "it takes 4 clamps of 1200 mm or longer, and the shop has 2, and 12 clamps of 600 mm or longer, and the shop has 6",
            "2 more clamps of 1200 mm and 4 more clamps of 600 mm under 'clamps' in shop.yaml, borrowed ones too");

    [Fact]
    public void A_shop_that_owns_no_clamps_lacks_them_and_one_that_does_not_say_lacks_nothing()
    {
        static AJob Job(IReadOnlyList<ClampsHeld>? owned) => new AJob { Limits = new() { Clamps = owned } }.Task("glue", 30, task => task with { Clamps = [new(Length.FromMillimetres(600m), 1)] });
        Is(Job([]), UnplannableKind.NotEnoughClamps, "glue", "it takes 1 clamp of 600 mm or longer, and the shop has none", "1 more clamp of 600 mm");
        Job(null).Plan();
    }

    [Fact]
    public void A_crew_larger_than_the_shop_is_named() =>
        Is(new AJob().Task("carry", 30, task => task with { Crew = 2 }), UnplannableKind.CrewTooLarge, "carry", "it takes 2 people, and 1 works in the shop", "1 more under 'workers': maker and a helper both there from 09:00 to 09:30 on Mondays");

    [Fact]
    public void Two_people_who_hardly_meet_are_named() =>
        Is(
            new AJob().Worker("09:00-11:00").Worker("10:30-12:00", name: "helper").Task("carry", 45, task => task with { Crew = 2 }),
            UnplannableKind.NotTogetherLongEnough,
            "carry",
            "they are there together for 30 min at most",
            "maker and helper both there from 10:30 to 11:15 on Mondays, 45 min from door to door");

    [Fact]
    public void Tasks_that_belong_together_and_fit_nowhere_are_named() =>
        Is(
            new AJob().Task("spread", 70).Task("square up", 60).Then("spread", "square up", sameSession: true),
            UnplannableKind.NoSessionForAllOfThem,
            "square up",
            "spread, square up belong in one session, take 2 h 10 min together",
            "hours from 09:00 to 11:15 on Mondays, 15 min more");

    [Fact]
    public void A_shop_without_sessions_is_said_so()
    {
        var reason = Assert.Single(new AJob { Start = new(2027, 1, 1) }.Worker("09:00-09:05").Task("saw", 5).Reasons());
        Assert.Equal(UnplannableKind.NoSessions, reason.Kind);
        Assert.Null(reason.Task);
    }

    [Fact]
    public void More_than_five_years_of_work_is_said_so()
    {
        // Ten minutes' heavy work a day, five days a week: some 13,000 minutes in five years.
        var job = new AJob { Limits = new() { HeavyPerDay = WorkTime.FromMinutes(10) } }.Task("rip", 20_000, task => task with { WorkClass = WorkClass.Heavy, IsSplittable = true });
        Assert.Equal(UnplannableKind.TooLong, Assert.Single(job.Reasons()).Kind);
    }

    [Fact]
    public void Work_beyond_the_first_year_is_planned_in_the_second()
    {
        var plan = new AJob { Limits = new() { HeavyPerDay = WorkTime.FromMinutes(10) } }.Task("rip", 3000, task => task with { WorkClass = WorkClass.Heavy, IsSplittable = true }).Plan();

        // 10, 6, 10, 6 and 10 minutes a week from Monday 1 March 2027: 71 weeks, and 10, 6 and 2 of another.
        Assert.Equal(AJob.Monday.PlusWeeks(71).PlusDays(2), plan.Finish.Date);
    }

    [Fact]
    public void Every_reason_is_given_at_once() =>
        Assert.Equal(["carry", "glue"], new AJob { Limits = new() { Clamps = [] } }.Task("carry", 30, task => task with { Crew = 2 }).Task("glue", 10, task => task with { Clamps = [new(Length.FromInches(36m), 4)] }).Reasons().Select(reason => reason.Task!.Name));

    private static void Is(AJob job, UnplannableKind kind, string task, string limit, string cure)
    {
        var reason = Assert.Single(job.Reasons());
        Assert.Equal((kind, task), (reason.Kind, reason.Task!.Name));
        Assert.Contains(limit, reason.Limit, StringComparison.Ordinal);
        Assert.Contains(cure, reason.Cure, StringComparison.Ordinal);
    }
}
