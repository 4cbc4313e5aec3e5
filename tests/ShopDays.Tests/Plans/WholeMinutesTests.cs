using CsCheck;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Tests.Logbook;
using ShopDays.Times;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>Tasks in whole minutes: each near its own time, all of them together as long as they are.</summary>
public sealed class WholeMinutesTests
{
    private static readonly RateModel Model = RateModel.FromPrior(new([]));

    [Fact]
    public void However_many_tasks_their_sum_is_off_by_half_a_minute_at_the_most() =>
        Gen.Double[1, 240].Array[1, 400].Sample(times =>
            Assert.InRange(Whole(times).Sum() - times.Sum(), -0.5 - Dust, 0.5 + Dust));

    [Fact]
    public void Each_is_the_next_minute_down_or_up_and_one_at_the_least() =>
        Gen.OneOf(Gen.Double[0, 3], Gen.Double[0, 240], Gen.Int[0, 90].Select(whole => (double)whole)).Array[0, 60].Sample(times =>
            Assert.All(Whole(times).Zip(times), one => Assert.True(one.First == Math.Floor(one.First) && one.First >= 1 && Math.Abs(one.First - Math.Max(1, one.Second)) < 1)));

    [Fact]
    public void What_tasks_of_less_than_a_minute_are_given_more_is_taken_off_the_others_a_minute_each_at_most()
    {
        double[] times = [10.5, 20.5, 0.5, 0.5, 0.5, 0.5];
        Assert.Equal([10, 20, 1, 1, 1, 1], Whole(times));
    }

    [Fact]
    public void Other_boards_before_it_change_no_minute_of_what_comes_after() =>
        Gen.Select(Gen.Double[0.2, 90].Array[1, 40], Gen.Double[0.2, 90].Array[0, 20], Gen.Double[0.2, 90].Array[0, 20]).Sample((after, before, others) =>
            Assert.Equal(Whole([.. before, .. after])[before.Length..], Whole([.. others, .. after])[others.Length..]));

    [Fact]
    public void What_is_not_begun_keeps_its_minutes_whatever_is_done() =>
        Gen.Select(Gen.Double[0.2, 90].Array[1, 12], Gen.Bool.Array[12]).Sample((times, done) =>
        {
            var (job, log) = (new AJob(), new ALog());
            foreach (var (place, time) in times.Index())
            {
                job.Task(Name(place), time);
                if (done[place])
                {
                    log.Done(Name(place), 20, 1, 10);
                }
            }

            var request = job.Request();
            var whole = WholeMinutes.Of(request.Orders[0].Graph, Model);
            var left = RemainingWork.Of(request.Orders[0].Graph, JobStanding.Of(request.Orders[0].Graph, log.Entries), request.Calendars, request.Orders[0].Start, log.Moment(1, 11));
            var rest = left.PlannedTimes(Model, Model.Draw(left.Graph.Tasks, 3, 1, left.Spent));
            Assert.Equal(left.Ids.Select(id => whole[id]), rest);
        }, iter: 100);

    [Fact]
    public void A_course_counts_with_the_nearest_minutes_some_down_and_some_up()
    {
        var job = new AJob().Task("saw", 30).Task("plane", 30).Task("wax", 0.2);
        var request = job.Request([[30.4, 29.6, 0.2], [30.4, 30.4, 0.4], [30.6, 30.6, 1.4]]) with { Changeover = WorkTime.Zero };
        var forecast = ((PlanAnswer.Planned)PlanMaker.Plan(request)).Forecast;
        Assert.Equal([61, 61, 63], forecast.Finishes.Select(finish => (finish - new ALog().Moment(1, 9)).TotalMinutes));
    }

    // Four hundred sums of doubles.
    private const double Dust = 1e-9;

    private static double[] Whole(double[] times) => [.. WholeMinutes.Of([.. times.Select(WorkTime.FromMinutes)]).Select(time => time.Minutes)];

    private static string Name(int place) => FormattableString.Invariant($"task {place}");
}
