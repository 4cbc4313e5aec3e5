using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Tests.Logbook;
using ShopDays.Tests.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>The rest of a job planned in the middle of it, in a shop open from 9 to 11 from Monday 1 March 2027 on.</summary>
public sealed class RemainingWorkTests
{
    private static readonly Wait Sets = new(Duration.FromHours(24), "glue hardens", HoldsClamps: true);

    [Fact]
    public void With_nothing_logged_and_planned_from_its_start_the_rest_is_the_whole_plan()
    {
        var request = GlueThenPlane().Opening("the client agrees", Duration.FromDays(2), "glue").Request([[60, 30, 20], [70, 45, 10], [50, 20, 5]]);
        var left = Left(request, new ALog(), new ALog().Moment(1, 0));
        var (whole, rest) = (Planned(request), Planned(Of(request, left)));
        Assert.Equal(whole.Forecast.Finishes, rest.Forecast.Finishes);
        Assert.Equal(whole.Plan.Finish, rest.Plan.Finish);
        Assert.Equal(Work(whole.Plan), Work(rest.Plan));
        Assert.Equal(whole.Plan.LowerBound.At, rest.Plan.LowerBound.At);
        Assert.Equal(whole.Plan.LowerBound.Reason, rest.Plan.LowerBound.Reason);
    }

    [Fact]
    public void Before_anything_is_done_nothing_is_planned_before_the_start()
    {
        var request = GlueThenPlane().Request();
        var left = Left(request, new ALog(), Instant.FromUtc(2027, 2, 20, 12, 0));
        Assert.Equal(Work(Planned(request).Plan), Work(Planned(Of(request, left)).Plan));
    }

    [Fact]
    public void Of_a_session_that_has_begun_only_the_rest_is_there()
    {
        var request = new AJob().Task("saw", 90, task => task with { IsSplittable = true }).Request();
        var left = Left(request, new ALog(), new ALog().Moment(1, 10));
        Assert.Equal(["01T10:00-01T11:00", "02T09:00-02T09:30"], Work(Planned(Of(request, left)).Plan));
    }

    [Fact]
    public void What_dries_after_work_that_was_passed_over_is_waited_for_though_the_next_step_is_done()
    {
        var request = new AJob()
            .Task("coat 1", 20).Task("rub down", 20).Task("coat 2", 20)
            .Then("coat 1", "rub down", new(Duration.FromHours(20), "it dries")).Then("rub down", "coat 2")
            .Request();
        var log = new ALog().Done("rub down", 20, 1, 9.5);
        var plan = Planned(Of(request, Left(request, log, log.Moment(1, 10)))).Plan;

        Assert.Equal(["01T10:00-01T10:20", "02T09:00-02T09:20"], Work(plan));
        Assert.Equal(["it dries"], plan.Waits.Select(one => one.Reason));
    }

    [Fact]
    public void A_wait_after_glue_that_was_set_ends_at_its_time_by_the_clock()
    {
        var request = GlueThenPlane().Request();
        var log = new ALog().Done("glue", 60, 1, 9.75);
        var left = Left(request, log, log.Moment(1, 10.5));
        var wait = Assert.Single(left.UnderWay.Waits);
        Assert.Equal((log.Moment(1, 9.75), log.Moment(2, 9.75)), (wait.Start, wait.Until));

        var plan = Planned(Of(request, left)).Plan;
        Assert.Equal(["01T10:30-01T10:50", "02T09:45-02T10:15"], Work(plan));
        Assert.Equal(["glue hardens"], plan.Waits.Select(one => one.Reason));
    }

    [Fact]
    public void A_wait_that_is_over_holds_nothing_back()
    {
        var request = GlueThenPlane().Request();
        var left = Left(request, new ALog().Done("glue", 60, 1, 10), new ALog().Moment(3, 9));
        Assert.Empty(left.UnderWay.Waits);
        Assert.Equal("03T09:00", Work(Planned(Of(request, left)).Plan)[0][..8]);
    }

    [Fact]
    public void Of_a_day_without_an_hour_the_end_of_its_last_session_counts()
    {
        var left = Left(GlueThenPlane().Request(), new ALog().DoneOn("glue", 60, 1), new ALog().Moment(1, 20));
        Assert.Equal(new ALog().Moment(2, 11), Assert.Single(left.UnderWay.Waits).Until);
    }

    [Fact]
    public void Clamps_stay_on_until_the_glue_is_hard_and_are_free_then()
    {
        var clamps = new ClampsHeld(Length.FromInches(24m), 2);
        var request = new AJob { Limits = new() { Clamps = [clamps] } }
            .Task("glue the lid", 30, task => task with { Clamps = [clamps] })
            .Task("clean the lid", 10)
            .Task("glue the box", 30, task => task with { Clamps = [clamps] })
            .Then("glue the lid", "clean the lid", Sets)
            .Request();
        var log = new ALog().Done("glue the lid", 30, 1, 9.5);
        var plan = Planned(Of(request, Left(request, log, log.Moment(1, 9.5)))).Plan;
        Assert.All(plan.Sessions.SelectMany(session => session.Work).Where(work => work.Task.Name == "glue the box"), work => Assert.True(work.Start.ToInstant() >= log.Moment(2, 9.5)));

        // The lid is cleaned up before its time: then the clamps are off.
        log.Done("clean the lid", 10, 1, 9.75);
        Assert.Equal(["01T09:45-01T10:15"], Work(Planned(Of(request, Left(request, log, log.Moment(1, 9.75)))).Plan));
    }

    [Fact]
    public void No_dust_flies_until_a_coat_that_was_laid_on_has_dried()
    {
        var request = new AJob()
            .Task("oil the lid", 20, task => task with { DustFreeAfter = Duration.FromHours(20) })
            .Task("sand the box", 30, task => task with { IsDusty = true })
            .Request();
        var log = new ALog().Done("oil the lid", 20, 1, 9.5);
        Assert.Equal(["02T09:00-02T09:30"], Work(Planned(Of(request, Left(request, log, log.Moment(1, 9.5)))).Plan));
    }

    [Fact]
    public void The_job_is_not_finished_before_a_last_coat_that_was_laid_on_has_hardened()
    {
        var request = new AJob().Task("varnish", 20).Task("pack", 20).Closing("varnish", new(Duration.FromDays(7), "hardens")).Request();
        var log = new ALog().Done("varnish", 20, 1, 10);
        Assert.Equal(log.Moment(8, 10), Planned(Of(request, Left(request, log, log.Moment(1, 10)))).Plan.Finish.ToInstant());
    }

    [Fact]
    public void What_was_waited_for_has_come_when_work_that_it_held_back_is_begun()
    {
        var request = GlueThenPlane().Opening("the client agrees", Duration.FromDays(20), "glue", "plane").Request();
        var log = new ALog().Went("glue", 10, 1, 9.5);
        Assert.Empty(Left(request, log, log.Moment(1, 9.5)).Graph.Awaited);
        Assert.Single(Left(request, new ALog(), log.Moment(1, 9.5)).Graph.Awaited);
    }

    [Fact]
    public void A_wait_from_the_start_that_runs_still_ends_when_it_would_have()
    {
        var request = new AJob().Task("draw", 20).Task("buy oak", 20).Opening("the client agrees", Duration.FromDays(3), "buy oak").Request();
        var log = new ALog().Done("draw", 20, 1, 9.5);
        Assert.Equal(["04T09:00-04T09:20"], Work(Planned(Of(request, Left(request, log, log.Moment(2, 9)))).Plan));
    }

    [Fact]
    public void Heavy_work_of_the_day_counts_against_its_cap()
    {
        var request = new AJob { Limits = new() { HeavyPerDay = WorkTime.FromHours(1) } }.Task("saw", 50, task => task with { IsSplittable = true, WorkClass = WorkClass.Heavy }).Request();
        var left = RemainingWork.Of(request.Orders[0].Graph, JobStanding.Of(request.Orders[0].Graph, []), request.Calendars, request.Orders[0].Start, new ALog().Moment(1, 9), new Dictionary<string, WorkTime> { ["maker"] = WorkTime.FromMinutes(40) });
        Assert.Equal(["01T09:00-01T09:20", "02T09:00-02T09:30"], Work(Planned(Of(request, left)).Plan));
    }

    [Fact]
    public void Heavy_work_of_the_day_before_leaves_less_for_today()
    {
        var request = new AJob { Limits = new() { HeavyPerDay = WorkTime.FromHours(1) } }.Task("saw", 50, task => task with { IsSplittable = true, WorkClass = WorkClass.Heavy }).Request();
        var left = RemainingWork.Of(request.Orders[0].Graph, JobStanding.Of(request.Orders[0].Graph, []), request.Calendars, request.Orders[0].Start, new ALog().Moment(1, 9), heavyYesterday: new Dictionary<string, WorkTime> { ["maker"] = WorkTime.FromMinutes(60) });
        Assert.Equal(["01T09:00-01T09:36", "02T09:00-02T09:14"], Work(Planned(Of(request, left)).Plan));
    }

    [Fact]
    public void Done_and_left_are_all_tasks_once()
    {
        var request = GlueThenPlane().Request();
        var log = new ALog().Done("plane", 20, 2, 10).Went("glue", 5, 2, 10.5);
        var left = Left(request, log, log.Moment(2, 10.5));
        Assert.Equal(["glue", "wax"], left.Graph.Tasks.Select(task => task.Name));
        Assert.Equal([0, 2], left.Ids);
        Assert.Equal([5.0, 0], left.Spent.Select(spent => spent.Minutes));
    }

    [Fact]
    public void Where_the_middle_was_done_first_its_ends_keep_their_order_and_the_first_is_said_to_be_passed_over()
    {
        var request = GlueThenPlane().Then("plane", "wax").Request();
        var log = new ALog().Done("plane", 20, 1, 10);
        var left = Left(request, log, log.Moment(1, 10));
        var kept = Assert.Single(left.Graph.Precedences);
        Assert.Equal(("glue", "wax"), (left.Graph.Tasks[kept.Before].Name, left.Graph.Tasks[kept.After].Name));
        Assert.Equal([("glue", "plane")], left.PassedOver.Select(one => (one.Task.Name, one.By.Task.Name)));
    }

    [Fact]
    public void Of_a_task_with_a_quantity_the_quantity_that_remains_is_planned()
    {
        var rip = AnOperation.Named("rip", setup: 4).Of(10, setups: 4) with { Besides = WorkTime.FromMinutes(8) };
        var request = new AJob().Task("rip", 60, task => task with { Timing = rip }).Request();
        var log = new ALog().Went("rip", 20, 1, 10, LoggedWork.Of(rip) with { Quantity = 7.5 });
        var left = Left(request, log, log.Moment(1, 10));
        var timing = Assert.IsType<TaskTiming.ByOperation>(Assert.Single(left.Graph.Tasks).Timing);
        Assert.Equal((2.5, 1.0, 2.0), (timing.Quantity, timing.Setups, timing.Besides.Minutes));
        Assert.Equal(0, left.Spent[0].Minutes);
    }

    [Fact]
    public void With_nothing_left_the_finish_is_when_the_last_wait_is_over()
    {
        var request = new AJob().Task("varnish", 20).Closing("varnish", new(Duration.FromDays(7), "hardens")).Request();
        var log = new ALog().Done("varnish", 20, 1, 10);
        var left = Left(request, log, log.Moment(2, 10));
        Assert.Empty(left.Graph.Tasks);
        Assert.Equal(log.Moment(8, 10), Planned(Of(request, left)).Plan.Finish.ToInstant());
    }

    private static AJob GlueThenPlane() => new AJob().Task("glue", 60).Task("plane", 30).Task("wax", 20).Then("glue", "plane", Sets);

    private static RemainingWork Left(PlanRequest request, ALog log, Instant now) =>
        RemainingWork.Of(request.Orders[0].Graph, JobStanding.Of(request.Orders[0].Graph, log.Entries), request.Calendars, request.Orders[0].Start, now);

    /// <summary>Each task that is left takes what it takes as a whole; nothing here is half done but where that does not matter.</summary>
    private static PlanRequest Of(PlanRequest request, RemainingWork left) => request with
    {
        Orders =
        [
            .. request.Orders.Select(whole => whole with
            {
                Graph = left.Graph,
                Times = [.. left.Ids.Select(id => whole.Times[id])],
                Draws = new([.. whole.Draws.Minutes.Select(trial => left.Ids.Select(id => trial[id]).ToArray())], whole.Draws.Seed),
                UnderWay = left.UnderWay,
            }),
        ],
    };

    private static PlanAnswer.Planned Planned(PlanRequest request) => Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(request));

    private static IReadOnlyList<string> Work(Plan plan) => [.. plan.Sessions.SelectMany(session => session.Work).Select(work =>
        $"{work.Start:dd'T'HH':'mm}-{work.End:dd'T'HH':'mm}")];
}
