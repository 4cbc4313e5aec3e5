using System.Collections.Immutable;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>A task of one of the orders.</summary>
/// <param name="Order">The order's place among all.</param>
/// <param name="Task">The task.</param>
/// <param name="Time">The time that it is planned with.</param>
internal readonly record struct TaskInHand(int Order, ShopTask Task, WorkTime Time);

/// <summary>The tasks of all orders in one row, numbered from 0, one order's after another's.</summary>
internal sealed class WorkInHand
{
    private readonly ImmutableArray<int> first;

    /// <summary>Puts the orders' tasks in a row.</summary>
    public WorkInHand(IReadOnlyList<OrderInHand> orders)
    {
        Orders = orders;
        Tasks = [.. orders.SelectMany((order, place) => order.Graph.Tasks.Select(task => new TaskInHand(place, task, order.Times[task.Id])))];
        first = [.. orders.Select((_, place) => orders.Take(place).Sum(before => before.Graph.Tasks.Count))];
    }

    /// <summary>The orders.</summary>
    public IReadOnlyList<OrderInHand> Orders { get; }

    /// <summary>The tasks.</summary>
    public ImmutableArray<TaskInHand> Tasks { get; }

    /// <summary>The number of a task.</summary>
    /// <param name="order">The order's place.</param>
    /// <param name="id">The task's id in it.</param>
    public int NumberOf(int order, int id) => first[order] + id;

    /// <summary>What comes before what, within each order, by the tasks' numbers.</summary>
    public IEnumerable<Precedence> Precedences => Each((order, place) => order.Graph.Precedences.Select(one => one with { Before = NumberOf(place, one.Before), After = NumberOf(place, one.After) }));

    /// <summary>Waits at the end of an order, by the tasks' numbers.</summary>
    public IEnumerable<ClosingWait> ClosingWaits => Each((order, place) => order.Graph.ClosingWaits.Select(one => one with { After = NumberOf(place, one.After) }));

    /// <summary>Something of each order, one order's after another's.</summary>
    public IEnumerable<T> Each<T>(Func<OrderInHand, int, IEnumerable<T>> what) => Orders.SelectMany(what);
}
