using CsCheck;
using NodaTime;
using ShopDays.Logbook;
using ShopDays.Plans;
using ShopDays.Tests.Logbook;
using ShopDays.Tests.Times;
using ShopDays.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>
/// A plan that is kept to the minute: each task logged with exactly its planned minutes at exactly its planned sessions. The
/// shop is open for two hours on five days a week; the rates learn nothing from it.
/// </summary>
public sealed class KeptPlanTests
{
    private static readonly Operation Rip = AnOperation.Named("rip", minutes: 10, setup: 1);
    private static readonly RateModel Model = RateModel.FromPrior(new([Rip]));

    private static readonly Gen<AJob> Job =
        from tasks in Gen.Select(Gen.Double[0.3, 70], Gen.Int[0, 3], Gen.Double[0, 4]).Array[1, 5]
        from links in Gen.Select(Gen.Int[0, 4], Gen.Int[0, 4], Gen.Int[0, 40]).Array[0, 4]
        select Made(tasks, links);

    [Fact]
    public void After_each_session_the_finish_has_not_moved_and_the_job_is_neither_ahead_nor_behind() =>
        Gen.Select(Job, Gen.Double[0, 1]).Sample((job, share) =>
        {
            var request = Planned(job);
            var whole = (PlanAnswer.Planned)PlanMaker.Plan(request);
            var promise = Promise.Of("chest", new ALog().Moment(1, 0), whole, request.Orders[0].Graph, Model, request.Orders[0].Draws.OfAll());
            var sessions = whole.Plan.Sessions.Take(1 + (int)(share * (whole.Plan.Sessions.Count - 1))).ToList();
            var kept = sessions.SelectMany(session => session.Work).OrderBy(work => work.Start.ToInstant()).ToList();
            var graph = request.Orders[0].Graph;
            var standing = JobStanding.Of(graph, Logged(kept, promise));
            var left = RemainingWork.Of(graph, standing, request.Calendars, request.Orders[0].Start, sessions[^1].Session.End.ToInstant());
            var draws = Model.Draw(left.Graph.Tasks, 5, 1, left.Spent);
            var progress = JobProgress.Of(promise, standing, left, Model, draws, new HashSet<string>());
            Assert.InRange(progress.Difference.Minutes, -Interrupted(left), Interrupted(left));

            if (progress.IsDone)
            {
                return;
            }

            var rest = request with { Orders = [request.Orders[0] with { Graph = left.Graph, Times = left.PlannedTimes(Model, draws), Draws = draws, UnderWay = left.UnderWay }] };
            var ahead = (PlanAnswer.Planned)PlanMaker.Plan(rest);
            Assert.InRange((ahead.Plan.Finish.ToInstant() - whole.Plan.Finish.ToInstant()).TotalMinutes, -Interrupted(left), Interrupted(left));
        }, iter: 150);

    [Fact]
    public void The_sums_of_the_plan_of_the_promise_and_of_progress_are_one() =>
        Job.Sample(job =>
        {
            var request = Planned(job);
            var whole = (PlanAnswer.Planned)PlanMaker.Plan(request);
            var planned = whole.Plan.Sessions.SelectMany(session => session.Work).Sum(work => work.HandsOn.Minutes);
            var promise = Promise.Of("chest", new ALog().Moment(1, 0), whole, request.Orders[0].Graph, Model, request.Orders[0].Draws.OfAll());
            Assert.Equal(planned, promise.Tasks.Sum(task => task.Expected.Minutes));
            Assert.Equal(planned, request.Orders[0].Times.Sum(time => time.Minutes));
        }, iter: 60);

    /// <summary>A minute for each task that is interrupted: what is left of it is in whole minutes too.</summary>
    private static int Interrupted(RemainingWork left) => left.Graph.Tasks.Count(task => !ReferenceEquals(task.Timing, left.Whole.Tasks[left.Ids[task.Id]].Timing));

    private static PlanRequest Planned(AJob job)
    {
        var request = job.Request();
        var graph = request.Orders[0].Graph;
        return request with { Orders = [request.Orders[0] with { Times = WholeMinutes.Of(graph, Model), Draws = Model.Draw(graph.Tasks, 5, 1) }] };
    }

    /// <summary>What is interrupted says how much of it is done: as much as its minutes are of all that it was planned with.</summary>
    private static IEnumerable<LogEntry> Logged(List<PlannedWork> kept, Promise promise) => kept.Select((work, number) => new LogEntry
    {
        Id = new(number + 1),
        Job = "chest",
        Task = work.Task.Name,
        Work = work.IsLastPiece || work.Task.Timing is not TaskTiming.ByOperation by ? null : LoggedWork.Of(by) with { Quantity = by.Quantity * (work.HandsOn / promise.Tasks[work.Task.Id].Expected) },
        Took = work.HandsOn,
        On = WorkedOn.At(work.End.ToInstant(), new ALog().Zone),
        Worker = "maker",
        Finished = work.IsLastPiece,
    });

    private static AJob Made((double Minutes, int Kind, double Setup)[] tasks, (int One, int Other, int Hours)[] links)
    {
        var job = new AJob();
        foreach (var (place, (minutes, kind, setup)) in tasks.Index())
        {
            // Every other kind may be interrupted, and is timed by an operation with a set-up of its own.
            job.Task(Name(place), minutes, task => kind % 2 == 0 ? task : task with
            {
                IsSplittable = true,
                Timing = Rip.Of(minutes / 10, setups: setup),
            });
        }

        foreach (var (one, other, hours) in links.Where(link => link.One < link.Other && link.Other < tasks.Length).DistinctBy(link => (link.One, link.Other)))
        {
            job.Then(Name(one), Name(other), hours > 20 ? new(Duration.FromHours(hours), "it sets") : null);
        }

        return job;
    }

    private static string Name(int place) => FormattableString.Invariant($"task {place}");
}
