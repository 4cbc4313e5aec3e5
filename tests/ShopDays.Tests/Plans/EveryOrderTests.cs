using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class EveryOrderTests
{
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 1)]
    [InlineData(4, 24)]
    [InlineData(6, 720)]
    public void Work_that_does_not_depend_on_other_work_has_all_orders_there_are(int tasks, int orders)
    {
        var problem = ProblemOf(tasks, []);

        Assert.Equal(orders, EveryOrder.Of(problem).Select(order => string.Join(' ', order)).Distinct().Count());
        Assert.True(EveryOrder.IsWithin(problem, orders));
        Assert.False(EveryOrder.IsWithin(problem, orders - 1));
    }

    [Fact]
    public void What_comes_after_something_stands_behind_it_in_each()
    {
        // Two rows of two and three tasks: five places, of which the shorter row takes two.
        var problem = ProblemOf(5, [new(0, 1, 0), new(2, 3, 0), new(3, 4, 0)]);
        var orders = EveryOrder.Of(problem).Select(order => (int[])[.. order]).ToList();

        Assert.Equal(10, orders.Count);
        Assert.True(EveryOrder.IsWithin(problem, 10));
        Assert.False(EveryOrder.IsWithin(problem, 9));
        Assert.All(orders, order => Assert.All(problem.Precedences, one => Assert.True(Array.IndexOf(order, problem.BlockOf(one.Before)) < Array.IndexOf(order, problem.BlockOf(one.After)))));
    }

    [Fact]
    public void A_row_that_leaves_no_choice_has_one_order_however_long_it_is_up_to_sixteen()
    {
        Assert.True(EveryOrder.IsWithin(RowOf(16), 1));
        Assert.False(EveryOrder.IsWithin(RowOf(17), 1000));
    }

    private static ScheduleProblem RowOf(int tasks) => ProblemOf(tasks, [.. Enumerable.Range(1, tasks - 1).Select(task => new CompiledPrecedence(task - 1, task, 0))]);

    private static ScheduleProblem ProblemOf(int tasks, CompiledPrecedence[] precedences) => new(
        [.. Enumerable.Range(0, tasks).Select(_ => new CompiledTask { Minutes = 10, SetupKey = -1 })],
        precedences,
        [new([new(0, 600, 0)], [])],
        []);
}
