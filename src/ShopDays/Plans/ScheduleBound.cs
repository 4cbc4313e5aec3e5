using System.Collections.Immutable;

namespace ShopDays.Plans;

/// <summary>What keeps a job from finishing sooner.</summary>
internal enum BoundKind
{
    /// <summary>Heavy work, so much a day.</summary>
    HeavyWork,

    /// <summary>All the work in all the hours.</summary>
    WorkedHours,

    /// <summary>The longest way of work and waits.</summary>
    Waits,
}

/// <summary>A minute before which no plan can finish.</summary>
/// <param name="Minute">The minute, or <see cref="CompiledCalendar.Never"/> when the calendars end before.</param>
/// <param name="Kind">What binds.</param>
internal readonly record struct Bound(int Minute, BoundKind Kind);

/// <summary>
/// Minutes before which no plan can finish, each from leaving something out: that workers and things are shared, or in
/// what order work is done.
/// </summary>
internal static class ScheduleBound
{
    /// <summary>The latest of the bounds; of equal ones the first in the order of <see cref="BoundKind"/>.</summary>
    public static Bound Of(ScheduleProblem problem)
    {
        var ends = EarliestEnds(problem);
        var waits = TailLengths.Of(problem, 0);
        Bound[] bounds =
        [
            new(InHours(problem, ends, waits, task => task.IsHeavy, problem.HeavyPerDay), BoundKind.HeavyWork),
            new(InHours(problem, ends, waits, _ => true, int.MaxValue), BoundKind.WorkedHours),
            new(ends.Select((end, task) => end + problem.Tasks[task].WaitAtEnd).Append(problem.Orders.Max(order => order.FinishedFrom)).Max(), BoundKind.Waits),
        ];
        return bounds.Select(bound => bound with { Minute = NextFinish(problem, bound.Minute) }).MaxBy(bound => bound.Minute);
    }

    /// <summary>
    /// The first minute from one on in which some task, with the wait at its end, can be what finishes the job: work ends
    /// in a session, so nothing finishes on a closed day unless a wait does.
    /// </summary>
    private static int NextFinish(ScheduleProblem problem, int minute)
    {
        var first = CompiledCalendar.Never;
        for (var task = 0; task < problem.Tasks.Length && minute < first; task++)
        {
            var plan = problem.Tasks[task];
            var isLast = plan.WaitAtEnd > 0 || problem.After(task).IsEmpty;
            if (!isLast)
            {
                continue;
            }

            var piece = plan.IsSplittable ? 1 : plan.Minutes;
            first = Math.Min(first, plan.Crew == 0 ? minute : plan.WaitAtEnd + EndOfWork(problem, minute - plan.WaitAtEnd, piece));
        }

        return Math.Min(CompiledCalendar.Never, problem.Tasks.IsEmpty ? minute : Math.Max(minute, first));
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

    /// <summary>
    /// The earliest end of each task, were it alone in the shop with what comes before it done as early. The least
    /// useful piece is left out: taking every minute that there is can then not be bettered.
    /// </summary>
    private static int[] EarliestEnds(ScheduleProblem problem)
    {
        var fitter = new TaskFitter(problem, new ShopFloor(problem));
        var fit = new TaskFit();
        var ends = new int[problem.Tasks.Length];
        foreach (var task in problem.InOrder)
        {
            var plan = problem.Tasks[task];
            var ready = plan.NotBefore;
            foreach (var one in problem.Before(task))
            {
                ready = Math.Max(ready, ends[one.Before] + one.Lag);
            }

            var split = new WorkSplit(plan.Minutes, plan.IsSplittable, LeastPiece: 1);
            var fits = ready < CompiledCalendar.Never && fitter.TryFit(task, split, ready, CompiledCalendar.Never, ref fit);
            ends[task] = fits ? fit.End : CompiledCalendar.Never;
        }

        return ends;
    }

    /// <summary>
    /// When enough hours have gone by for some tasks, from the earliest beginning of any of them, and the shortest wait
    /// after any of them.
    /// </summary>
    private static int InHours(ScheduleProblem problem, int[] ends, double[] waits, Func<CompiledTask, bool> counts, int perDay)
    {
        var some = Enumerable.Range(0, problem.Tasks.Length).Where(task => problem.Tasks[task].Crew > 0 && counts(problem.Tasks[task])).ToImmutableArray();
        if (some.IsEmpty)
        {
            return 0;
        }

        var work = some.Sum(task => (long)problem.Tasks[task].Minutes * problem.Tasks[task].Crew);

        var begin = some.Min(task => EarliestBegin(problem, ends, task));
        var end = Filled(problem, begin, work, perDay);
        return end == CompiledCalendar.Never ? end : end + (int)some.Min(task => waits[task]);
    }

    private static int EarliestBegin(ScheduleProblem problem, int[] ends, int task)
    {
        var ready = problem.Tasks[task].NotBefore;
        foreach (var one in problem.Before(task))
        {
            ready = Math.Max(ready, ends[one.Before] + one.Lag);
        }

        return ready;
    }

    /// <summary>The minute by which all workers together have had so many minutes, at most so many each a day.</summary>
    private static int Filled(ScheduleProblem problem, int begin, long work, int perDay)
    {
        var had = problem.Workers.Select(_ => (Day: -1, Minutes: 0)).ToArray();
        var stretches = Enumerable.Range(0, problem.Workers.Length).SelectMany(worker => Stretches(problem, worker, begin));
        var changes = new SortedDictionary<int, int>();
        foreach (var (worker, day, from, to) in stretches)
        {
            if (had[worker].Day != day)
            {
                had[worker] = (day, 0);
            }

            var length = Math.Min(to - from, perDay - had[worker].Minutes);
            if (length <= 0)
            {
                continue;
            }

            had[worker].Minutes += length;

            // The cap's minutes are counted as early in the day as can be.
            changes[from] = changes.GetValueOrDefault(from) + 1;
            changes[from + length] = changes.GetValueOrDefault(from + length) - 1;
        }

        var (at, there) = (begin, 0);
        foreach (var (minute, change) in changes)
        {
            if ((long)(minute - at) * there >= work)
            {
                break;
            }

            work -= (long)(minute - at) * there;
            (at, there) = (minute, there + change);
        }

        return there == 0 ? CompiledCalendar.Never : at + (int)((work + there - 1) / there);
    }

    private static IEnumerable<(int Worker, int Day, int From, int To)> Stretches(ScheduleProblem problem, int worker, int begin)
    {
        var calendar = problem.Workers[worker];
        for (var session = calendar.SessionEndingAfter(begin); session < calendar.Count; session++)
        {
            yield return (worker, calendar.Day[session], Math.Max(begin, calendar.From[session]), calendar.To[session]);
        }
    }
}
