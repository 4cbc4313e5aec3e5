using System.Collections.Immutable;
using System.Globalization;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>
/// Turns an order of work into one in which work that is alike is done in the order of its numbers, so that a maker
/// finds leg 1 before leg 11 on the sheets. A search alone leaves such tasks in any order, since it gains nothing.
/// </summary>
/// <param name="problem">The problem.</param>
/// <param name="kinds">What each task is; those with one kind are alike but for their numbers.</param>
/// <param name="bout">The minutes of a bout of heavy work.</param>
internal sealed class RisingOrder(ScheduleProblem problem, IReadOnlyList<string> kinds, int bout = CompiledCalendar.Never)
{
    /// <summary>
    /// How much later each order may end for it. Like tasks are drawn apart, so their times differ by a minute or two; more
    /// than that is not given for looks.
    /// </summary>
    private const int MinutesLater = 10;

    private readonly ScheduleGenerator generator = new(problem);
    private readonly UnbrokenHeavy unbroken = new(problem, bout);
    private readonly Schedule trial = new(problem.Tasks.Length, problem.Orders.Length);

    /// <summary>The order with like work rising: all kinds of it at once where that does no harm, otherwise those that do none.</summary>
    /// <param name="order">A sound order; left as it is.</param>
    /// <param name="settled">How many of its first blocks keep their places.</param>
    public int[] Of(int[] order, int settled = 0)
    {
        generator.Generate(order, problem.Minutes.AsSpan(), trial);
        int[] finishes = [.. trial.Finishes];
        var (days, calls, turns) = (trial.ShopDays, trial.CallDays, trial.Changeovers);
        var heavyInARow = unbroken.In(trial);
        var alike = Enumerable.Range(settled, order.Length - settled).GroupBy(place => KindOf(order[place])).Select(group => group.ToImmutableArray()).Where(places => places.Length > 1).ToList();
        int[] all = [.. order];
        foreach (var places in alike)
        {
            Rise(all, places);
        }

        if (IsAsGood(all))
        {
            return all;
        }

        int[] risen = [.. order];
        foreach (var places in alike)
        {
            int[] next = [.. risen];
            Rise(next, places);
            risen = IsAsGood(next) ? next : risen;
        }

        return risen;

        bool IsAsGood(int[] other) =>
            IsSound(other)
            && generator.Generate(other, problem.Minutes.AsSpan(), trial)
            && EndsInTime(finishes)
            && trial.ShopDays <= days
            && trial.CallDays <= calls
            && trial.Changeovers <= turns
            && unbroken.In(trial) <= heavyInARow;
    }

    /// <summary>Whether each order ends about when it did, and none is late for it that was not.</summary>
    private bool EndsInTime(int[] before)
    {
        for (var order = 0; order < before.Length; order++)
        {
            var (finish, due) = (trial.Finishes[order], problem.Orders[order].DueBy);
            if (finish > before[order] + MinutesLater || (finish > due && before[order] <= due))
            {
                return false;
            }
        }

        return true;
    }

    private void Rise(int[] order, ImmutableArray<int> places)
    {
        int[] blocks = [.. places.Select(place => order[place]).OrderBy(FirstTask)];
        for (var one = 0; one < blocks.Length; one++)
        {
            order[places[one]] = blocks[one];
        }
    }

    private bool IsSound(int[] order)
    {
        var placeOf = new int[order.Length];
        for (var place = 0; place < order.Length; place++)
        {
            placeOf[order[place]] = place;
        }

        foreach (var block in order)
        {
            foreach (var before in problem.BlocksBefore(block))
            {
                if (placeOf[before] > placeOf[block])
                {
                    return false;
                }
            }
        }

        return true;
    }

    private int FirstTask(int block)
    {
        var first = int.MaxValue;
        foreach (var task in problem.Members(block))
        {
            first = Math.Min(first, task);
        }

        return first;
    }

    private string KindOf(int block) =>
        string.Join('\n', problem.Members(block).ToArray().Select(task => string.Create(CultureInfo.InvariantCulture, $"{problem.Tasks[task].Crew} {kinds[task]}")));
}
