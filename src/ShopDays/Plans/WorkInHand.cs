using System.Collections.Immutable;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>A task of one of the orders, or what one waits for from others.</summary>
/// <param name="Order">The order's place among all.</param>
/// <param name="Task">The task; for what is awaited, that in words as a task that takes nobody's hands.</param>
/// <param name="Time">The time that it is planned with; zero for what is awaited.</param>
/// <param name="Awaited">What is awaited; null for a task.</param>
internal readonly record struct TaskInHand(int Order, ShopTask Task, WorkTime Time, Awaited? Awaited = null);

/// <summary>The tasks of all orders in one row, numbered from 0, one order's after another's, and behind each order's tasks what it waits for.</summary>
internal sealed class WorkInHand
{
    private readonly ImmutableArray<int> first;

    /// <summary>Puts the orders' tasks in a row.</summary>
    public WorkInHand(IReadOnlyList<OrderInHand> orders)
    {
        Orders = orders;
        Tasks =
        [
            .. orders.SelectMany((order, place) => order.Graph.Tasks.Select(task => new TaskInHand(place, task, order.Times[task.Id]))
                .Concat(order.Graph.Awaited.Select((one, index) => new TaskInHand(place, Waiting(one, order.Graph.Tasks.Count + index), WorkTime.Zero, one)))),
        ];
        first = [.. orders.Select((_, place) => orders.Take(place).Sum(before => before.Graph.Tasks.Count + before.Graph.Awaited.Count))];
    }

    /// <summary>The orders.</summary>
    public IReadOnlyList<OrderInHand> Orders { get; }

    /// <summary>The tasks and what is awaited.</summary>
    public ImmutableArray<TaskInHand> Tasks { get; }

    /// <summary>The number of a task.</summary>
    /// <param name="order">The order's place.</param>
    /// <param name="id">The task's id in it.</param>
    public int NumberOf(int order, int id) => first[order] + id;

    /// <summary>The number of something awaited.</summary>
    /// <param name="order">The order's place.</param>
    /// <param name="index">Its place among what the order waits for.</param>
    public int NumberOfAwaited(int order, int index) => first[order] + Orders[order].Graph.Tasks.Count + index;

    /// <summary>What comes before what, within each order, by the tasks' numbers.</summary>
    public IEnumerable<Precedence> Precedences => Each((order, place) => order.Graph.Precedences.Select(one => one with { Before = NumberOf(place, one.Before), After = NumberOf(place, one.After) }));

    /// <summary>What of an order comes before what it waits for, and what of it that holds back, by their numbers.</summary>
    public IEnumerable<(int Before, int After)> AroundAwaited => Each((order, place) => order.Graph.Awaited.SelectMany((one, index) =>
    {
        var own = NumberOfAwaited(place, index);
        return one.After.Select(id => (NumberOf(place, id), own))
            .Concat(one.AfterOthers.Select(other => (NumberOfAwaited(place, other), own)))
            .Concat(one.Holds.Select(id => (own, NumberOf(place, id))));
    }));

    /// <summary>Waits at the end of an order, by the tasks' numbers.</summary>
    public IEnumerable<ClosingWait> ClosingWaits => Each((order, place) => order.Graph.ClosingWaits.Select(one => one with { After = NumberOf(place, one.After) }));

    /// <summary>Something of each order, one order's after another's.</summary>
    public IEnumerable<T> Each<T>(Func<OrderInHand, int, IEnumerable<T>> what) => Orders.SelectMany(what);

    private static ShopTask Waiting(Awaited one, int id) => new()
    {
        Id = id,
        Name = one.Decision.What,
        Stage = Stage.Drawing,
        Timing = new TaskTiming.ByGuess(new(WorkTime.Zero, WorkTime.Zero, WorkTime.Zero)),
        WorkClass = WorkClass.Light,
        Crew = 0,
    };
}
