using CsCheck;
using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Tests.Logbook;
using ShopDays.Times;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class JobProgressTests
{
    private static readonly HashSet<string> NoBoards = [];
    private static readonly RateModel Model = RateModel.FromPrior(new([]));

    [Fact]
    public void A_task_that_took_longer_than_promised_makes_the_difference()
    {
        var progress = Of(ThreeTasks(), new ALog().Done("saw", 90, 1, 10.5));
        Assert.Equal([("saw", 30.0), ("plane", 0), ("wax", 0)], progress.Changes.Select(one => (one.Task, one.Difference.Minutes)));
        Assert.Equal((30.0, 110.0, 140.0), (progress.Difference.Minutes, progress.Promised.Minutes, progress.Now.Minutes));
        Assert.Equal(50, progress.LeftTime!.Value.P50.Minutes);
    }

    [Fact]
    public void A_task_that_is_half_done_takes_what_it_took_and_what_is_left()
    {
        var half = Of(ThreeTasks(), new ALog().Went("saw", 20, 1, 10)).Changes[0];
        Assert.Equal((TaskState.HalfDone, 20.0), (half.State, half.Spent.Minutes));
        Assert.True(half.Left > WorkTime.Zero);
        Assert.Equal(half.Spent + half.Left, half.Now);
    }

    [Fact]
    public void Tasks_that_came_in_and_went_out_are_told_apart()
    {
        var promise = Promised(ThreeTasks()) with { Tasks = [new("saw", null, null, Minutes(60)), new("plane", null, null, Minutes(30)), new("rout", null, null, Minutes(45))] };
        var progress = Of(ThreeTasks(), new ALog().Done("rout", 40, 1, 10).Done("turn", 15, 1, 11), promise);
        Assert.Equal(
            [("saw", ChangeKind.SameTask, 0.0), ("plane", ChangeKind.SameTask, 0), ("wax", ChangeKind.CameIn, 20), ("rout", ChangeKind.WentOut, -5), ("turn", ChangeKind.OnlyLogged, 15)],
            progress.Changes.Select(one => (one.Task, one.Kind, one.Difference.Minutes)));
        Assert.Equal(30, progress.Difference.Minutes);
    }

    [Fact]
    public void Boards_sawn_without_a_time_count_as_promised_neither_for_nor_against()
    {
        var promise = Promised(ThreeTasks());
        promise = promise with { Tasks = [.. promise.Tasks, new("rip A1", "rip", "A1", Minutes(25))] };
        var change = Of(ThreeTasks(), new ALog(), promise, new HashSet<string> { "A1" }).Changes.Single(one => one.Task == "rip A1");
        Assert.Equal((ChangeKind.SawnUnlogged, 0.0), (change.Kind, change.Difference.Minutes));

        var logged = Of(ThreeTasks(), new ALog().Done("rip A1", 30, 1, 10), promise, new HashSet<string> { "A1" }).Changes.Single(one => one.Task == "rip A1");
        Assert.Equal((ChangeKind.WentOut, 5.0), (logged.Kind, logged.Difference.Minutes));
    }

    [Fact]
    public void When_all_is_done_nothing_is_left_and_what_it_took_is_known()
    {
        var progress = Of(ThreeTasks(), new ALog().Done("saw", 50, 1, 10).Done("plane", 30, 2, 10).Done("wax", 25, 2, 10.5));
        Assert.True(progress.IsDone);
        Assert.Null(progress.LeftTime);
        Assert.Equal((105.0, -5.0), (progress.Now.Minutes, progress.Difference.Minutes));
    }

    [Fact]
    public void Operations_that_go_otherwise_than_promised_are_told_the_greatest_difference_first()
    {
        var promise = Promised(ThreeTasks()) with { Tasks = [new("saw", "rip", null, Minutes(60)), new("plane", null, null, Minutes(10)), new("wax", null, null, Minutes(24))] };
        Assert.Equal([("plane", 20.0), ("wax", -4), ("saw", 0)], OperationChange.Of(Of(ThreeTasks(), new ALog(), promise)).Select(one => (one.Operation, one.Difference.Minutes)));
    }

    // Whatever was logged, promised and left: the parts are the whole.
    [Fact]
    public void The_differences_of_the_tasks_add_up_and_no_logged_minute_is_lost() =>
        Gen.Select(Gen.Int[0, 3].Array[6], Gen.Double[1, 200].Array[6], Gen.Bool.Array[6]).Sample((kinds, minutes, promised) =>
        {
            var job = new AJob();
            var log = new ALog();
            var promises = new List<PromisedTask>();
            for (var task = 0; task < kinds.Length; task++)
            {
                var name = FormattableString.Invariant($"task {task}");
                if (kinds[task] != 3)
                {
                    job.Task(name, 40);
                }

                if (promised[task])
                {
                    promises.Add(new(name, null, null, Minutes(35 + task)));
                }

                _ = kinds[task] switch
                {
                    0 => log,
                    1 => log.Went(name, minutes[task], 1, 10),
                    _ => log.Done(name, minutes[task], 1, 10),
                };
            }

            var progress = Of(job, log, Promised(job) with { Tasks = promises });
            // Sums of a dozen doubles of some hundreds are good to far below a millionth of a minute.
            Assert.Equal(progress.Now.Minutes - promises.Sum(one => one.Expected.Minutes), progress.Difference.Minutes, 6);
            Assert.Equal(log.Entries.Sum(entry => entry.Took.Minutes), progress.Changes.Sum(one => one.Spent.Minutes), 6);
            Assert.Equal(progress.Spent.Minutes, progress.Changes.Sum(one => one.Spent.Minutes), 6);
            Assert.Equal(progress.Standing.Tasks.Count, progress.Standing.In(TaskState.Done).Count + progress.Left.Graph.Tasks.Count);
            Assert.Distinct(progress.Changes.Select(one => one.Task));
        }, iter: 200);

    private static AJob ThreeTasks() => new AJob().Task("saw", 60).Task("plane", 30).Task("wax", 20);

    private static WorkTime Minutes(double minutes) => WorkTime.FromMinutes(minutes);

    private static Promise Promised(AJob job)
    {
        var request = job.Request();
        return Promise.Of("chest", Instant.FromUtc(2027, 2, 28, 12, 0), (PlanAnswer.Planned)PlanMaker.Plan(request), request.Orders[0].Graph, Model, request.Orders[0].Draws.OfAll());
    }

    private static JobProgress Of(AJob job, ALog log, Promise? promise = null, IReadOnlySet<string>? sawn = null)
    {
        var request = job.Request();
        var standing = JobStanding.Of(request.Orders[0].Graph, log.Entries);
        var left = RemainingWork.Of(request.Orders[0].Graph, standing, request.Calendars, request.Orders[0].Start, log.Moment(2, 12));
        return JobProgress.Of(promise ?? Promised(job), standing, left, Model, Model.Draw(left.Graph.Tasks, 5, 1, left.Spent), sawn ?? NoBoards);
    }
}
