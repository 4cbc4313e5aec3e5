using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>Days of two sessions of 60 minutes, with an hour between them.</summary>
public sealed class WaitsFirstTests
{
    private static readonly CompiledCalendar Hours = new([.. Enumerable.Range(0, 20).SelectMany(day => new OpenStretch[] { new(1440 * day, (1440 * day) + 60, day), new((1440 * day) + 120, (1440 * day) + 180, day) })], []);

    private static readonly CompiledTask Client = new() { Minutes = 1440, Crew = 0 };

    [Fact]
    public void A_sketch_that_a_client_waits_for_is_drawn_first_on_its_day_where_nothing_is_lost_by_it()
    {
        // Two looks at boards, the sketch in the second session, the client's word, and work that nobody waits for until the fifth day.
        var plan = First([Work(40), Work(20), Work(30), Client, Work(10), Work(10) with { NotBefore = 5 * 1440 }], [new(2, 3), new(3, 4)], 0, 1, 2, 3, 4, 5);
        Assert.Equal((0, 30), (plan.Start[2], plan.End[2]));
        Assert.Equal((5 * 1440) + 10, plan.Finish);
    }

    [Fact]
    public void Glue_sets_from_the_front_of_the_session_too()
    {
        var plan = First([Work(20), Work(30), Work(10), Work(10) with { NotBefore = 5 * 1440 }], [new(1, 2, Lag: 600)], 0, 1, 2, 3);
        Assert.Equal(0, plan.Start[1]);
    }

    [Fact]
    public void What_must_come_before_it_stays_before_it()
    {
        var plan = First([Work(20), Work(30), Client, Work(10) with { NotBefore = 5 * 1440 }], [new(0, 1), new(1, 2)], 0, 1, 2, 3);
        Assert.Equal((0, 20), (plan.Start[0], plan.Start[1]));
    }

    [Fact]
    public void It_stays_where_it_is_when_the_finish_would_be_later_for_it()
    {
        // What ends the job can begin with the second session, in which the sketch comes behind it.
        var plan = First([Work(60), Work(20) with { WaitAtEnd = 1000 }, Work(30), new() { Minutes = 5, Crew = 0 }], [new(0, 1, Lag: 60), new(2, 3)], 0, 1, 2, 3);
        Assert.Equal((120, 140, 1140), (plan.Start[1], plan.Start[2], plan.Finish));
    }

    private static CompiledTask Work(int minutes) => new() { Minutes = minutes };

    /// <summary>The schedule of some tasks in that order, once those with which a wait begins are brought to the front.</summary>
    private static Schedule First(CompiledTask[] tasks, CompiledPrecedence[] precedences, params int[] order)
    {
        var problem = new ScheduleProblem(tasks, precedences, [Hours], []);
        var plan = new Schedule(problem.Tasks.Length);
        Assert.True(new ScheduleGenerator(problem).Generate(new WaitsFirst(problem).Of([.. order.Select(problem.BlockOf)]), problem.Minutes.AsSpan(), plan));
        return plan;
    }
}
