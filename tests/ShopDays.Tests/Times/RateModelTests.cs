using ShopDays.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Times;

public sealed class RateModelTests
{
    private const int Trials = 20_000;

    [Fact]
    public void The_median_of_a_task_is_setup_plus_quantity_times_rate_with_rest()
    {
        var rip = AnOperation.Named("rip", minutes: 2, low: 1.2, high: 3.4, setup: 5, rest: 0.25);
        var time = RateModel.FromPrior(new([rip])).TimeFor(rip.Of(quantity: 10, setups: 3));

        // Nine digits leave room for the rounding of a few operations on doubles, and for nothing else; so below.
        Assert.Equal(((3 * 5) + (10 * 2)) * 1.25, time.P50.Minutes, 9);
    }

    [Fact]
    public void A_property_of_the_work_slows_it_by_its_exponent_but_not_its_setup()
    {
        var rip = AnOperation.Named("rip", minutes: 2, low: 1, high: 4, setup: 5, slopes: new Slope(Covariate.Thickness, 1, 1.1));
        var model = RateModel.FromPrior(new([rip]));
        var thick = rip.Of(10, setups: 1) with { Covariates = new Dictionary<Covariate, double> { [Covariate.Thickness] = 2 } };

        Assert.Equal(5 + (20 * Math.Pow(2, 1.1)), model.TimeFor(thick).P50.Minutes, 9);
    }

    [Fact]
    public void A_property_that_is_not_given_stands_at_its_reference()
    {
        var rip = AnOperation.Named("rip", minutes: 2, low: 1, high: 4, slopes: new Slope(Covariate.Hardness, 1000, 0.5));

        Assert.Equal(20, RateModel.FromPrior(new([rip])).TimeFor(rip.Of(10)).P50.Minutes, 9);
    }

    [Fact]
    public void Wild_grain_slows_the_work_but_not_its_setup()
    {
        var plane = AnOperation.Named("plane", minutes: 3, low: 1.5, high: 6, setup: 4);
        var wild = plane.Of(10, setups: 2) with { Factor = 1.4 };

        Assert.Equal(8 + (30 * 1.4), RateModel.FromPrior(new([plane])).TimeFor(wild).P50.Minutes, 9);
    }

    [Fact]
    public void A_task_far_from_the_references_is_less_sure()
    {
        var rip = AnOperation.Named("rip", slopes: new Slope(Covariate.Thickness, 1, 1.1));
        var model = RateModel.FromPrior(new([rip]));
        var near = model.TimeFor(rip.Of(10));
        var far = model.TimeFor(rip.Of(10) with { Covariates = new Dictionary<Covariate, double> { [Covariate.Thickness] = 6 } });

        Assert.True(far.P90 / far.P10 > near.P90 / near.P10 * 1.05);
    }

    [Fact]
    public void The_range_of_a_method_s_ninety_per_cent_is_what_its_catalogue_row_says()
    {
        var rip = AnOperation.Named("rip", minutes: 10, low: 5, high: 20);
        var time = RateModel.FromPrior(new([rip])).TimeFor(rip.Of(1));

        // The row's 90 % range is 3.29 standard deviations wide and the 80 % range of the Student with 10 degrees of
        // freedom and scale 0.894 is 2.454 of them: the ratio of the logs is 0.746, held to 1 %.
        Assert.Equal(0.746, Math.Log(time.P90 / time.P10) / Math.Log(20.0 / 5), 0.01);
    }

    [Fact]
    public void Draws_agree_with_the_closed_form()
    {
        var rip = AnOperation.Named("rip", minutes: 2, low: 1.2, high: 3.4, slopes: new Slope(Covariate.Thickness, 1, 1.1));
        var model = RateModel.FromPrior(new([rip]));
        var thick = rip.Of(10) with { Covariates = new Dictionary<Covariate, double> { [Covariate.Thickness] = 3 } };
        var closed = model.TimeFor(thick);
        var drawn = model.Draw(AnOperation.Tasks(thick), Trials, seed: 7).Of(0);

        // Standard error of a quantile of 20,000 draws with a spread of ln of about 0.37 is below 0.6 %; five of them.
        Assert.Equal(1, drawn.P10 / closed.P10, 0.03);
        Assert.Equal(1, drawn.P50 / closed.P50, 0.03);
        Assert.Equal(1, drawn.P80 / closed.P80, 0.03);
        Assert.Equal(1, drawn.P90 / closed.P90, 0.03);
    }

    [Fact]
    public void Tasks_of_one_group_go_together_more_than_tasks_of_two_and_all_go_together_a_little()
    {
        var rip = AnOperation.Named("rip");
        var crosscut = AnOperation.Named("crosscut");
        var plane = AnOperation.Named("plane", group: PaceGroup.Planing);
        var draws = RateModel.FromPrior(new([rip, crosscut, plane]))
            .Draw(AnOperation.Tasks(rip.Of(1), crosscut.Of(1), plane.Of(1)), Trials, seed: 3);

        var sameGroup = Correlation(draws, 0, 1);
        var otherGroup = Correlation(draws, 0, 2);
        Assert.True(sameGroup > otherGroup + 0.05, $"{sameGroup} against {otherGroup}");
        Assert.True(otherGroup > 0.1, $"{otherGroup}");
    }

    [Fact]
    public void The_range_of_a_job_is_wider_than_if_its_tasks_went_each_their_own_way()
    {
        var rip = AnOperation.Named("rip");
        var tasks = AnOperation.Tasks([.. Enumerable.Repeat(0, 50).Select(_ => (TaskTiming)rip.Of(1))]);
        var draws = RateModel.FromPrior(new([rip])).Draw(tasks, 4_000, seed: 1);
        var job = draws.OfAll();
        var task = draws.Of(0);

        Assert.True(job.P90 / job.P50 > 1 + (((task.P90 / task.P50) - 1) / Math.Sqrt(50) * 2));
    }

    [Fact]
    public void The_same_seed_gives_the_same_draws_and_another_gives_others()
    {
        var rip = AnOperation.Named("rip");
        var model = RateModel.FromPrior(new([rip]));
        var tasks = AnOperation.Tasks(rip.Of(1), AnOperation.Guess(30, 60, 120));

        Assert.Equal(model.Draw(tasks, 50, 9).Minutes, model.Draw(tasks, 50, 9).Minutes);
        Assert.NotEqual(model.Draw(tasks, 50, 9).Minutes, model.Draw(tasks, 50, 10).Minutes);
    }

    [Fact]
    public void A_guess_is_passed_below_and_above_one_time_in_ten()
    {
        var draws = RateModel.FromPrior(new([])).Draw(AnOperation.Tasks(AnOperation.Guess(90, 150, 300)), Trials, seed: 5).Of(0);

        // Standard error of these quantiles is about 0.7 %; five of them.
        Assert.Equal(1, draws.P10.Minutes / 90, 0.035);
        Assert.Equal(1, draws.P50.Minutes / 150, 0.035);
        Assert.Equal(1, draws.P90.Minutes / 300, 0.035);
    }

    [Fact]
    public void A_guess_without_a_range_is_the_same_in_every_trial()
    {
        var draws = RateModel.FromPrior(new([])).Draw(AnOperation.Tasks(AnOperation.Guess(180, 180, 180)), 100, seed: 5);

        Assert.All(draws.Minutes, trial => Assert.Equal(180, trial[0], 9));
    }

    [Fact]
    public void A_job_s_range_covers_as_often_as_it_says()
    {
        var rip = AnOperation.Named("rip");
        var plane = AnOperation.Named("plane", group: PaceGroup.Planing);
        var model = RateModel.FromPrior(new([rip, plane]));
        var tasks = AnOperation.Tasks(rip.Of(3), rip.Of(2), plane.Of(4), AnOperation.Guess(30, 60, 90));
        var range = model.Draw(tasks, Trials, seed: 11).OfAll();
        var inside = model.Draw(tasks, 2_000, seed: 12).Minutes.Count(trial => trial.Sum() >= range.P10.Minutes && trial.Sum() <= range.P90.Minutes);

        // Exact binomial limits at 80 %: outside 0.765 to 0.835 by chance about once in 10,000 with 2,000 draws.
        Assert.InRange(inside / 2_000.0, 0.765, 0.835);
    }

    [Fact]
    public void An_operation_that_the_catalogue_lacks_is_refused_by_name()
    {
        var stranger = AnOperation.Named("carve");
        var error = Assert.Throws<KeyNotFoundException>(() => RateModel.FromPrior(new([AnOperation.Named("rip")])).TimeFor(stranger.Of(1)));

        Assert.Contains("'carve'", error.Message, StringComparison.Ordinal);
    }

    private static double Correlation(TimeDraws draws, int one, int other)
    {
        var first = draws.Minutes.Select(trial => Math.Log(trial[one])).ToArray();
        var second = draws.Minutes.Select(trial => Math.Log(trial[other])).ToArray();
        return MathNet.Numerics.Statistics.Correlation.Pearson(first, second);
    }
}
