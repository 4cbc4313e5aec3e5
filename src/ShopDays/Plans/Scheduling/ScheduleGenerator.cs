using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ShopDays.Plans.Scheduling;

/// <summary>
/// Makes a schedule from an order of blocks: each block in turn is placed where its tasks end first, given those
/// already placed. It makes no choice of its own, draws nothing, and after its first runs allocates nothing.
/// </summary>
/// <remarks>
/// The serial scheme of J. E. Kelley (1963, from memory), over a calendar. Work begins as soon as it can and goes on for as
/// long as it can; under a cap on heavy work it might now and then end sooner if it began later, and that is not looked for.
/// </remarks>
internal sealed class ScheduleGenerator
{
    /// <summary>How far on a split task is moved when what must follow it in its session does not fit.</summary>
    private const int StepMinutes = 5;

    private readonly ScheduleProblem problem;
    private readonly ShopFloor floor;
    private readonly TaskPlacer placer;
    private readonly LonePlacer? alone;
    private readonly ClockPlacer? byTheClock;
    private readonly int[] metDays;
    private readonly int[] calledDays;
    private readonly int[][] closings;
    private readonly int[] setAtEnd;
    private int run;

    /// <summary>A generator with buffers of its own; one for each thread.</summary>
    public ScheduleGenerator(ScheduleProblem problem)
    {
        this.problem = problem;
        byTheClock = ClockPlacer.For(problem);
        floor = new(problem);
        placer = new(problem, floor);
        alone = LonePlacer.For(problem, floor, placer.Begin);
        metDays = new int[problem.Days];
        calledDays = new int[problem.Days];
        closings = [.. problem.Orders.Select((_, order) => problem.Tasks.Select(task => task.Order == order ? task.WaitAtEnd : -CompiledCalendar.Never).ToArray())];
        setAtEnd = [.. Enumerable.Range(0, problem.Tasks.Length).Where(task => problem.Tasks[task].SetsAtEnd != CompiledNights.Nothing)];
    }

    /// <summary>Makes a schedule.</summary>
    /// <param name="order">Every block once, each after those it depends on.</param>
    /// <param name="minutes">The minutes of each task.</param>
    /// <param name="into">Receives the schedule.</param>
    /// <param name="mayRunOver">
    /// For drawn times: a task too long for any session of a week begins where its planned time would fit and goes on
    /// in the next session, and work that cannot share a session within a week does not. Both are counted as overruns.
    /// </param>
    /// <param name="begins">The first minute of each order; none to begin all of them with minute 0.</param>
    /// <returns>Whether everything was placed before the calendars end.</returns>
    public bool Generate(ReadOnlySpan<int> order, ReadOnlySpan<int> minutes, Schedule into, bool mayRunOver = false, ReadOnlySpan<int> begins = default)
    {
        into.Reset();
        if (byTheClock is not null)
        {
            var finish = byTheClock.Place(order, minutes, into, mayRunOver, begins.IsEmpty ? 0 : begins[0]);
            return finish < CompiledCalendar.Never && Finish(into, finish);
        }

        floor.Reset();
        placer.BeginAt(begins);
        alone?.Reset();
        for (var next = 0; next < order.Length; next++)
        {
            next = alone is null ? next : alone.Place(order, next, minutes, into, mayRunOver);
            if (into.Unplaced >= 0 || (next < order.Length && !Place(order[next], minutes, into, mayRunOver)))
            {
                return false;
            }
        }

        Finish(into);
        return true;
    }

    private bool Place(int block, ReadOnlySpan<int> minutes, Schedule into, bool mayRunOver)
    {
        var only = problem.OnlyMember(block);
        return only < 0
            ? Place(problem.Members(block), minutes, into, mayRunOver)
            : placer.Place(only, minutes, into, 0, mayRunOver, keepTogether: false);
    }

    private bool Place(ReadOnlySpan<int> members, ReadOnlySpan<int> minutes, Schedule into, bool mayRunOver)
    {
        floor.Remember();
        var placed = PlaceTogether(members, minutes, into, mayRunOver);
        floor.Forget();
        if (placed)
        {
            // One of them may have failed first and found a place in a later session.
            into.Unplaced = -1;
        }

        return placed;
    }

    private bool PlaceTogether(ReadOnlySpan<int> members, ReadOnlySpan<int> minutes, Schedule into, bool mayRunOver)
    {
        var pieces = into.Pieces.Length;
        var overruns = into.Overruns;
        var notBefore = 0;
        var giveUpAt = mayRunOver ? CompiledCalendar.Never : FirstStartBy(members);
        while (notBefore < giveUpAt)
        {
            var failed = FirstThatFails(members, minutes, into, notBefore, mayRunOver, keepTogether: true);
            if (failed < 0)
            {
                return true;
            }

            if (mayRunOver && notBefore == 0)
            {
                giveUpAt = into.Start[members[0]] + TaskPlacer.WeekMinutes;
            }

            notBefore = NextAttempt(members, failed, into);
            floor.GoBack();
            into.KeepPieces(pieces);
            into.Overruns = overruns;
        }

        if (!mayRunOver)
        {
            return false;
        }

        into.Overruns++;
        return FirstThatFails(members, minutes, into, 0, mayRunOver, keepTogether: false) < 0;
    }

    /// <summary>An appointment of one of them is lost when none of them may begin before it.</summary>
    private int FirstStartBy(ReadOnlySpan<int> members)
    {
        var first = CompiledCalendar.Never;
        foreach (var task in members)
        {
            first = Math.Min(first, problem.Terms[task].StartBy);
        }

        return first;
    }

    private int FirstThatFails(ReadOnlySpan<int> members, ReadOnlySpan<int> minutes, Schedule into, int notBefore, bool mayRunOver, bool keepTogether)
    {
        foreach (var task in members)
        {
            if (!placer.Place(task, minutes, into, notBefore, mayRunOver, keepTogether))
            {
                return task;
            }
        }

        return -1;
    }

    /// <summary>From when to try again: the next session, or a little later where a split task could end later in it.</summary>
    private int NextAttempt(ReadOnlySpan<int> members, int failed, Schedule into)
    {
        var next = CompiledCalendar.Never;
        foreach (var one in problem.Before(failed))
        {
            if (one.SameSession)
            {
                next = Math.Min(next, problem.Tasks[one.Before].IsSplittable ? 0 : placer.SessionEnd(one.Before, into));
            }
        }

        if (next > 0)
        {
            return next;
        }

        var first = CompiledCalendar.Never;
        foreach (var task in members)
        {
            if (task == failed)
            {
                break;
            }

            first = Math.Min(first, into.Start[task]);
        }

        return first + StepMinutes;
    }

    /// <summary>The figures of a schedule of a single order without anybody's work.</summary>
    private bool Finish(Schedule into, int end)
    {
        var order = problem.Orders[0];
        var finish = Math.Max(order.FinishedFrom, end);
        into.Finish = into.Finishes[0] = finish;
        into.Score = new((long)order.Weight * Math.Max(0, finish - order.DueBy), (long)order.Weight * finish, 0, 0, 0);
        return true;
    }

    private void Finish(Schedule into)
    {
        run++;
        var (last, late, weighted) = (0, 0L, 0L);
        for (var order = 0; order < problem.Orders.Length; order++)
        {
            var plan = problem.Orders[order];
            var finish = into.Finishes[order] = LatestToSet(order, into, Latest(into.End, closings[order], plan.FinishedFrom));
            last = Math.Max(last, finish);
            late += ScheduleScore.LateOf(plan.Weight, finish - plan.DueBy);
            weighted += (long)plan.Weight * finish;
        }

        var (days, calls) = (0, 0);
        foreach (ref readonly var piece in into.Pieces)
        {
            ref var met = ref metDays[piece.Day];
            days += met == run ? 0 : 1;
            met = run;
            if (piece.Worker > 0)
            {
                ref var called = ref calledDays[piece.Day];
                calls += called == run ? 0 : 1;
                called = run;
            }
        }

        floor.NobodyAfter(last);
        into.Finish = last;
        into.ShopDays = days;
        into.CallDays = calls;
        into.Changeovers = floor.Changeovers;
        into.Score = new(late, weighted, into.ShopDays, into.CallDays, into.Changeovers);
    }

    /// <summary>The latest minute by which something of an order has set at its end, and another.</summary>
    private int LatestToSet(int order, Schedule schedule, int latest)
    {
        foreach (var task in setAtEnd)
        {
            var plan = problem.Tasks[task];
            latest = plan.Order == order ? Math.Max(latest, problem.Nights.EndOf(schedule.End[task], plan.WaitAtEnd, plan.SetsAtEnd)) : latest;
        }

        return latest;
    }

    /// <summary>The latest of some minutes, each with a wait behind it, and of another.</summary>
    private static int Latest(ReadOnlySpan<int> minutes, ReadOnlySpan<int> waits, int latest)
    {
        unchecked
        {
            ref var first = ref MemoryMarshal.GetReference(minutes);
            ref var wait = ref MemoryMarshal.GetReference(waits);
            var most = Vector512.Create(latest);
            var at = 0;
            for (; at <= minutes.Length - Vector512<int>.Count; at += Vector512<int>.Count)
            {
                most = Vector512.Max(most, Vector512.LoadUnsafe(ref first, (nuint)at) + Vector512.LoadUnsafe(ref wait, (nuint)at));
            }

            for (var lane = 0; lane < Vector512<int>.Count; lane++)
            {
                latest = Math.Max(latest, most[lane]);
            }

            for (; at < minutes.Length; at++)
            {
                latest = Math.Max(latest, minutes[at] + waits[at]);
            }

            return latest;
        }
    }
}
