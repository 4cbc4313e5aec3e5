using System.Collections.Immutable;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Bounds;

/// <summary>
/// The latest minute before which it can be shown that no plan finishes. A finish is tried; where that cannot be, a later
/// one is, until nothing speaks against it.
/// </summary>
internal static class ScheduleBound
{
    private static readonly ImmutableHashSet<BoundKind> None = [];

    /// <summary>The bound on the finish of all work.</summary>
    public static Bound Of(ScheduleProblem problem) => Of(problem, None);

    /// <summary>The same where there is no end of some things: what all tasks together ask of them is left out.</summary>
    public static Bound Of(ScheduleProblem problem, IReadOnlySet<BoundKind> leftOut) => Of(problem, -1, problem.Orders.Max(order => order.FinishedFrom), leftOut);

    /// <summary>The bound on the finish of one order, whatever becomes of the others.</summary>
    public static Bound OfOrder(ScheduleProblem problem, int order) => Of(problem, order, problem.Orders[order].FinishedFrom, None);

    private static Bound Of(ScheduleProblem problem, int order, int finishedFrom, IReadOnlySet<BoundKind> leftOut)
    {
        problem = AtTheLeast(problem);
        IReadOnlyList<BoundLoad> loads = [.. BoundLoad.Of(problem).Where(load => !leftOut.Contains(load.Kind))];
        var heads = new BoundHeads(problem, loads);
        var cause = new BoundCause(BoundKind.Waits, [], finishedFrom, finishedFrom, 0, 0);
        var refuted = finishedFrom - 1;
        if (problem.Tasks.IsEmpty)
        {
            return new(finishedFrom, cause);
        }

        var trial = new BoundTrial(problem, loads, heads, order);
        var last = Latest(problem, finishedFrom);
        var early = Enumerable.Range(0, problem.Tasks.Length).Where(task => order < 0 || problem.Tasks[task].Order == order).Select(task => (long)heads.End[task] + problem.Tasks[task].WaitAtEnd).DefaultIfEmpty().Max();
        var next = (int)Math.Clamp(early - 1, finishedFrom, last);
        for (var step = 1; trial.WhyNot(next) is { } why; step = Math.Min(2 * step, last))
        {
            (refuted, cause) = (next, why);
            if (next == last)
            {
                return new(CompiledCalendar.Never, cause);
            }

            next = Math.Min(last, next + step);
        }

        last = next;
        while (refuted + 1 < last)
        {
            var middle = refuted + ((last - refuted) / 2);
            if (trial.WhyNot(middle) is { } why)
            {
                (refuted, cause) = (middle, why);
            }
            else
            {
                last = middle;
            }
        }

        // A wait that runs already may end it at any minute.
        var minute = refuted + 1;
        return new(minute == finishedFrom ? minute : NextFinish(problem, order, minute), cause);
    }

    /// <summary>Days of the calendar may be shorter for a clock that is put forward.</summary>
    private static ScheduleProblem AtTheLeast(ScheduleProblem problem) => problem.Clock.Changes && problem.Tasks.Any(task => task.IsByCalendar)
        ? Changed.Tasks(problem, (task, _) => task.IsByCalendar ? task with { IsByCalendar = false, Minutes = Math.Max(0, task.Minutes - problem.Clock.MostForward) } : task)
        : problem;

    /// <summary>A minute by which everything that can be done at all is done: all sessions over, then whatever goes on by itself, and all waits.</summary>
    private static int Latest(ScheduleProblem problem, int finishedFrom) => (int)Math.Min(
        CompiledCalendar.Never - 1,
        problem.Workers.Select(worker => worker.Count == 0 ? 0 : worker.To[^1]).Append(finishedFrom).Max()
            + problem.Tasks.Sum(task => (long)problem.Nights.MostOf(task.WaitAtEnd, task.SetsAtEnd) + (task.Crew == 0 ? task.Minutes : 0))
            + problem.Precedences.Sum(one => (long)problem.Nights.MostOf(one.Lag, one.Sets))
            + problem.Tasks.Max(task => (long)task.NotBefore));

    /// <summary>
    /// The first minute from one on in which some task, with the wait at its end, can be what finishes the job: work ends
    /// in a session, so nothing finishes on a closed day unless a wait does.
    /// </summary>
    private static int NextFinish(ScheduleProblem problem, int order, int minute)
    {
        var first = CompiledCalendar.Never;
        for (var task = 0; task < problem.Tasks.Length && minute < first; task++)
        {
            var plan = problem.Tasks[task];
            var isLast = (order < 0 || plan.Order == order) && (plan.WaitAtEnd > 0 || !IsFollowed(problem, task, order));
            if (!isLast)
            {
                continue;
            }

            var piece = plan.IsSplittable ? 1 : plan.Minutes;
            first = Math.Min(first, plan.Crew == 0 ? minute : plan.WaitAtEnd + EndOfWork(problem, minute - plan.WaitAtEnd, piece));
        }

        return Math.Min(CompiledCalendar.Never, problem.Tasks.IsEmpty ? minute : Math.Max(minute, first));
    }

    /// <summary>Whether a task comes before another of an order, or of any where all are meant.</summary>
    private static bool IsFollowed(ScheduleProblem problem, int task, int order)
    {
        foreach (var one in problem.After(task))
        {
            if (order < 0 || problem.Tasks[one.After].Order == order)
            {
                return true;
            }
        }

        return false;
    }

    private static int EndOfWork(ScheduleProblem problem, int minute, int piece)
    {
        var first = CompiledCalendar.Never;
        foreach (var calendar in problem.Workers)
        {
            for (var session = calendar.SessionEndingAfter(minute - 1); session < calendar.Count; session++)
            {
                var end = Math.Max(minute, calendar.From[session] + piece);
                if (end <= calendar.To[session])
                {
                    first = Math.Min(first, end);
                    break;
                }
            }
        }

        return first;
    }
}
