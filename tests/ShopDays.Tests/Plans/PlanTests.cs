using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class PlanTests
{
    private static readonly ClampsHeld OneShort = new(Length.FromInches(24m), 1);
    private static readonly ClampsHeld OneLong = new(Length.FromInches(48m), 1);

    [Fact]
    public void A_task_that_may_be_split_goes_on_in_the_next_session()
    {
        var plan = new AJob().Task("flatten the top", 150, task => task with { IsSplittable = true }).Plan();
        Assert.Equal([("01T09:00-01T11:00", true, false, 120.0), ("02T09:00-02T09:30", false, true, 30.0)], plan.Sessions.SelectMany(session => session.Work).Select(work => (Hours(work), work.IsFirstPiece, work.IsLastPiece, work.HandsOn.Minutes)));
        Assert.Equal(2, plan.ShopDays);
        Assert.Equal(plan.LowerBound.At, plan.Finish);
        Assert.Equal(Duration.Zero, plan.Gap);
    }

    [Fact]
    public void A_task_that_is_done_in_one_go_waits_for_a_session_with_room()
    {
        var plan = new AJob().Task("rip the legs", 70).Task("glue the panel", 60).Then("rip the legs", "glue the panel").Plan();
        Assert.Equal(["01T09:00-01T10:10", "02T09:00-02T10:00"], Work(plan));
    }

    [Fact]
    public void Minutes_are_whole_the_nearest_and_one_at_the_least()
    {
        var plan = new AJob().Task("mark out", 10.2).Task("bore", 0.3).Task("pare", 10.6).Then("mark out", "bore").Then("bore", "pare").Plan();
        Assert.Equal(["01T09:00-01T09:10", "01T09:15-01T09:16", "01T09:21-01T09:32"], Work(plan));
    }

    [Fact]
    public void Turning_to_other_work_costs_a_changeover_within_a_session_only()
    {
        var plan = new AJob().Task("mark out", 60).Task("saw", 55).Task("pare", 30).Then("mark out", "saw").Then("saw", "pare").Plan();
        Assert.Equal([0, 5, 0], plan.Sessions.SelectMany(session => session.Work).Select(work => work.Changeover.Minutes));
        Assert.Equal(["01T09:00-01T10:00", "01T10:05-01T11:00", "02T09:00-02T09:30"], Work(plan));
        Assert.Equal(1, plan.Changeovers);
    }

    [Fact]
    public void A_wait_runs_by_the_clock_through_the_night()
    {
        var plan = new AJob().Task("glue", 60).Task("plane", 30).Then("glue", "plane", new(Duration.FromHours(24), "glue hardens")).Plan();
        Assert.Equal(["01T09:00-01T10:00", "02T10:00-02T10:30"], Work(plan));
        var wait = Assert.Single(plan.Waits);
        Assert.Equal(("glue", "glue hardens", Duration.FromHours(24)), (wait.After!.Name, wait.Reason, wait.End - wait.Start));
        Assert.StartsWith("waits", plan.LowerBound.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wait_over_a_change_of_clocks_keeps_its_real_length()
    {
        // Friday 12 March 2027, the clock goes forward on Sunday: 72 hours after Friday 10:00 it is Monday 11:00.
        var plan = new AJob { Start = new(2027, 3, 12) }.Worker("09:00-12:00").Task("glue", 60).Task("plane", 30).Then("glue", "plane", new(Duration.FromHours(72), "glue hardens")).Plan();
        Assert.Equal(["12T09:00-12T10:00", "15T11:00-15T11:30"], Work(plan));
    }

    [Fact]
    public void The_finish_counts_the_waits_at_the_end()
    {
        var plan = new AJob().Task("last coat", 30).Closing("last coat", new(Duration.FromDays(14), "varnish hardens")).Plan();
        Assert.Equal(Instant.FromUtc(2027, 3, 1, 14, 30) + Duration.FromDays(14), plan.Finish.ToInstant());
    }

    [Fact]
    public void An_opening_wait_holds_its_tasks_back_and_no_others()
    {
        var plan = new AJob().Task("buy oak", 30).Task("draw", 30).Opening("the client agrees", Duration.FromDays(3), "buy oak").Plan();
        Assert.Equal(["01T09:00-01T09:30", "04T09:00-04T09:30"], Work(plan));
        Assert.Null(Assert.Single(plan.Waits).After);
    }

    [Fact]
    public void Days_of_an_opening_wait_are_days_of_the_calendar_also_when_the_clock_goes_back()
    {
        // The clock goes back on Sunday 7 November 2027: 30 times 24 hours from 15 October end at 23:00 on the 13th.
        var plan = new AJob { Start = new(2027, 10, 15) }.Task("buy oak", 30).Opening("the client agrees", Duration.FromDays(30), "buy oak").Plan();
        Assert.Equal(new LocalDateTime(2027, 11, 14, 0, 0), Assert.Single(plan.Waits).End.LocalDateTime);
    }

    [Fact]
    public void Nothing_is_said_to_end_on_a_closed_day_where_work_comes_last()
    {
        // Friday's two hours hold the glue; the shortest wait behind it ends on Saturday, and work is done on Monday.
        var plan = new AJob { Start = new(2027, 3, 5) }
            .Task("glue", 120, task => task with { IsSplittable = true })
            .Task("plane", 1)
            .Then("glue", "plane", new(Duration.FromHours(24), "glue hardens"))
            .Plan();
        Assert.Equal(new LocalDateTime(2027, 3, 8, 9, 1), plan.LowerBound.At.LocalDateTime);
        Assert.Equal(plan.Finish, plan.LowerBound.At);
    }

    [Fact]
    public void Heavy_work_stops_at_its_cap_and_light_work_goes_on()
    {
        var plan = new AJob { Limits = new() { HeavyPerDay = WorkTime.FromMinutes(60) } }
            .Task("rip", 120, task => task with { WorkClass = WorkClass.Heavy, IsSplittable = true })
            .Task("carve", 50)
            .Plan();
        Assert.Equal([60, 36, 24], plan.Sessions.Select(session => session.Work.Where(work => work.Task.Name == "rip").Sum(work => work.HandsOn.Minutes)));
        Assert.StartsWith("heavy work", plan.LowerBound.Reason, StringComparison.Ordinal);
        Assert.Contains("1 h a day and 1 h 36 min in two days running", plan.LowerBound.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Noisy_work_keeps_out_of_quiet_hours()
    {
        var plan = new AJob().Worker("09:00-12:00", quiet: "06:00-10:00").Task("chop", 60, task => task with { IsNoisy = true }).Plan();
        Assert.Equal(["01T10:00-01T11:00"], Work(plan));
    }

    [Fact]
    public void Work_for_two_is_done_when_both_are_there()
    {
        var plan = new AJob()
            .Worker("09:00-12:00")
            .Worker("10:30-12:00", "", "helper", null, null, IsoDayOfWeek.Wednesday)
            .Task("carry the slab in", 30, task => task with { Crew = 2 })
            .Plan();
        Assert.Equal([("maker", "03T10:30-03T11:00"), ("helper", "03T10:30-03T11:00")], plan.Sessions.SelectMany(session => session.Work).Select(work => (work.Worker, Hours(work))));
    }

    [Fact]
    public void A_glue_up_waits_for_clamps_that_are_still_on()
    {
        var plan = TwoGlueUps(OneLong).Plan();
        Assert.Equal(["01T09:00-01T09:30", "02T09:30-02T10:00"], Work(plan));
    }

    [Fact]
    public void A_longer_clamp_serves_for_a_shorter_one()
    {
        var plan = TwoGlueUps(OneShort, OneLong).Plan();
        Assert.Equal(["01T09:00-01T09:30", "01T09:35-01T10:05"], Work(plan));
    }

    [Fact]
    public void A_wait_on_the_only_bench_stops_bench_work_but_not_sawing()
    {
        var plan = new AJob()
            .Task("glue", 30)
            .Task("fit", 30)
            .Task("saw", 30, task => task with { Stage = Stage.Sawing })
            .Task("trim", 10)
            .Then("glue", "trim", new(Duration.FromHours(24), "glue hardens", HoldsBench: true))
            .Then("glue", "fit")
            .Then("glue", "saw")
            .Plan();
        var byName = plan.Sessions.SelectMany(session => session.Work).ToDictionary(work => work.Task.Name, Hours);
        Assert.Equal("01T09:35-01T10:05", byName["saw"]);
        Assert.StartsWith("02T", byName["fit"], StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_raises_dust_while_a_coat_is_laid_on_or_still_takes_dust()
    {
        var plan = new AJob { Limits = new() { Benches = 2 } }
            .Worker("09:00-12:00")
            .Worker("09:00-12:00", name: "helper")
            .Task("coat the top", 60, task => task with { DustFreeAfter = Duration.FromHours(25) })
            .Task("coat the frame", 60, task => task with { DustFreeAfter = Duration.FromHours(1) })
            .Task("saw a shelf", 60, task => task with { IsDusty = true })
            .Task("plane a shelf", 60, task => task with { IsDusty = true })
            .Task("draw the next piece", 60)
            .Then("coat the top", "saw a shelf")
            .Then("coat the top", "plane a shelf")
            .Plan();
        var byName = plan.Sessions.SelectMany(session => session.Work).ToDictionary(work => work.Task.Name, Hours);
        Assert.Equal("01T09:00-01T10:00", byName["coat the top"]);

        // On the first day, or on the second so that it takes no dust any more when that is raised.
        Assert.True(string.CompareOrdinal(byName["coat the frame"], "02T09:01") < 0);
        Assert.Equal(["02T11:00-02T12:00", "02T11:00-02T12:00"], [byName["saw a shelf"], byName["plane a shelf"]]);
    }

    [Fact]
    public void A_coat_is_not_laid_on_while_a_helper_saws()
    {
        var plan = new AJob()
            .Worker("09:00-12:00")
            .Worker("09:00-12:00", name: "helper")
            .Task("saw", 170, task => task with { IsDusty = true })
            .Task("coat", 30, task => task with { DustFreeAfter = Duration.FromHours(2) })
            .Closing("saw", new(Duration.FromDays(9), "the longer way"))
            .Plan();
        var byName = plan.Sessions.SelectMany(session => session.Work).ToDictionary(work => work.Task.Name, Hours);
        Assert.Equal(["01T09:00-01T11:50", "02T09:00-02T09:30"], [byName["saw"], byName["coat"]]);
    }

    [Fact]
    public void What_belongs_into_one_session_moves_there_together()
    {
        var plan = new AJob()
            .Task("saw", 60)
            .Task("spread and clamp", 40)
            .Task("square up", 30)
            .Then("saw", "spread and clamp")
            .Then("spread and clamp", "square up", sameSession: true)
            .Plan();
        Assert.Equal(["01T09:00-01T10:00", "02T09:00-02T09:40", "02T09:45-02T10:15"], Work(plan));
    }

    [Fact]
    public void A_job_without_tasks_is_finished_when_it_begins()
    {
        var plan = new AJob().Planned([[]]).Plan;
        Assert.Empty(plan.Sessions);
        Assert.Equal(plan.Begin, plan.Finish);
    }

    private static AJob TwoGlueUps(params ClampsHeld[] owned)
    {
        var wait = new Wait(Duration.FromHours(24), "glue sets in the clamps", HoldsClamps: true);
        return new AJob { Limits = new() { Clamps = owned } }
            .Task("glue the frame", 30, task => task with { Clamps = [OneShort] })
            .Task("glue the panel", 30, task => task with { Clamps = [OneShort] })
            .Closing("glue the frame", wait)
            .Closing("glue the panel", wait);
    }

    private static IEnumerable<string> Work(Plan plan) => plan.Sessions.SelectMany(session => session.Work).Select(Hours);

    private static string Hours(PlannedWork work) => $"{Text(work.Start)}-{Text(work.End)}";

    private static string Text(ZonedDateTime time) => time.ToString("dd'T'HH:mm", System.Globalization.CultureInfo.InvariantCulture);
}
