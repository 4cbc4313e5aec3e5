using CsCheck;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Times.Trials;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Times;

public sealed class TrialAdviceTests
{
    private static readonly Operation Rip = AnOperation.Named("rip", slopes: new Slope(Covariate.Thickness, 1, 1.1));
    private static readonly Operation Crosscut = AnOperation.Named("crosscut");
    private static readonly Operation Plane = AnOperation.Named("plane", group: PaceGroup.Planing);
    private static readonly Operation Mortise = AnOperation.Named("mortise", minutes: 18, low: 9, high: 35, group: PaceGroup.Joinery);
    private static readonly Operation Never = AnOperation.Named("carve", group: PaceGroup.Other);
    private static readonly RateModel Model = RateModel.FromPrior(new([Rip, Crosscut, Plane, Mortise, Never])).Learn([], TimedLog.How);

    private static readonly IReadOnlyList<ShopTask> Job = AnOperation.Tasks(
        Rip.Of(20), Rip.Of(35), Rip.Of(12), Crosscut.Of(3), Plane.Of(18), Plane.Of(9), Mortise.Of(4), AnOperation.Guess(60, 90, 200));

    [Fact]
    public void What_a_trial_takes_off_the_range_is_what_makers_who_make_it_find_on_average()
    {
        const int Makers = 300;
        const int Courses = 200;
        var advice = TrialAdvice.For(Model, Job, _ => true, most: 4);
        var before = WidthOf(Model.Draw(Job, 40_000, seed: 5).OfAll());
        var second = advice.Trials[1];
        foreach (var (trials, expected) in (IEnumerable<(TimedTrial[], WorkTime)>)
            [([advice.Trials[0].Trial], advice.Trials[0].Together), ([second.Trial], second.Alone), ([advice.Trials[0].Trial, second.Trial], second.Together)])
        {
            // One draw is a maker: the last columns are the times that their trials take.
            var makers = Model.Draw(AnOperation.Tasks([.. Job.Select(task => task.Timing), .. trials.Select(trial => trial.Timing)]), Makers, seed: 11).Minutes;
            var after = makers.Select((maker, number) => WidthOf(trials
                .Select((trial, at) => trial.Timing.Took(maker[Job.Count + at]))
                .Aggregate(Model, (model, work) => model.With(work))
                .Draw(Job, Courses, number)
                .OfAll())).Average();

            // Widths differ by about a third from maker to maker: 300 of them leave a standard error of 0.015 of the width now, of
            // which three; the closed form's own simplifications (one s2, a log-normal sum) are inside it.
            Assert.Equal(after / before, expected / advice.Width, 0.045);
            Assert.True(after < before);
        }

        // 40,000 courses leave under 1 % on the width; the log-normal with the sum's mean and variance is within 3 %.
        Assert.Equal(1, before / advice.Width.Minutes, 0.04);
    }

    [Fact]
    public void The_first_trial_is_the_best_alone_and_each_is_the_best_once_those_before_it_are_made()
    {
        var advice = TrialAdvice.For(Model, Job, _ => true, most: 10);

        Assert.True(advice.Trials.Count >= 3);
        Assert.Equal(advice.Trials.Min(trial => trial.Alone), advice.Trials[0].Alone);
        for (var at = 1; at < advice.Trials.Count; at++)
        {
            var rest = advice.Trials.Skip(at).Select(trial => trial.Trial.Timing.Operation).ToHashSet();
            var made = advice.Trials.Take(at).Select(trial => trial.Trial.Timing.Operation).ToHashSet();
            foreach (var other in rest)
            {
                var instead = TrialAdvice.For(Model, Job, operation => made.Contains(operation) || operation == other, most: 10);
                Assert.True(instead.Trials.Count <= at || instead.Trials[at].Together >= advice.Trials[at].Together);
            }
        }
    }

    [Fact]
    public void Trials_of_any_job_only_narrow_it_and_more_of_them_never_widen_it() => Gen
        .Select(Gen.Int[0, 3], Gen.Double[1, 60], Gen.Double[0.5, 4])
        .Array[1, 12]
        .Sample(
            work =>
            {
                Operation[] operations = [Rip, Crosscut, Plane, Mortise];
                var tasks = AnOperation.Tasks([.. work.Select(one => operations[one.Item1].Of(one.Item2) with
                {
                    Covariates = new Dictionary<Covariate, double> { [Covariate.Thickness] = one.Item3 },
                })]);
                var advice = TrialAdvice.For(Model, tasks, _ => true, most: 10);
                var widths = advice.Trials.Select(trial => trial.Together).Prepend(advice.Width).ToList();
                return widths.Zip(widths.Skip(1)).All(pair => pair.Second < pair.First)
                    && advice.Trials.All(trial => trial.Alone < advice.Width && trial.Together <= trial.Alone * (1 + 1e-9) && trial.Together > WorkTime.Zero);
            },
            iter: 200);

    [Fact]
    public void An_operation_of_the_job_teaches_more_than_one_that_shares_only_the_maker_s_pace_with_it()
    {
        // Carving is a hair of the job, so that it is offered; its luck is as great as that of ripping.
        var tasks = AnOperation.Tasks(Rip.Of(60), Never.Of(0.001));
        var alone = TrialAdvice.For(Model, tasks, _ => true, most: 1);
        var carving = TrialAdvice.For(Model, tasks, operation => operation == Never, most: 1);

        Assert.Equal(Rip, alone.Trials[0].Trial.Timing.Operation);
        Assert.True(carving.Trials.Count == 0 || carving.Trials[0].Alone > alone.Trials[0].Alone * 1.05);
    }

    [Fact]
    public void What_has_been_timed_often_is_not_proposed_again_before_what_never_was()
    {
        var rips = Enumerable.Repeat(Rip.Of(20).Took(200), 12).ToList();
        var tasks = AnOperation.Tasks(Rip.Of(50), Plane.Of(40));
        var fresh = TrialAdvice.For(Model, tasks, _ => true, most: 1);
        var practised = TrialAdvice.For(Model.Learn(rips, TimedLog.How), tasks, _ => true, most: 1);

        Assert.Equal(Rip, fresh.Trials[0].Trial.Timing.Operation);
        Assert.Equal(Plane, practised.Trials[0].Trial.Timing.Operation);
        Assert.True(practised.Width < fresh.Width);
    }

    [Fact]
    public void A_trial_takes_about_a_quarter_of_an_hour_of_the_timber_with_most_work_in_it()
    {
        var thin = Rip.Of(5) with { Covariates = new Dictionary<Covariate, double> { [Covariate.Thickness] = 0.75 } };
        var thick = Rip.Of(50) with { Covariates = new Dictionary<Covariate, double> { [Covariate.Thickness] = 2 } };
        var trial = TrialAdvice.For(Model, AnOperation.Tasks(thin, thick, thin), _ => true, most: 1).Trials[0].Trial;

        Assert.Equal(2, trial.Timing.Covariates[Covariate.Thickness]);
        Assert.InRange(trial.Cost.P50.Minutes, 12, 19);
    }

    [Fact]
    public void What_cannot_be_tried_or_takes_two_is_not_proposed_and_a_job_without_either_gets_no_advice()
    {
        var forTwo = Rip with { Name = "rip for two", Methods = [Rip.Methods[0] with { Crew = 2 }] };
        var model = RateModel.FromPrior(new([forTwo, Plane]));

        Assert.Empty(TrialAdvice.For(model, AnOperation.Tasks(forTwo.Of(10), Plane.Of(10)), operation => operation != Plane, most: 5).Trials);
        Assert.Empty(TrialAdvice.For(model, [], _ => true, most: 5).Trials);
    }

    private static double WidthOf(TimeRange range) => range.P90.Minutes - range.P10.Minutes;
}
