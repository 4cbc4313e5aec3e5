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

/// <summary>Why a finish moved, in a shop open from 9 to 11 from Monday 1 March 2027 on.</summary>
public sealed class MovedFinishTests
{
    private static readonly RateModel Model = RateModel.FromPrior(new([]));

    [Fact]
    public void When_all_goes_as_planned_nothing_moves()
    {
        var log = new ALog().Done("task 0", 100, 1, 10 + (40.0 / 60)).Done("task 1", 100, 2, 10 + (40.0 / 60));
        var moved = Moved(Row(5), log, log.Moment(2, 11));
        Assert.Equal((0, 0), (moved.Days, moved.Moves.Count));
        Assert.Equal(new LocalDate(2027, 3, 5), moved.Promised);
    }

    [Fact]
    public void Two_weeks_without_work_are_the_sessions_that_went_by()
    {
        var moved = Moved(Row(5), new ALog(), new ALog().Moment(15, 0));
        Assert.Equal([(MoveCause.Sessions, 14)], moved.Moves.Select(one => (one.Cause, one.Days)));

        // Five tasks of 100 minutes, which the plan had done by then.
        Assert.Equal(500, moved.Moves[0].Work.Minutes);
        Assert.Equal((14, new LocalDate(2027, 3, 19)), (moved.Days, moved.Now));
    }

    [Fact]
    public void A_task_that_took_twice_as_long_moves_what_follows_and_no_session_is_missed()
    {
        // The first ends on Tuesday at 10:20; the second, of 100 minutes, then needs a session of its own.
        var log = new ALog().Done("task 0", 200, 2, 10 + (20.0 / 60));
        var moved = Moved(Row(4, splittableFirst: true), log, log.Moment(2, 10.5));
        Assert.Equal([(MoveCause.Took, 1)], moved.Moves.Where(one => one.Days != 0).Select(one => (one.Cause, one.Days)));
        Assert.Equal(100, moved.Moves.Single(one => one.Cause == MoveCause.Took).Work.Minutes);
    }

    [Fact]
    public void A_session_that_was_skipped_is_told_with_the_work_that_was_planned_in_it()
    {
        var log = new ALog().Done("task 0", 100, 1, 10 + (40.0 / 60));
        var moved = Moved(Row(5), log, log.Moment(2, 12));
        Assert.Equal([(MoveCause.Sessions, 3, 100.0)], moved.Moves.Select(one => (one.Cause, one.Days, one.Work.Minutes)));
    }

    [Fact]
    public void Work_done_ahead_of_its_session_brings_the_finish_forward()
    {
        // All of Tuesday's work on Monday evening.
        var log = new ALog().Done("task 0", 100, 1, 10 + (40.0 / 60)).Done("task 1", 100, 1, 20);
        var moved = Moved(Row(3), log, log.Moment(1, 21));
        Assert.Equal([(MoveCause.Sessions, -1, -100.0)], moved.Moves.Select(one => (one.Cause, one.Days, one.Work.Minutes)));
    }

    [Fact]
    public void Glue_that_was_set_late_lets_what_follows_wait_for_another_session()
    {
        // By plan the glue is set by 9:30 and hard a day later, in time for 90 minutes; set at 10:30, it lets no more than 30 of Tuesday's minutes.
        var job = new AJob().Task("glue", 30).Task("plane", 90).Then("glue", "plane", new Wait(Duration.FromHours(24), "glue hardens", HoldsClamps: true));
        var log = new ALog().Done("glue", 30, 1, 10.5);
        var moved = Moved(job, log, log.Moment(1, 10.5));
        Assert.Equal([(MoveCause.LateWaits, 1)], moved.Moves.Where(one => one.Days != 0).Select(one => (one.Cause, one.Days)));
    }

    [Fact]
    public void Work_to_come_that_is_expected_to_take_longer_is_told_apart_from_what_is_done()
    {
        var job = Row(3, splittableFirst: true);
        var log = new ALog().Done("task 0", 100, 1, 10 + (40.0 / 60));
        var promise = Promised(job);
        promise = promise with { Tasks = [.. promise.Tasks.Select(task => task.Name == "task 2" ? task with { Expected = WorkTime.FromMinutes(15) } : task)] };

        // Then both would have been done on Tuesday.
        var moved = Moved(job, log, log.Moment(1, 11), promise, [[100, 100, 15]]);
        Assert.Equal((MoveCause.ToCome, 1, 85.0), Assert.Single(moved.Moves.Where(one => one.Days != 0 && one.Cause != MoveCause.FilesChanged).Select(one => (one.Cause, one.Days, one.Work.Minutes))));
    }

    [Fact]
    public void A_task_that_came_in_is_told_with_its_time()
    {
        var promise = Promised(Row(3));
        var moved = Moved(Row(4), new ALog(), new ALog().Moment(1, 0), promise);
        Assert.Equal([(MoveCause.TasksChanged, 1, 100.0)], moved.Moves.Select(one => (one.Cause, one.Days, one.Work.Minutes)));
    }

    [Fact]
    public void Shorter_hours_are_a_cause_of_their_own()
    {
        var promise = Promised(new AJob().Task("task 0", 50).Task("task 1", 50));
        var job = new AJob().Task("task 0", 50).Task("task 1", 50).Worker("09:00-10:00");
        Assert.Equal([(MoveCause.FilesChanged, 1)], Moved(job, new ALog(), new ALog().Moment(1, 0), promise).Moves.Select(one => (one.Cause, one.Days)));
    }

    [Fact]
    public void A_word_that_has_not_come_is_a_cause_of_its_own()
    {
        // Likely on the 4th; on the 10th it is still awaited, and no session went by in which anything could be done.
        var job = new AJob().Task("draw", 30).Task("chalk out", 30).Awaiting("client agrees", WaitGuess.About(Duration.FromDays(3)), asked: AJob.Monday, holds: ["chalk out"]);
        var log = new ALog().Done("draw", 30, 1, 9.5);
        var moved = Moved(job, log, log.Moment(10, 6));
        var cause = Assert.Single(moved.Moves, one => one.Days != 0 && one.Cause != MoveCause.Luck);
        Assert.Equal(MoveCause.Awaited, cause.Cause);
        Assert.True(cause.Days > 6);
    }

    [Fact]
    public void A_word_that_came_late_moved_the_finish_by_as_many_days()
    {
        var job = new AJob().Task("draw", 30).Task("chalk out", 30).Awaiting("client agrees", WaitGuess.About(Duration.FromDays(3)), asked: AJob.Monday, arrived: new(2027, 3, 9), holds: ["chalk out"]);
        var asPromised = new AJob().Task("draw", 30).Task("chalk out", 30).Awaiting("client agrees", WaitGuess.About(Duration.FromDays(3)), asked: AJob.Monday, holds: ["chalk out"]);
        var log = new ALog().Done("draw", 30, 1, 9.5);
        Assert.Equal([(MoveCause.Awaited, 5)], Moved(job, log, log.Moment(9, 6), Promised(asPromised)).Moves.Where(one => one.Days != 0 && one.Cause != MoveCause.Luck).Select(one => (one.Cause, one.Days)));
    }

    [Fact]
    public void Less_bad_luck_ahead_brings_the_promised_date_nearer()
    {
        // Drawn times of the first task: one in three takes three sessions. Done as expected, it leaves nothing to be unlucky with.
        var job = Row(2, splittableFirst: true);
        double[][] then = [[100, 100], [100, 100], [340, 100]];
        var log = new ALog().Done("task 0", 100, 1, 10 + (40.0 / 60));
        var moved = Moved(job, log, log.Moment(1, 11), Promised(job, then), then);
        Assert.True(moved.IsSafe);
        var luck = Assert.Single(moved.Moves);
        Assert.Equal((MoveCause.Luck, moved.Days), (luck.Cause, luck.Days));
        Assert.True(moved.Days < 0);
    }

    [Fact]
    public void Where_only_the_safe_date_slips_because_the_pace_slowed_the_cause_is_the_pace()
    {
        // Four courses in five took up to 115 minutes a task, which the sessions of 120 hold; a tenth slower they do not. The likely 110 still fit.
        var then = Courses(3, 100, [0.8, 0.9, 1, 1.15, 1.3]);
        var drawn = Courses(3, 110, [0.8, 0.9, 1, 1.15, 1.3]);
        var promise = Promised(Row(3), then);
        var moved = Moved(Row(3, 110), new ALog(), new ALog().Moment(1, 0), promise, then, drawn);
        Assert.True(moved.IsSafe);
        Assert.Equal(promise.Planned.InZone(new ALog().Zone).Date, new LocalDate(2027, 3, 3));
        Assert.True(moved.Days > 0);
        var pace = Assert.Single(moved.Moves);
        Assert.Equal((MoveCause.ToCome, moved.Days, 30.0), (pace.Cause, pace.Days, pace.Work.Minutes));
    }

    [Theory]
    [InlineData(1.15, 1.3, 1)]
    [InlineData(1.3, 1.15, -1)]
    public void Where_only_the_ranges_became_wider_or_narrower_the_cause_is_how_well_the_times_are_known(double fourthThen, double fourthNow, int sign)
    {
        var then = Courses(3, 100, [0.8, 0.9, 1, fourthThen, 1.4]);
        var drawn = Courses(3, 100, [0.8, 0.9, 1, fourthNow, 1.4]);
        var moved = Moved(Row(3), new ALog(), new ALog().Moment(1, 0), Promised(Row(3), then), then, drawn);
        var certainty = Assert.Single(moved.Moves);
        Assert.Equal((MoveCause.Certainty, moved.Days, sign), (certainty.Cause, certainty.Days, Math.Sign(certainty.Days)));
    }

    [Fact]
    public void A_task_that_took_longer_moves_the_safe_date_by_what_it_took()
    {
        // Likely and safe alike: a day more for a second session.
        var then = Courses(3, 100, [0.8, 0.9, 1, 1.15, 1.3]);
        var log = new ALog().Done("task 0", 200, 2, 10 + (20.0 / 60));
        var moved = Moved(Row(3, splittableFirst: true), log, log.Moment(2, 10.5), Promised(Row(3, splittableFirst: true), then), then, then);
        Assert.True(moved.IsSafe);
        var took = moved.Moves.Single(one => one.Cause == MoveCause.Took);
        Assert.Equal((1, 100.0), (took.Days, took.Work.Minutes));
    }

    [Fact]
    public void Where_nothing_changed_the_safe_date_has_no_cause_to_move()
    {
        var then = Courses(4, 100, [0.7, 0.8, 0.9, 0.95, 1, 1.1, 1.15, 1.25, 1.3]);
        var moved = Moved(Row(4), new ALog(), new ALog().Moment(1, 0), Promised(Row(4), then), then, then);
        Assert.True(moved.IsSafe);
        Assert.Empty(moved.Moves);
        Assert.Equal(0, moved.Days);
    }

    // Whatever was logged, whenever, and however well the times were and are known: the causes are the whole.
    [Fact]
    public void The_causes_add_up_to_the_dates_between() =>
        Gen.Select(Gen.Int[0, 4], Gen.Double[0.3, 2.5].Array[4], Gen.Int[0, 6], Gen.Bool, Gen.Double[0, 0.6].Array[2]).Sample((done, paces, idle, begun, widths) =>
        {
            var log = new ALog();
            for (var task = 0; task < done; task++)
            {
                log.Done(FormattableString.Invariant($"task {task}"), 100 * paces[task], task + 1, 10.75);
            }

            if (begun)
            {
                log.Went(FormattableString.Invariant($"task {done}"), 20, done + 1, 9.5);
            }

            var (then, drawn) = (Courses(6, 100, Factors(widths[0])), Courses(6, 100, Factors(widths[1])));
            var moved = Moved(Row(6), log, log.Moment(1 + done + idle, 12), Promised(Row(6), then), then, drawn);
            Assert.Equal(moved.Days, moved.Moves.Sum(one => one.Days));
            Assert.Distinct(moved.Moves.Select(one => one.Cause));

            // More work is no cause of an earlier date, nor less of a later one.
            Assert.All(moved.Moves.Where(one => one.Cause is MoveCause.Took or MoveCause.ToCome or MoveCause.TasksChanged), one => Assert.True(one.Days * one.Work.Minutes >= 0));
        }, iter: 40);

    private static double[] Factors(double width) => [1 - width, 1 - (width / 2), 1, 1 + (width / 2), 1 + width];

    /// <summary>Courses of some tasks of equal length, each with one pace.</summary>
    private static double[][] Courses(int tasks, double minutes, IEnumerable<double> paces) => [.. paces.Select(pace => Enumerable.Repeat(minutes * pace, tasks).ToArray())];

    private static AJob Row(int tasks, double minutes = 100, bool splittableFirst = false)
    {
        var job = new AJob();
        for (var task = 0; task < tasks; task++)
        {
            job.Task(FormattableString.Invariant($"task {task}"), minutes, made => made with { IsSplittable = splittableFirst && made.Id == 0 });
        }

        for (var task = 1; task < tasks; task++)
        {
            job.Then(FormattableString.Invariant($"task {task - 1}"), FormattableString.Invariant($"task {task}"));
        }

        return job;
    }

    internal static Promise Promised(AJob job, IReadOnlyList<double[]>? trials = null)
    {
        var request = job.Request(trials);
        return Promise.Of("chest", new ALog().Moment(1, 0), (PlanAnswer.Planned)PlanMaker.Plan(request), request.Orders[0].Graph, Model, request.Orders[0].Draws.OfAll());
    }

    /// <param name="job">The job.</param>
    /// <param name="log">What was logged.</param>
    /// <param name="now">The moment.</param>
    /// <param name="promise">What was promised; a plan of the job by its plain times unless given.</param>
    /// <param name="then">Drawn times of all tasks when it was promised; their plain times unless given.</param>
    /// <param name="drawn">Drawn times of all tasks as they are known now; their plain times, less what is spent, unless given.</param>
    internal static MovedFinish Moved(AJob job, ALog log, Instant now, Promise? promise = null, IReadOnlyList<double[]>? then = null, IReadOnlyList<double[]>? drawn = null)
    {
        var request = job.Request();
        var order = request.Orders[0];
        var standing = JobStanding.Of(order.Graph, log.Entries);
        var left = RemainingWork.Of(order.Graph, standing, request.Calendars, order.Start, now);
        var times = left.Ids.Select((id, place) => order.Times[id] > left.Spent[place] ? order.Times[id] - left.Spent[place] : WorkTime.FromMinutes(5)).ToList();
        var draws = drawn is null
            ? new TimeDraws([[.. times.Select(time => time.Minutes)]], 7)
            : new([.. drawn.Select(trial => left.Ids.Select(id => trial[id]).ToArray())], 7);
        var middles = draws.OfEach().Select(range => range.P50).ToList();
        var progress = JobProgress.Of(promise ?? Promised(job), standing, left, Model, draws, new HashSet<string>());
        var ahead = request with { Orders = [order with { Graph = left.Graph, Times = middles, Draws = draws, UnderWay = left.UnderWay }] };
        var nothing = JobStanding.Of(order.Graph, []);
        var graph = order.Graph.AsKnownOn(AJob.Monday);
        var whole = RemainingWork.Of(graph, nothing, request.Calendars, order.Start, new ALog().Moment(1, 0));
        return MovedFinish.Of(progress, new(graph, nothing, whole, new(then ?? [[.. order.Times.Select(time => time.Minutes)]], 7)), ahead, (PlanAnswer.Planned)PlanMaker.Plan(ahead));
    }
}
