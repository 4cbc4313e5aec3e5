using CsCheck;
using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Tests.Logbook;
using ShopDays.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>What is awaited from others, in a shop open from 9 to 11 on every weekday from Monday 1 March 2027 on.</summary>
public sealed class AwaitedTests
{
    private const int Trials = 4000;

    private static readonly WaitGuess Guess = new(Duration.FromDays(3), Duration.FromDays(5), Duration.FromDays(12));

    [Fact]
    public void The_plan_takes_the_likely_length_and_nobody_works_on_it()
    {
        var planned = Drawing(asked: AJob.Monday).Planned();
        var wait = Assert.Single(planned.Plan.Waits);
        Assert.Equal((At(1, 0), At(6, 0), "the client's word: client agrees"), (wait.Start.LocalDateTime, wait.End.LocalDateTime, wait.Reason));
        Assert.Equal((At(4, 0), At(13, 0)), (wait.Awaited!.Early.LocalDateTime, wait.Awaited.Late.LocalDateTime));

        // Saturday and Sunday are closed.
        Assert.Equal([At(1, 9), At(8, 9)], planned.Plan.Sessions.SelectMany(session => session.Work).Select(work => work.Start.LocalDateTime));
        Assert.Equal(2, planned.Plan.Sessions.Sum(session => session.Work.Count));
    }

    // At any hour on any day, so that the finish tells the length to the minute.
    [Fact]
    public void In_one_course_of_ten_it_is_over_before_low_and_in_one_after_high()
    {
        var job = AlwaysOpen().Awaiting("client agrees", Guess, asked: AJob.Monday, holds: ["chalk out"]);
        var finishes = job.Planned(Draws(1)).Forecast.Finishes.Select(finish => (finish - job.Start.AtStartOfDayInZone(job.Zone).ToInstant()).TotalDays).ToList();
        Assert.Equal(Trials, finishes.Count);
        Assert.InRange(finishes.Count(days => days < 3) / (double)Trials, 0.08, 0.12);
        Assert.InRange(finishes.Count(days => days < 5) / (double)Trials, 0.46, 0.54);
        Assert.InRange(finishes.Count(days => days > 12.1) / (double)Trials, 0.08, 0.12);
    }

    [Fact]
    public void One_seed_gives_one_forecast_and_another_seed_another()
    {
        var job = AlwaysOpen().Awaiting("client agrees", Guess, asked: AJob.Monday, holds: ["chalk out"]);
        var request = job.Request(Draws(1));
        Assert.Equal(Finishes(request), Finishes(request));
        Assert.NotEqual(Finishes(request), Finishes(request with { Orders = [request.Orders[0] with { Draws = request.Orders[0].Draws with { Seed = 8 } }] }));
    }

    [Fact]
    public void It_is_named_among_what_decides_the_finish()
    {
        var trials = Enumerable.Range(0, 200).Select(trial => new double[] { 30 + (trial % 7), 30 }).ToArray();
        var first = Drawing(asked: AJob.Monday).Planned(trials).Forecast.Deciding[0];
        Assert.Equal(("the client's word: client agrees", true), (first.Task.Name, first.Awaited is not null));
        Assert.True(first.Share > 0.9);
    }

    [Fact]
    public void Asked_before_the_job_begins_it_is_partly_over_by_then() =>
        Assert.Equal(At(3, 9), Last(Drawing(asked: AJob.Monday.PlusDays(-3)).Plan()));

    [Fact]
    public void After_a_task_it_counts_from_the_end_of_that()
    {
        var plan = Drawing(after: ["draw"]).Plan();
        var wait = Assert.Single(plan.Waits);
        Assert.Equal(("draw", At(1, 9, 30), At(6, 9, 30)), (wait.After?.Name, wait.Start.LocalDateTime, wait.End.LocalDateTime));
    }

    [Fact]
    public void What_has_come_holds_back_until_its_date_and_is_no_wait_any_more()
    {
        var plan = Drawing(asked: AJob.Monday, arrived: AJob.Monday.PlusDays(2)).Plan();
        Assert.Empty(plan.Waits);
        Assert.Equal(At(3, 9), Last(plan));
    }

    [Fact]
    public void One_after_another_takes_both_waits_together()
    {
        var job = new AJob().Task("draw", 30).Task("chalk out", 30);
        var order = job.Order();
        var graph = new TaskGraph(
            order.Graph.Tasks,
            [],
            [
                new() { Decision = Of("drawing agreed", 4), Holds = [] },
                new() { Decision = Of("deposit", 3), AfterOthers = [0], Holds = [1] },
            ],
            []);
        var plan = Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(job.Request() with { Orders = [order with { Graph = graph }] })).Plan;
        Assert.Equal([At(5, 0), At(8, 0)], plan.Waits.Select(wait => wait.End.LocalDateTime));
        Assert.Equal(At(8, 9), Last(plan));
    }

    [Fact]
    public void While_it_may_still_come_in_time_the_likely_date_stands_in_the_plan()
    {
        var plan = Rest(Drawing(asked: AJob.Monday), Drawn(), day: 4).Plan;
        Assert.Equal((At(6, 0), 0), (Assert.Single(plan.Waits).End.LocalDateTime, plan.Waits[0].Awaited!.DaysLate));
    }

    [Fact]
    public void Past_its_likely_date_it_moves_the_plan_and_past_its_latest_it_is_called_late()
    {
        var after = Assert.Single(Rest(Drawing(asked: AJob.Monday), Drawn(), day: 9).Plan.Waits);
        Assert.True(after.End.Date > new LocalDate(2027, 3, 9));
        Assert.Equal(0, after.Awaited!.DaysLate);

        var late = Assert.Single(Rest(Drawing(asked: AJob.Monday), Drawn(), day: 16).Plan.Waits);
        Assert.True(late.End.Date > new LocalDate(2027, 3, 16));
        Assert.Equal(3, late.Awaited!.DaysLate);
    }

    [Fact]
    public void What_has_not_come_by_now_has_come_sooner_in_no_course() =>
        Assert.All(Rest(Drawing(asked: AJob.Monday), Drawn(), day: 9, trials: 300).Forecast.Finishes, finish => Assert.True(finish >= new ALog().Moment(9, 9.5)));

    [Fact]
    public void When_its_date_of_arrival_is_known_the_rest_waits_for_nothing()
    {
        var plan = Rest(Drawing(asked: AJob.Monday, arrived: new(2027, 3, 3)), Drawn(), day: 4).Plan;
        Assert.Empty(plan.Waits);
        Assert.Equal(At(4, 9), Last(plan));
    }

    [Fact]
    public void The_rest_counts_it_from_when_the_work_before_it_was_done()
    {
        var log = new ALog().Done("draw", 30, 2, 10);
        var wait = Assert.Single(Rest(Drawing(after: ["draw"]), log, day: 3).Plan.Waits);
        Assert.Equal((At(2, 10), At(7, 10)), (wait.Start.LocalDateTime, wait.End.LocalDateTime));
    }

    [Fact]
    public void What_another_had_to_come_before_counts_from_when_that_came()
    {
        var job = new AJob().Task("draw", 30).Task("chalk out", 30);
        var graph = new TaskGraph(
            job.Order().Graph.Tasks,
            [],
            [
                new() { Decision = Of("drawing agreed", 4) with { Arrived = new(2027, 3, 3) }, Holds = [] },
                new() { Decision = Of("deposit", 3), AfterOthers = [0], Holds = [1] },
            ],
            []);
        var left = RemainingWork.Of(graph, JobStanding.Of(graph, Drawn().Entries), job.Request().Calendars, AJob.Monday, new ALog().Moment(4, 8));
        var deposit = Assert.Single(left.Graph.Awaited);
        Assert.Equal(("deposit", new ALog().Moment(3, 0), 0), (deposit.Name, deposit.Since, deposit.AfterOthers.Count));
    }

    [Fact]
    public void It_has_come_when_work_that_it_held_back_is_begun_and_matters_to_nobody_when_that_is_done()
    {
        var graph = Drawing(asked: AJob.Monday).Order().Graph;
        Assert.Empty(Left(graph, Drawn().Went("chalk out", 10, 2, 10)).Graph.Awaited);
        Assert.Empty(Left(graph, new ALog().Done("chalk out", 10, 2, 10)).Graph.Awaited);
        Assert.Single(Left(graph, Drawn()).Graph.Awaited);

        static RemainingWork Left(TaskGraph graph, ALog log) => RemainingWork.Of(graph, JobStanding.Of(graph, log.Entries), new AJob().Request().Calendars, AJob.Monday, log.Moment(4, 8));
    }

    [Fact]
    public void It_is_no_hands_on_time_of_the_job_and_no_wait_of_its_own_where_it_runs_since_a_date()
    {
        Assert.Equal((60.0, 2, Duration.Zero), Estimate(Drawing(asked: AJob.Monday)));
        Assert.Equal((60.0, 2, Duration.FromDays(5)), Estimate(Drawing()));

        static (double Minutes, int Tasks, Duration Waits) Estimate(AJob job)
        {
            var order = job.Order();
            var estimate = JobEstimate.Of(order.Graph, order.Draws);
            return (estimate.HandsOn.P50.Minutes, estimate.Tasks, estimate.Waits);
        }
    }

    [Theory]
    [InlineData("client", false, "the client's word: oak")]
    [InlineData("the yard", true, "the yard's delivery: oak")]
    [InlineData("Saltmarsh Mills", true, "Saltmarsh Mills' delivery: oak")]
    [InlineData(null, true, "the delivery: oak")]
    [InlineData(null, false, "oak")]
    public void It_is_named_by_who_owes_it(string? from, bool isOrdered, string what) =>
        Assert.Equal(what, (Of("oak", 1) with { From = from, IsOrdered = isOrdered }).What);

    // Whatever is asked whenever and takes however long: nothing it holds back begins before it is over, and the bound holds.
    [Fact]
    public void Nothing_begins_before_what_it_waits_for() =>
        Gen.Select(Gen.Int[-10, 20], Gen.Int[0, 400], Gen.Bool, Gen.Bool).Sample(
            (asked, hours, hasDate, isAfter) =>
            {
                var job = Drawing(
                    WaitGuess.About(Duration.FromHours(hours)),
                    asked: hasDate ? AJob.Monday.PlusDays(asked) : null,
                    after: isAfter && !hasDate ? ["draw"] : null);
                var plan = job.Plan();
                Assert.True(Last(plan) >= plan.Waits.Single().End.LocalDateTime);
                Assert.True(plan.LowerBound.At.ToInstant() <= plan.Finish.ToInstant());
            },
            iter: 60);

    // Each order's waits keep their places, whichever orders share the shop and whether the last gives way.
    [Fact]
    public void Orders_that_share_a_shop_wait_each_for_its_own() =>
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9], Gen.Bool).Sample(
            (one, other, givesWay) =>
            {
                var (first, second) = (Drawing(WaitGuess.About(Duration.FromDays(one)), asked: AJob.Monday), Drawing(WaitGuess.About(Duration.FromDays(other)), after: ["draw"]));
                var request = first.Request() with { Orders = [first.Order() with { Name = "first" }, second.Order() with { Name = "second", GivesWay = givesWay }] };
                var plan = Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(request)).Plan;
                Assert.Equal(["first", "second"], plan.Waits.Select(wait => wait.Order).Order());
                foreach (var wait in plan.Waits)
                {
                    var held = plan.Sessions.SelectMany(session => session.Work).Single(work => work.Order == wait.Order && work.Task.Name == "chalk out");
                    Assert.True(held.Start.ToInstant() >= wait.End.ToInstant());
                    Assert.Equal(wait.Order == "first" ? one : other, (int)(wait.End - wait.Start).TotalDays);
                }
            },
            iter: 30);

    private static AJob Drawing(WaitGuess? guess = null, LocalDate? asked = null, string[]? after = null, LocalDate? arrived = null) =>
        new AJob().Task("draw", 30).Task("chalk out", 30).Awaiting("client agrees", guess ?? Guess, after, asked, arrived, "chalk out");

    private static AJob AlwaysOpen() => new AJob().Worker("00:00-24:00", days: [.. Enum.GetValues<IsoDayOfWeek>().Where(day => day != IsoDayOfWeek.None)]).Task("chalk out", 1);

    private static double[][] Draws(double minutes) => [.. Enumerable.Range(0, Trials).Select(_ => new[] { minutes })];

    private static ALog Drawn() => new ALog().Done("draw", 30, 1, 9.5);

    private static Decision Of(string name, int days) => new() { Name = name, Wait = WaitGuess.About(Duration.FromDays(days)), Before = [] };

    private static IReadOnlyList<Instant> Finishes(PlanRequest request) => Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(request)).Forecast.Finishes;

    private static LocalDateTime At(int day, int hour, int minute = 0) => new(2027, 3, day, hour, minute);

    private static LocalDateTime Last(Plan plan) => plan.Sessions[^1].Work[^1].Start.LocalDateTime;

    /// <summary>What is left early on the morning of a day of March, planned.</summary>
    private static PlanAnswer.Planned Rest(AJob job, ALog log, int day, int trials = 1)
    {
        var request = job.Request();
        var whole = request.Orders[0];
        var left = RemainingWork.Of(whole.Graph, JobStanding.Of(whole.Graph, log.Entries), request.Calendars, whole.Start, log.Moment(day, 6));
        List<WorkTime> times = [.. left.Ids.Select(id => whole.Times[id])];
        return Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(request with
        {
            Orders = [whole with { Graph = left.Graph, Times = times, Draws = new([.. Enumerable.Range(0, trials).Select(_ => times.Select(time => time.Minutes).ToArray())], 7), UnderWay = left.UnderWay }],
        }));
    }
}
