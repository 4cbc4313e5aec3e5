using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Times;

public sealed class CourseDrawsTests
{
    private const int Trials = 60_000;

    private static readonly Operation Rip = AnOperation.Named("rip", slopes: new Slope(Covariate.Thickness, 1, 1.1));
    private static readonly Operation Crosscut = AnOperation.Named("crosscut");
    private static readonly Operation Plane = AnOperation.Named("plane", group: PaceGroup.Planing);
    private static readonly RateModel Prior = RateModel.FromPrior(new([Rip, Crosscut, Plane]));
    private static readonly RateModel Learned = Prior.Learn([.. Enumerable.Range(0, 60).Select(Logged)], new(new(2027, 3, 1), "maker"));

    // An odd number, of several operations in no order, so that vectors end amid what belongs together.
    private static readonly IReadOnlyList<ShopTask> Job = AnOperation.Tasks(
        Plane.Of(3), Thick(2, 3), AnOperation.Guess(20, 30, 60), Crosscut.Of(5), Thick(4, 0.5), AnOperation.Guess(90, 90, 90), Plane.Of(1), Rip.Of(8), Crosscut.Of(2));

    // The reference draws one task at a time with another library's generators, and chooses past luck by search.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Each_task_is_spread_as_its_row_and_its_luck_say(bool hasLog)
    {
        var model = hasLog ? Learned : Prior;
        var draws = model.Draw(Job, Trials, seed: 1);
        var random = new Random(1);
        var usual = Math.Sqrt(model.NoiseScale / model.NoiseShape);
        foreach (var task in Job.Where(task => task.Timing is TaskTiming.ByOperation))
        {
            var (row, terms) = model.Whiten((TaskTiming.ByOperation)task.Timing);
            var luck = model.Luck.Of(row.Block, row.Offset + terms.Location, 2 * model.NoiseShape);
            double[] expected = [.. Enumerable.Range(0, Trials).Select(_ => OneMore()).Order()];
            foreach (var share in (double[])[0.02, 0.1, 0.25, 0.5, 0.75, 0.9, 0.98])
            {
                var most = expected[(int)(share * Trials)];

                // The standard error of the difference of two shares of as many draws is at most 0.003; five of them.
                Assert.Equal(share, draws.Minutes.Count(trial => trial[task.Id] <= most) / (double)Trials, 0.015);
            }

            double OneMore()
            {
                var scale = Math.Sqrt(model.NoiseScale / Gamma.Sample(random, model.NoiseShape, 1));
                var rate = row.Offset + terms.Location + (scale * Math.Sqrt(terms.Variance) * Normal.Sample(random, 0, 1));
                return Math.Exp(rate + (row.Noise * new LuckLeft(luck, usual, scale, Normal.Sample(random, 0, 1), random.NextDouble()).Beyond(double.NegativeInfinity)));
            }
        }
    }

    [Fact]
    public void Two_tasks_go_together_as_their_rows_do()
    {
        var draws = Prior.Draw(Job, Trials, seed: 2);
        var known = Job.Where(task => task.Timing is TaskTiming.ByOperation).ToList();
        foreach (var one in known)
        {
            foreach (var other in known.Where(other => other.Id > one.Id))
            {
                var (row, terms) = Prior.Whiten((TaskTiming.ByOperation)one.Timing);
                var (otherRow, otherTerms) = Prior.Whiten((TaskTiming.ByOperation)other.Timing);
                var expected = terms.CovarianceWith(otherTerms)
                    / Math.Sqrt((terms.Variance + (row.Noise * row.Noise)) * (otherTerms.Variance + (otherRow.Noise * otherRow.Noise)));

                // The standard error of a correlation of normals is at most 0.004; the scale that is drawn, too, adds to it.
                Assert.Equal(expected, Correlation.Pearson(Logs(draws, one.Id), Logs(draws, other.Id)), 0.025);
            }
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_is_drawn_behind_a_job_is_as_slow_as_the_job_in_each_course(bool hasLog)
    {
        // Of another operation too, of which the job has nothing.
        var model = hasLog ? Learned : Prior;
        var behind = AnOperation.Tasks(Rip.Of(3), AnOperation.Guess(20, 30, 60), Plane.Of(2));
        IReadOnlyList<ShopTask> job = [.. Job.Where(task => task.Timing is TaskTiming.ByGuess || ((TaskTiming.ByOperation)task.Timing).Operation != Plane).Select((task, id) => task with { Id = id })];
        var together = model.Draw([.. job, .. behind.Select(task => task with { Id = task.Id + job.Count })], Trials, seed: 4);
        var (before, after) = (model.Draw(job, Trials, seed: 4), model.DrawBehind(job, behind, Trials, seed: 4));
        foreach (var one in behind)
        {
            var (alone, asOne) = (Sorted(after, one.Id), Sorted(together, job.Count + one.Id));
            Assert.All((double[])[0.1, 0.5, 0.9], share => Assert.Equal(Math.Log(asOne[(int)(share * Trials)]), Math.Log(alone[(int)(share * Trials)]), 0.02));
            Assert.All(job, other => Assert.Equal(
                Correlation.Pearson(Logs(together, other.Id), Logs(together, job.Count + one.Id)),
                Correlation.Pearson(Logs(before, other.Id), Logs(after, one.Id)),
                0.025));
        }

        static double[] Sorted(TimeDraws draws, int task) => [.. draws.Minutes.Select(trial => trial[task]).Order()];
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_job_done_otherwise_has_the_same_chance_where_it_is_the_same(bool hasLog)
    {
        var model = hasLog ? Learned : Prior;
        var before = model.Draw(Job, 200, seed: 5).Minutes;
        Assert.Equal(before, model.DrawOtherwise(Job, Job, 200, seed: 5).Minutes);

        // In another order, with one task less and one of a new name among them.
        List<ShopTask> kept = [.. Job.Skip(1).Reverse()];
        IReadOnlyList<ShopTask> others = [.. kept.Append(Job[0] with { Name = "something new" }).Select((task, id) => task with { Id = id })];
        var after = model.DrawOtherwise(Job, others, 200, seed: 5).Minutes;
        for (var at = 0; at < kept.Count; at++)
        {
            // Terms are added up in another order.
            Assert.All(before.Zip(after), trial => Assert.Equal(1, trial.Second[at] / trial.First[kept[at].Id], 1e-9));
        }

        Assert.NotEqual(before.Select(trial => trial[0]), after.Select(trial => trial[kept.Count]));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void One_core_draws_what_many_do(bool hasLog)
    {
        WorkTime[] spent = [.. Job.Select(task => WorkTime.FromMinutes(task.Id % 4 == 2 ? 25 : 0))];
        var draws = new CourseDraws(hasLog ? Learned : Prior, Job);
        var alone = draws.Draw(1000, 3, spent, cores: 1).Minutes;

        Assert.Equal(alone, draws.Draw(1000, 3, spent, cores: 2).Minutes);
        Assert.Equal(alone, draws.Draw(1000, 3, spent, cores: 7).Minutes);
    }

    [Fact]
    public void More_courses_begin_with_the_fewer() =>
        Assert.Equal(Learned.Draw(Job, 10, 4).Minutes, Learned.Draw(Job, 500, 4).Minutes.Take(10));

    [Fact]
    public void A_job_without_tasks_has_courses_without_times() =>
        Assert.All(Prior.Draw([], 3, 5).Minutes, Assert.Empty);

    [Fact]
    public void Past_luck_is_heard_as_often_as_it_counts()
    {
        var table = new LuckTable([-1, 0.5, 0.7, 2], [3, 0.25, 0, 9], believed: 10);
        const int Shares = 1_000_000;
        var heard = Enumerable.Range(0, Shares).Select(at => table.IsOfLog((at + 0.5) / Shares, out var off) ? off : double.NaN).CountBy(off => off).ToDictionary();

        // Shares that stand as close as this miss a word's part by no more than two of them in each of the five bins.
        Assert.Equal(10 / 22.25, heard[double.NaN] / (double)Shares, 1e-5);
        Assert.Equal(9 / 22.25, heard[2] / (double)Shares, 1e-5);
        Assert.Equal(3 / 22.25, heard[-1] / (double)Shares, 1e-5);
        Assert.Equal(0.25 / 22.25, heard[0.5] / (double)Shares, 1e-5);
        Assert.False(heard.ContainsKey(0.7));
    }

    private static TaskTiming.ByOperation Thick(double quantity, double thickness) =>
        Rip.Of(quantity) with { Covariates = new Dictionary<Covariate, double> { [Covariate.Thickness] = thickness } };

    private static double[] Logs(TimeDraws draws, int task) => [.. draws.Minutes.Select(trial => Math.Log(trial[task]))];

    private static TimedWork Logged(int number) => new()
    {
        Timing = Rip.Of(4),
        Took = WorkTime.FromMinutes(number % 8 == 0 ? 95 + (number % 7) : 36 + (number % 9)),
        On = new(2027, 2, 1),
        Worker = "maker",
        Task = "rip",
        IsKept = true,
        Entries = [new(number + 1)],
    };
}
