using NodaTime;
using ShopDays.Plans;
using ShopDays.Times;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class SpoilingForecastTests
{
    [Fact]
    public void Where_nothing_is_spoiled_the_forecast_is_the_very_same()
    {
        var (without, with) = (Forecast(null), Forecast([[], [], []]));
        Assert.Equal((without.P50, without.P80, without.P90, without.Overruns), (with.P50, with.P80, with.P90, with.Overruns));
        Assert.Equal(without.Finishes, with.Finishes);
    }

    [Fact]
    public void What_is_done_again_lengthens_its_task_and_moves_nothing_that_is_planned()
    {
        var planned = Planned([[], [], [Again(0, 50)]]);
        Assert.Equal(Planned(null).Plan.Finish, planned.Plan.Finish);

        // 110 minutes of sawing leave no room for fitting before eleven.
        Assert.Equal(new LocalDateTime(2027, 3, 2, 9, 30), planned.Forecast.P90!.Value.LocalDateTime);
    }

    [Fact]
    public void A_task_that_should_be_done_in_one_go_may_part_when_something_is_done_again_in_it()
    {
        var forecast = Forecast([[], [], [Again(0, 100)]]);
        Assert.Equal(0, forecast.Overruns);

        // 120 minutes on Monday, 40 on Tuesday, five minutes of changing over, and half an hour of fitting.
        Assert.Equal(new LocalDateTime(2027, 3, 2, 10, 15), forecast.P90!.Value.LocalDateTime);
    }

    [Fact]
    public void New_timber_holds_back_what_comes_after_but_not_what_does_not()
    {
        var days = Duration.FromDays(5);
        Assert.Equal(new LocalDateTime(2027, 3, 8, 9, 30), Forecast([[], [], [Again(0, 60, days)]]).P90!.Value.LocalDateTime);
        var other = new AJob().Task("saw", 60).Task("draw", 30);
        var order = other.Order([[60, 30]]);
        var forecast = ((PlanAnswer.Planned)PlanMaker.Plan(other.Request() with { Orders = [order with { Draws = order.Draws with { Reworks = [[Again(1, 10, days)]] } }] })).Forecast;

        // Nothing waits for the drawing but the end of the job itself.
        Assert.Equal(AJob.Monday.PlusDays(5), forecast.P80!.Value.Date);
    }

    [Fact]
    public void More_that_is_spoiled_never_brings_a_single_row_of_tasks_forward()
    {
        var draws = new Random(4);
        var less = Enumerable.Range(0, 3).Select(_ => new[] { Again(0, 80 * draws.NextDouble()) }).ToList();
        var more = less.ConvertAll(trial => (Rework[])[.. trial, Again(1, 40, Duration.FromDays(1))]);
        Assert.All(Forecast(less).Finishes.Zip(Forecast(more).Finishes), pair => Assert.True(pair.First <= pair.Second));
    }

    private static Rework Again(int task, double minutes, Duration wait = default) => new(task, "leg", minutes, wait);

    private static FinishForecast Forecast(IReadOnlyList<Rework[]>? reworks) => Planned(reworks).Forecast;

    private static PlanAnswer.Planned Planned(IReadOnlyList<Rework[]>? reworks)
    {
        var job = new AJob().Task("saw", 60).Task("fit", 30).Then("saw", "fit");
        var order = job.Order([[60, 30], [60, 30], [60, 30]]);
        return (PlanAnswer.Planned)PlanMaker.Plan(job.Request() with { Orders = [order with { Draws = order.Draws with { Reworks = reworks } }] });
    }
}
