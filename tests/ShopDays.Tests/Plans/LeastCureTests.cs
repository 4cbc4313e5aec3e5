using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Tests.Days;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>Cures that are not longer hours of the week, done by the figures in their words.</summary>
public sealed class LeastCureTests
{
    [Fact]
    public void Quiet_hours_that_leave_too_little_are_to_be_shorter_by_the_least_that_is_enough()
    {
        // Between a quarter past nine and ten there are 45 minutes for noise, on any day.
        Is(Noisy(55), UnplannableKind.QuietHours, "'quiet' of \"10:00-09:05\" instead of \"10:00-09:15\"");
        Is(Noisy(106), UnplannableKind.QuietHours, "'quiet' of \"10:00-08:14\" instead of \"10:00-09:15\"");
    }

    [Fact]
    public void Shorter_quiet_is_offered_beside_longer_hours()
    {
        var job = new AJob().Worker("09:00-10:30", "10:00-08:00").Task("mortise", 70, Loud);
        var cure = Assert.Single(job.Reasons()).Cure;
        Assert.Equal("hours from 08:50 to 10:30 on Mondays, 10 min more, or 'quiet' of \"10:10-08:00\" instead of \"10:00-08:00\"", cure);
        Assert.All(cure.Split(", or "), way => Works(job, way));
    }

    [Fact]
    public void A_noisy_task_that_is_fixed_within_quiet_hours_is_offered_the_least_less_of_quiet()
    {
        var job = new AJob().Worker("08:00-12:00", "10:00-09:15").Task("drop the trestle", 30, task => Loud(task) with { Appointed = new(new(2027, 3, 2), new(9, 50)) });
        var cure = Assert.Single(job.Reasons()).Cure;
        Assert.Equal("'quiet' of \"10:20-09:15\" instead of \"10:00-09:15\", or another time, such as 2027-03-03 09:15, outside quiet hours", cure);
        Works(job, cure.Split(", or ")[0]);
    }

    [Fact]
    public void In_a_shop_without_a_week_it_is_said_which_date_must_be_longer()
    {
        static AJob Job(double minutes) => new AJob()
            .Worker("09:00-11:00")
            .With(calendar => calendar with
            {
                Week = new(new Dictionary<IsoDayOfWeek, ShopHours>()),
                Extra = Shops.Extra("2027-03-06", "09:00-11:00").With(Shops.Extra("2027-03-13", "22:00-24:00")),
            })
            .Task("plane", minutes, task => task with { IsSplittable = true });
        Job(240).Plan();
        Is(Job(242), UnplannableKind.TooLong, "hours from 09:00 to 11:05 on 2027-03-06, 5 min more");
        Assert.Equal("another 'extra' date, with 16 h or more for the work", Assert.Single(Job(1200).Reasons()).Cure);
    }

    [Fact]
    public void A_cap_on_heavy_work_is_named_where_the_one_who_has_none_is_gone_by_then()
    {
        // Cyd helps on Monday, while the glue is wet; from Tuesday on there is only Ben.
        var job = new AJob { Limits = new() { Workers = 3, HeavyOf = new Dictionary<string, WorkTime> { ["ben"] = WorkTime.FromMinutes(30) } } }
            .Worker("09:00-13:00", name: "anna", days: [IsoDayOfWeek.Monday, IsoDayOfWeek.Wednesday])
            .Worker("09:00-13:00", name: "ben", days: IsoDayOfWeek.Wednesday)
            .Worker("09:00-12:00", name: "cyd")
            .With(calendar => calendar with { Week = new(new Dictionary<IsoDayOfWeek, ShopHours>()), Extra = Shops.Extra("2027-03-01", "09:00-12:00") })
            .Task("glue", 30)
            .Task("carry", 46, task => task with { Crew = 2, WorkClass = WorkClass.Heavy })
            .Then("glue", "carry", new(Duration.FromHours(24), "it sets"));
        Is(job, UnplannableKind.TooHeavyForADay, "46 min as 'heavy-per-day' of ben under 'workers'");
        Assert.Contains("'heavy-per-day' of ben under 'workers' allows 30 min a day", Assert.Single(job.Reasons()).Limit, StringComparison.Ordinal);
    }

    private static AJob Noisy(double minutes) => new AJob().Worker("08:00-12:00", "10:00-09:15").Task("mortise", minutes, Loud);

    private static ShopTask Loud(ShopTask task) => task with { IsNoisy = true };

    private static void Is(AJob job, UnplannableKind kind, string cure)
    {
        var reason = Assert.Single(job.Reasons());
        Assert.Equal((kind, cure), (reason.Kind, reason.Cure));
        Works(job, cure);
    }

    /// <summary>Done as said it makes a plan, and with a minute less it makes none.</summary>
    private static void Works(AJob job, string cure)
    {
        Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(job.Request().Cured(cure)));
        Assert.IsType<PlanAnswer.CannotBePlanned>(PlanMaker.Plan(job.Request().Cured(cure, less: 1)));
    }
}
