using CsCheck;
using NodaTime;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Plans.Scheduling;
using ShopDays.Tests.Days;
using ShopDays.Tests.Plans;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "RFC 5545 (2009), 3.3.5, local times that come twice or not at all, with its two examples of New York, and 3.3.6, hours that are exact and days that are nominal; IANA time zone database, in the edition that NodaTime carries")]
public sealed class PlansOverClockChangesTests
{
    private static readonly IsoDayOfWeek[] EveryDay = [.. Enum.GetValues<IsoDayOfWeek>().Where(day => day != IsoDayOfWeek.None)];

    [Theory]
    [InlineData("2007-11-04", 1, 30, "2007-11-04T01:30:00-04")]
    [InlineData("2007-03-11", 2, 30, "2007-03-11T03:30:00-04")]
    public void An_appointment_at_a_doubled_time_is_at_the_first_and_at_a_skipped_time_by_the_old_clock(string date, int hour, int minute, string begins)
    {
        var plan = ANight(date).Task("watch the kiln", 30, task => task with { Appointed = new(Shops.Date(date), new(hour, minute)) }).Plan();
        Assert.Equal(begins, plan.Sessions.Single().Work.Single().Start.ToOffsetDateTime().ToString());
    }

    [Theory]
    [InlineData("2027-03-14", "2027-03-14T14:00:00-04")]
    [InlineData("2027-11-07", "2027-11-07T12:00:00-05")]
    [InlineData("2027-05-09", "2027-05-09T13:00:00-04")]
    public void Glue_that_hardens_for_a_day_of_hours_is_hard_at_another_hour_by_the_clock(string sunday, string hard)
    {
        var plan = Days(Shops.Date(sunday).PlusDays(-1))
            .Task("glue", 240)
            .Task("plane", 60)
            .Then("glue", "plane", new Wait(Duration.FromHours(24), "it hardens"))
            .Plan();
        var wait = Assert.Single(plan.Waits);
        Assert.Equal(hard, wait.End.ToOffsetDateTime().ToString());
        Assert.Equal(hard, plan.Sessions[^1].Work.Single().Start.ToOffsetDateTime().ToString());
    }

    [Theory]
    [InlineData("2027-03-14", 47)]
    [InlineData("2027-11-07", 49)]
    [InlineData("2027-05-09", 48)]
    public void Two_days_that_a_client_asks_for_end_at_the_same_hour_by_the_clock(string sunday, int hours)
    {
        var plan = Days(Shops.Date(sunday).PlusDays(-1))
            .Task("drawing", 240)
            .Task("chalk out", 60)
            .Awaiting("the client agrees", WaitGuess.About(Duration.FromDays(2)), after: ["drawing"], holds: ["chalk out"])
            .Plan();
        var wait = Assert.Single(plan.Waits);
        Assert.Equal(Duration.FromHours(hours), wait.End.ToInstant() - wait.Start.ToInstant());
        Assert.Equal((Shops.Date(sunday).PlusDays(1) + new LocalTime(13, 0), wait.End), (wait.End.LocalDateTime, plan.Sessions[^1].Work.Single().Start));
        Assert.True(plan.LowerBound.At.ToInstant() <= plan.Finish.ToInstant());
    }

    [Fact]
    public void The_clock_of_a_plan_counts_days_as_the_zone_does()
    {
        var zone = DateTimeZoneProviders.Tzdb["America/New_York"];
        var origin = zone.AtStartOfDay(new(2027, 1, 1)).ToInstant();
        var clock = CompiledClock.Of(zone, origin, 730);
        void CountsAlike(int minute, int days)
        {
            var start = (origin + Duration.FromMinutes(minute)).InZone(zone);
            var end = Awaited.EndOf(start, Duration.FromDays(days));
            Assert.Equal((end.ToInstant() - origin).TotalMinutes, clock.DaysAfter(minute, days));
        }

        Gen.Select(Gen.Int[0, 360 * 24 * 60], Gen.Int[1, 300]).Sample(CountsAlike);
        foreach (var change in zone.GetZoneIntervals(origin, origin + Duration.FromDays(660)).Skip(1).Select(spell => spell.Start))
        {
            var changes = (int)(change - origin).TotalMinutes;
            Gen.Select(Gen.Int[-150, 150], Gen.Int[1, 300]).Where((off, days) => changes + off - (days * 24 * 60) >= 0)
                .Sample((off, days) => CountsAlike(changes + off - (days * 24 * 60), days));
        }
    }

    [Theory]
    [InlineData("2027-03-14", 240)]
    [InlineData("2027-11-07", 360)]
    [InlineData("2027-05-09", 300)]
    public void A_session_over_the_change_holds_its_real_minutes_and_not_one_more(string date, int minutes)
    {
        var plan = ANight(date).Task("steam and bend", minutes).Plan();
        var work = plan.Sessions.Single().Work.Single();
        Assert.Equal((new LocalTime(0, 30), new LocalTime(5, 30)), (work.Start.TimeOfDay, work.End.TimeOfDay));
        Assert.Equal(Duration.FromMinutes(minutes), work.End.ToInstant() - work.Start.ToInstant());
        Assert.NotEqual(Shops.Date(date), FinishDate(ANight(date).Task("steam and bend", minutes + 1)));
    }

    [Fact]
    public void Work_that_goes_on_over_the_change_loses_and_gains_no_minute()
    {
        foreach (var start in new[] { new LocalDate(2027, 3, 12), new LocalDate(2027, 11, 5) })
        {
            var plan = new AJob { Start = start }.Worker("00:30-05:30", days: EveryDay).Task("carve", 1000, task => task with { IsSplittable = true }).Plan();
            var work = plan.Sessions.SelectMany(session => session.Work).ToList();
            Assert.Equal(1000, work.Sum(one => one.HandsOn.Minutes));
            Assert.Equal(1000, work.Sum(one => (one.End.ToInstant() - one.Start.ToInstant()).TotalMinutes));
            Assert.All(plan.Sessions, session => Assert.All(session.Work, one => Assert.True(
                one.Start.ToInstant() >= session.Session.WorkStart.ToInstant() && one.End.ToInstant() <= session.Session.WorkEnd.ToInstant())));
        }
    }

    private static AJob ANight(string date) => new AJob { Start = Shops.Date(date) }.Worker("00:30-05:30", days: EveryDay);

    private static AJob Days(LocalDate start) => new AJob { Start = start }.Worker("09:00-17:00", days: EveryDay);

    private static LocalDate? FinishDate(AJob job) => PlanMaker.Plan(job.Request()) is PlanAnswer.Planned planned ? planned.Plan.Finish.Date : null;
}
