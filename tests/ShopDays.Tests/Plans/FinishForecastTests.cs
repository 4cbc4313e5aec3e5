using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class FinishForecastTests
{
    [Fact]
    public void When_every_trial_goes_as_planned_so_does_the_finish()
    {
        var planned = TwoTasks().Planned([[60, 30], [60, 30], [60, 30]]);
        var (plan, forecast) = (planned.Plan, planned.Forecast);
        Assert.All([forecast.P50, forecast.P80, forecast.P90], date => Assert.Equal(plan.Finish, date));
        Assert.Empty(forecast.Deciding);
        Assert.Equal((3, 0, 0, 7), (forecast.Trials, forecast.Unfinished, forecast.Overruns, forecast.Seed));
    }

    [Fact]
    public void A_date_is_promised_only_when_enough_trials_are_finished_by_it()
    {
        // Ten trials: a day's session holds two hours, so those above 110 minutes end on the second day.
        var trials = Enumerable.Range(0, 10).Select(trial => new double[] { 60, trial < 8 ? 30 : 61 + trial }).ToList();
        var forecast = TwoTasks(due: AJob.Monday).Planned(trials).Forecast;
        Assert.Equal(0.8, forecast.ChanceOfDue);
        Assert.Equal(AJob.Monday, forecast.P80!.Value.Date);
        Assert.Equal(AJob.Monday.PlusDays(1), forecast.P90!.Value.Date);
        Assert.Equal(10, forecast.Finishes.Count);
    }

    [Fact]
    public void The_task_whose_time_moves_the_finish_decides_it()
    {
        var draws = new Random(5);
        var trials = Enumerable.Range(0, 200).Select(_ => new double[] { 20 + (30 * draws.NextDouble()), 30 + (2 * draws.NextDouble()) }).ToList();
        var deciding = TwoTasks().Planned(trials).Forecast.Deciding;
        Assert.Equal("saw", deciding[0].Task.Name);
        Assert.InRange(deciding[0].Share, 0.9, 1);
        Assert.InRange(deciding[0].Correlation, 0.9, 1);
        // A sum of at most five doubles near one is good to about 1e-15.
        Assert.Equal(1, deciding.Sum(one => one.Share), 12);
    }

    [Fact]
    public void A_task_drawn_longer_than_every_session_goes_on_in_the_next_and_is_counted()
    {
        var forecast = TwoTasks().Planned([[60, 30], [150, 30]]).Forecast;
        Assert.Equal(1, forecast.Overruns);

        // 120 minutes on Monday, 30 on Tuesday, a changeover, and the half hour of fitting.
        Assert.Equal(new LocalDateTime(2027, 3, 2, 10, 5), forecast.P90!.Value.LocalDateTime);
    }

    [Fact]
    public void A_task_drawn_longer_than_every_session_that_is_left_goes_on_in_the_next_though_a_longer_one_is_over()
    {
        var longMonday = new Dictionary<LocalDate, ShopHours> { [AJob.Monday] = new(DayHours.Read("09:00-15:00").Value) };
        var job = new AJob { Extra = new(longMonday) }
            .Task("spread", 10)
            .Task("deliver", 60)
            .Then("spread", "deliver", new Wait(Duration.FromHours(12), "sets"));
        var forecast = job.Planned([[10, 60], [10, 200]]).Forecast;
        Assert.Equal((0, 1), (forecast.Unfinished, forecast.Overruns));

        // 120 minutes on Tuesday, 80 on Wednesday.
        Assert.Equal(new LocalDateTime(2027, 3, 3, 10, 20), forecast.P90!.Value.LocalDateTime);
    }

    [Fact]
    public void A_long_task_is_not_put_off_for_weeks_until_a_longer_session_comes()
    {
        // Two hours on weekdays, but a helper who could do it in one go comes for four hours in the week after next.
        var job = TwoTasks().Worker("09:00-11:00").Worker("09:00-13:00", from: AJob.Monday.PlusDays(14), name: "helper");
        var forecast = job.Planned([[60, 30], [150, 30]]).Forecast;
        Assert.Equal(1, forecast.Overruns);
        Assert.Equal(AJob.Monday.PlusDays(1), forecast.P90!.Value.Date);
    }

    [Fact]
    public void A_long_task_waits_some_days_for_a_session_that_holds_it()
    {
        var job = TwoTasks().Worker("09:00-11:00").Worker("09:00-13:00", from: AJob.Monday.PlusDays(3), name: "helper");
        var forecast = job.Planned([[60, 30], [150, 30]]).Forecast;
        Assert.Equal(0, forecast.Overruns);
        Assert.Equal(AJob.Monday.PlusDays(3), forecast.P90!.Value.Date);
    }

    [Fact]
    public void Tasks_that_no_longer_fit_into_their_session_part_and_are_counted()
    {
        var job = new AJob().Task("spread", 60).Task("square up", 40).Then("spread", "square up", sameSession: true);
        var forecast = job.Planned([[60, 40], [110, 40]]).Forecast;
        Assert.Equal(1, forecast.Overruns);
        Assert.Equal(new LocalDateTime(2027, 3, 2, 9, 40), forecast.P90!.Value.LocalDateTime);
    }

    [Fact]
    public void A_trial_beyond_five_years_is_not_given_a_date()
    {
        var job = new AJob { Limits = new() { HeavyPerDay = WorkTime.FromMinutes(10) }, Due = new(2040, 1, 1) }
            .Task("rip", 20, task => task with { WorkClass = WorkClass.Heavy, IsSplittable = true });
        var forecast = job.Planned([[20], [20], [20_000]]).Forecast;
        Assert.Equal(1, forecast.Unfinished);
        Assert.NotNull(forecast.P50);
        Assert.Null(forecast.P80);
        Assert.Equal(2.0 / 3, forecast.ChanceOfDue);
    }

    [Fact]
    public void Longer_times_in_every_trial_never_bring_a_single_row_of_tasks_forward()
    {
        var draws = new Random(3);
        var trials = Enumerable.Range(0, 100).Select(_ => new double[] { 10 + (90 * draws.NextDouble()), 10 + (90 * draws.NextDouble()) }).ToList();
        var longer = trials.ConvertAll(trial => trial.Select(minutes => minutes + 9).ToArray());
        var (one, other) = (TwoTasks().Planned(trials).Forecast, TwoTasks().Planned(longer).Forecast);
        Assert.All(one.Finishes.Zip(other.Finishes), pair => Assert.True(pair.First <= pair.Second));
    }

    private static AJob TwoTasks(LocalDate? due = null) => new AJob { Due = due }.Task("saw", 60).Task("fit", 30).Then("saw", "fit");
}
