using NodaTime;
using ShopDays.Plans;
using ShopDays.Plans.Scheduling;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class ScheduleProblemTests
{
    private static readonly CompiledTask Task = new() { Minutes = 10 };

    [Fact]
    public void The_place_that_a_task_is_worked_at_is_not_among_what_it_holds()
    {
        foreach (var hold in (Hold[])[new(0, 0, 1), new(0, 2, 1)])
        {
            Assert.Contains("holds the place that it is worked at", Refused(Task with { Place = 0, Holds = [hold] }), StringComparison.Ordinal);
        }

        Assert.NotNull(Problem(Task with { Place = 0, Holds = [new(1, 2, 1)] }));
    }

    [Fact]
    public void Of_one_row_all_is_held_for_the_same_time_and_what_less_will_do_for_is_told_first()
    {
        Assert.NotNull(Problem(Task with { Holds = [new(0, 0, 1, 60), new(2, 2, 1, 30), new(1, 2, 1, 30)] }));
        Assert.Contains("for other times", Refused(Task with { Holds = [new(2, 2, 1, 30), new(1, 2, 1)] }), StringComparison.Ordinal);
        Assert.Contains("of a wider row first", Refused(Task with { Holds = [new(1, 2, 1, 30), new(2, 2, 1, 30)] }), StringComparison.Ordinal);
    }

    [Fact]
    public void Work_whose_wait_holds_the_bench_holds_it_from_its_beginning_and_asks_for_no_place_beside()
    {
        var job = new AJob { Limits = new() { Benches = 1 } }.Worker("09:00-17:00").Worker("09:00-17:00", name: "helper")
            .Task("glue", 30).Task("plane", 30)
            .Then("glue", "plane", new(Duration.FromHours(1), "glue hardens") { HoldsBench = true });
        var request = job.Request();
        var tasks = ProblemCompiler.Compile(request, OpenHours.FirstYear(request)).Tasks;
        Assert.Equal((-1, new Hold(0, 0, 1, 60)), (tasks[0].Place, Assert.Single(tasks[0].Holds)));
        Assert.Equal(0, tasks[1].Place);
        Assert.Empty(tasks[1].Holds);
    }

    private static ScheduleProblem Problem(CompiledTask task) => new([task], [], [new CompiledCalendar([new(0, 100, 0)], [])], [2, 2, 2]);

    private static string Refused(CompiledTask task) => Assert.Throws<ArgumentException>(() => Problem(task)).Message;

    [Fact]
    public void Work_that_is_interrupted_stays_in_the_same_shop_with_its_clock_and_its_nights()
    {
        var nights = new CompiledNights([new([0], [2.0], 60)], []);
        var problem = new ScheduleProblem([new CompiledTask { Minutes = 10, SetsAtEnd = 1 }], [], [new([new(0, 60, 0)], [])], [], nights: nights);

        Assert.Same(problem.Nights.Settings[0], problem.Interrupted([(0, 30)]).Nights.Settings[0]);
        Assert.Equal(problem.Nights.Settings[0].EndFrom(30), problem.Interrupted([(0, 30)]).Nights.Settings[1].EndFrom(0));
        Assert.Same(problem.Clock, problem.Interrupted([(0, 30)]).Clock);
    }
}
