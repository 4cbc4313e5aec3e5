using System.Collections.Immutable;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Bounds;

/// <summary>
/// Tries whether work could be finished by some minute: how late each task may end, counted back from it, and whether all
/// that must be done between two minutes fits in between. Where it does not, no plan can finish by then.
/// </summary>
/// <remarks>
/// Windows with more work than there are hours: the exact test for work that may be broken off at will and shared by all
/// (J. R. Jackson, 1955, from memory).
/// </remarks>
internal sealed class BoundTrial
{
    private readonly ScheduleProblem problem;
    private readonly IReadOnlyList<BoundLoad> loads;
    private readonly BoundHeads heads;
    private readonly BoundWindows windows;
    private readonly int[] lateEnd;
    private readonly int[] lateStart;
    private readonly BoundCause?[] cause;
    private readonly int[] heldBy;
    private readonly int order;

    /// <summary>Prepares trials.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="loads">What there is only so much of.</param>
    /// <param name="heads">How early each task can be.</param>
    /// <param name="order">The order whose finish is asked for; below 0 that of all work.</param>
    public BoundTrial(ScheduleProblem problem, IReadOnlyList<BoundLoad> loads, BoundHeads heads, int order)
    {
        (this.problem, this.loads, this.heads, this.order) = (problem, loads, heads, order);
        windows = new(problem);
        var tasks = problem.Tasks.Length;
        (lateEnd, lateStart, heldBy, cause) = (new int[tasks], new int[tasks], new int[tasks], new BoundCause?[tasks]);
    }

    /// <summary>Why nothing can finish by a minute; null when that is not known.</summary>
    public BoundCause? WhyNot(int finish)
    {
        for (var place = problem.InOrder.Length - 1; place >= 0; place--)
        {
            var task = problem.InOrder[place];
            EndInTime(task, finish);
            lateStart[task] = lateEnd[task] >= CompiledCalendar.Never ? CompiledCalendar.Never : windows.LatestStart(task, lateEnd[task]);
            if (lateEnd[task] < heads.End[task] || lateStart[task] < heads.Start[task])
            {
                return HeavyFor(task) ?? NoRoom(task);
            }
        }

        foreach (var load in loads)
        {
            if (TooMuch(load) is { } found)
            {
                return found;
            }
        }

        return null;
    }

    private void EndInTime(int task, int finish)
    {
        var plan = problem.Tasks[task];
        (lateEnd[task], heldBy[task], cause[task]) = (order < 0 || plan.Order == order ? finish - plan.WaitAtEnd : CompiledCalendar.Never, -1, null);
        var leastLag = CompiledCalendar.Never;
        foreach (var one in problem.After(task))
        {
            leastLag = Math.Min(leastLag, one.Lag);
            if (lateStart[one.After] - one.Lag < lateEnd[task])
            {
                (lateEnd[task], heldBy[task]) = (lateStart[one.After] - one.Lag, one.After);
            }
        }

        foreach (var load in loads)
        {
            EndBeforeLoad(task, load, leastLag);
        }
    }

    /// <summary>What comes after and must be done by a minute has to go through what there is until then.</summary>
    private void EndBeforeLoad(int task, BoundLoad load, int leastLag)
    {
        var work = 0L;
        var those = load.Tasks.Where(other => heads.Ancestors[other][task] && load.Inside[other] > 0 && lateEnd[other] < CompiledCalendar.Never).OrderBy(other => lateEnd[other]).ToArray();
        for (var one = 0; one < those.Length && lateEnd[task] >= 0; one++)
        {
            work += load.Inside[those[one]];
            var by = lateEnd[those[one]];
            if ((one + 1 < those.Length && lateEnd[those[one + 1]] == by) || load.Capacity.Between(lateEnd[task] + leastLag, by) >= work)
            {
                continue;
            }

            lateEnd[task] = load.Capacity.Emptied(by, work) - leastLag;
            heldBy[task] = -1;
            cause[task] = new(load.Kind, [.. those[..(one + 1)]], lateEnd[task] + leastLag, by, work, work, IsBehind: true);
        }
    }

    /// <summary>A task whose time is too short: what holds it back before, or what must follow, or the row of work and waits through it.</summary>
    private BoundCause NoRoom(int task)
    {
        var row = new List<int> { task };
        var first = task;
        for (; heads.HeldBy(first) >= 0; first = heads.HeldBy(first))
        {
            row.Insert(0, heads.HeldBy(first));
        }

        var last = task;
        for (; heldBy[last] >= 0; last = heldBy[last])
        {
            row.Add(heldBy[last]);
        }

        return heads.CauseOf(first) ?? cause[last] ?? new(BoundKind.Waits, [.. row], heads.Start[first], lateEnd[last], (long)heads.End[task] - heads.Start[first] + lateEnd[last] - lateEnd[task], lateEnd[last] - heads.Start[first]);
    }

    /// <summary>A heavy task of more than a day that has too few days for its cap.</summary>
    private BoundCause? HeavyFor(int task)
    {
        var plan = problem.Tasks[task];
        var (from, by) = (heads.Start[task], lateEnd[task]);
        return plan.IsHeavy && plan.Crew > 0 && plan.Minutes > problem.HeavyPerDay.OfCrew(plan.Crew) && from < by
            ? new(BoundKind.HeavyWork, [task], from, by, (long)plan.Minutes * plan.Crew, new BoundHours(problem, perDay: problem.HeavyPerDay).Between(from, by))
            : null;
    }

    private BoundCause? TooMuch(BoundLoad load)
    {
        var byEnd = load.Tasks.Where(task => lateEnd[task] < CompiledCalendar.Never).OrderBy(task => lateEnd[task] + load.After[task]).ToArray();
        foreach (var from in byEnd.Select(task => heads.Start[task] - load.Before[task]).Distinct())
        {
            var work = 0L;
            for (var one = 0; one < byEnd.Length; one++)
            {
                var task = byEnd[one];
                if (heads.Start[task] - load.Before[task] < from)
                {
                    continue;
                }

                work += load.Whole[task];
                var by = lateEnd[task] + load.After[task];
                var there = load.Capacity.Between(from, by);
                if (work > there)
                {
                    ImmutableArray<int> those = [.. byEnd[..(one + 1)].Where(other => heads.Start[other] - load.Before[other] >= from)];
                    return new(load.Kind, those, from, by, work, there);
                }
            }
        }

        return null;
    }
}
