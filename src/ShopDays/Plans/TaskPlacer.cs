namespace ShopDays.Plans;

/// <summary>Places one task after another on a shop floor, each where it ends first, and writes it into a schedule.</summary>
internal sealed class TaskPlacer(ScheduleProblem problem, ShopFloor floor)
{
    /// <summary>
    /// How long a trial looks for a session that holds work as it should be held: in a week every usual session comes
    /// round, and nobody puts a glue-up off until a longer one comes in summer.
    /// </summary>
    public const int WeekMinutes = 7 * 24 * 60;

    private readonly int[] begin = new int[problem.Orders.Length];
    private readonly TaskFitter fitter = new(problem, floor);
    private TaskFit fit = new();

    /// <summary>Sets the first minute of each order; none for minute 0.</summary>
    public void BeginAt(ReadOnlySpan<int> begins)
    {
        if (begins.IsEmpty)
        {
            Array.Clear(begin);
        }
        else
        {
            begins.CopyTo(begin);
        }
    }

    /// <summary>Places a task where it ends first.</summary>
    /// <param name="task">The task.</param>
    /// <param name="minutes">The minutes of each task.</param>
    /// <param name="into">The schedule so far; receives the task's stretches of work, or the task that found no place.</param>
    /// <param name="notBefore">The first minute in which it may begin, beside what it depends on.</param>
    /// <param name="mayRunOver">Whether it may go on in a later session when no session of a week holds it.</param>
    /// <param name="keepTogether">Whether it must begin in the session of what it follows, where that is asked for.</param>
    /// <returns>Whether it found a place before the calendars end.</returns>
    public bool Place(int task, ReadOnlySpan<int> minutes, Schedule into, int notBefore, bool mayRunOver, bool keepTogether)
    {
        var plan = problem.Tasks[task];
        var ready = Math.Max(Math.Max(notBefore, plan.NotBefore), begin[plan.Order] + plan.WaitAtStart);
        var startBy = CompiledCalendar.Never;
        foreach (var one in problem.Before(task))
        {
            ready = Math.Max(ready, into.End[one.Before] + one.Lag);
            if (one.SameSession && keepTogether)
            {
                startBy = Math.Min(startBy, SessionEnd(one.Before, into));
            }
        }

        var split = new WorkSplit(minutes[task], plan.IsSplittable, plan.LeastPiece);
        var fits = fitter.TryFit(task, split, ready, startBy, ref fit);
        if (mayRunOver && !plan.IsSplittable && startBy == CompiledCalendar.Never && !(fits && fit.End <= ready + WeekMinutes))
        {
            fits = TryRunOver(task, split, ready, fits ? fit.End : CompiledCalendar.Never, into);
        }

        if (!fits)
        {
            into.Unplaced = task;
            return false;
        }

        into.Unplaced = -1;
        Take(task, plan, into);
        return true;
    }

    /// <summary>
    /// Lets a task begin where its planned time would fit, if it is then done more than a week before it could be done
    /// whole. When neither is possible, since the sessions long enough are over by then, it is done piece by piece.
    /// </summary>
    private bool TryRunOver(int task, WorkSplit whole, int ready, int wholeEnd, Schedule into)
    {
        var over = whole with { IsSplittable = true, LeastPiece = problem.Minutes[task] };
        if (fitter.TryFit(task, over, ready, CompiledCalendar.Never, ref fit) && fit.End + WeekMinutes < wholeEnd)
        {
            into.Overruns++;
            return true;
        }

        if (wholeEnd < CompiledCalendar.Never)
        {
            return fitter.TryFit(task, whole, ready, CompiledCalendar.Never, ref fit);
        }

        into.Overruns++;
        return fitter.TryFit(task, over with { LeastPiece = 1 }, ready, CompiledCalendar.Never, ref fit);
    }

    private void Take(int task, CompiledTask plan, Schedule into)
    {
        into.Set(task, fit.Start, fit.End);
        foreach (var piece in fit.Pieces)
        {
            floor.TakeWhileWorked(plan, piece.From, piece.To);
            foreach (var worker in fit.Team)
            {
                floor.Take(worker, plan, piece.Day, piece.From, piece.To);
                var session = worker == fit.Team[0] ? piece.Session : problem.Workers[worker].SessionEndingAfter(piece.From);
                into.Add(new(task, worker, session, piece.Day, piece.From, piece.To));
            }
        }

        floor.TakeHolds(task, fit.Start, fit.End);
    }

    /// <summary>The end of the session in which a task that is placed ends; of a crew's sessions the one that ends first.</summary>
    public int SessionEnd(int task, Schedule into)
    {
        var end = CompiledCalendar.Never;
        foreach (var piece in into.Pieces)
        {
            if (piece.Task == task && piece.To == into.End[task])
            {
                end = Math.Min(end, problem.Workers[piece.Worker].To[piece.Session]);
            }
        }

        return end;
    }
}
