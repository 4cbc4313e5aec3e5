using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Plans;
using ShopDays.Times;
using ShopDays.Work;
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

    [Fact]
    public void A_greater_chance_gives_no_earlier_promise_and_no_chance_the_one_without()
    {
        var chest = Work.AJob.Chest();
        var graph = Work.AJob.Graph(chest);
        var again = MadeAgain.Of(graph, chest, Work.HandLayout.Of(chest), BuiltIn.Operations, BuiltIn.Waits);
        var model = RateModel.FromPrior(BuiltIn.Operations);
        var draws = model.Draw(graph.Tasks, 200, 5);
        var found = FoundPlan.Of(new AJob().Worker("08:30-12:30").Request() with
        {
            Orders = [new() { Name = "chest", Graph = graph, Times = [.. draws.OfEach().Select(range => range.P50)], Draws = draws, Start = AJob.Monday }],
            Limits = Work.AJob.Shop,
        }, out var inTheWay);
        Assert.Empty(inTheWay);
        var without = found!.SafeFinish(draws)!.Value.ToInstant();
        Assert.Equal(found.Forecasts[0].P80!.Value.ToInstant(), without);
        Assert.Equal(without, SafeAt(0));
        double[] factors = [1, 3, 10];
        var safe = factors.Select(SafeAt).Prepend(without).ToList();
        Assert.Equal(safe.Order(), safe);
        Assert.True(safe[^1] > without);

        Instant SafeAt(double factor)
        {
            var chances = SpoilingChances.FromPrior(new(BuiltIn.Operations.All.Select(operation => operation with { Methods = [.. operation.Methods.Select(method => method with { SpoilChance = Math.Min(0.5, method.SpoilChance * factor) })] })));
            return found!.SafeFinish(new SpoilingDraws("chest", again, graph.Tasks, model, chances).On(draws))!.Value.ToInstant();
        }
    }

    private static Rework Again(int task, double minutes, Duration wait = default) => new(task, task, "leg", minutes, wait);

    private static FinishForecast Forecast(IReadOnlyList<Rework[]>? reworks) => Planned(reworks).Forecast;

    private static PlanAnswer.Planned Planned(IReadOnlyList<Rework[]>? reworks)
    {
        var job = new AJob().Task("saw", 60).Task("fit", 30).Then("saw", "fit");
        var order = job.Order([[60, 30], [60, 30], [60, 30]]);
        return (PlanAnswer.Planned)PlanMaker.Plan(job.Request() with { Orders = [order with { Draws = order.Draws with { Reworks = reworks } }] });
    }
}
