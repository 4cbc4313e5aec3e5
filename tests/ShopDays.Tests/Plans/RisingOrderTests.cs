using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class RisingOrderTests
{
    private static readonly CompiledCalendar Always = new([new(0, 100_000, 0)], []);

    [Fact]
    public void Work_that_is_alike_is_done_in_the_order_of_its_numbers()
    {
        // Three mortises, each before its own tenon, and a drawing that is like neither.
        var problem = Problem(7, [new(0, 3), new(1, 4), new(2, 5)]);
        var risen = Risen(problem, ["mortise", "mortise", "mortise", "tenon", "tenon", "tenon", "draw"], 2, 6, 5, 1, 0, 3, 4);
        Assert.Equal([0, 6, 3, 1, 2, 4, 5], risen);
    }

    [Fact]
    public void What_must_come_first_stays_first_whatever_its_number()
    {
        var problem = Problem(4, [new(2, 1)]);
        var risen = Risen(problem, ["saw", "plane", "plane", "saw"], 3, 2, 1, 0);
        Assert.Equal([0, 2, 1, 3], risen);
    }

    private static ScheduleProblem Problem(int tasks, CompiledPrecedence[] precedences) =>
        new([.. Enumerable.Repeat(new CompiledTask { Minutes = 10 }, tasks)], precedences, [Always], []);

    /// <summary>Orders and answers in tasks; the blocks of a problem have numbers of their own.</summary>
    private static IEnumerable<int> Risen(ScheduleProblem problem, string[] kinds, params int[] tasks) =>
        new RisingOrder(problem, kinds).Of([.. tasks.Select(problem.BlockOf)]).Select(block => problem.Members(block)[0]);
}
