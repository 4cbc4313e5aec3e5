namespace ShopDays.Plans.Scheduling;

/// <summary>Places one task after another on a shop floor, each where it ends first, and writes it into a schedule.</summary>
internal sealed class TaskPlacer(ScheduleProblem problem, ShopFloor floor)
{
    /// <summary>
    /// How long a trial looks for a session that holds work as it should be held: in a week every usual session comes
    /// round, and nobody puts a glue-up off until a longer one comes in summer.
    /// </summary>
    public const int WeekMinutes = 7 * 24 * 60;

    private readonly int[] begin = new int[problem.Orders.Length];
    private readonly int[] lastPiece = new int[problem.Tasks.Length];
    private readonly TaskFitter fitter = new(problem, floor);
    private readonly CompiledCalendar[] calendars = [.. problem.Workers];
    private readonly TaskTerms[] tasks = problem.Terms;
    private TaskFit fit = new();
    private TaskFit spare = new();

    /// <summary>The first minute of each order.</summary>
    public int[] Begin => begin;

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
    /// <param name="mayRunOver">
    /// Whether it may go on in a later session when no session of a week holds it, and begin after the minute by which it
    /// should.
    /// </param>
    /// <param name="keepTogether">Whether it must begin in the session of what it follows, where that is asked for.</param>
    /// <returns>Whether it found a place before the calendars end.</returns>
    public bool Place(int task, ReadOnlySpan<int> minutes, Schedule into, int notBefore, bool mayRunOver, bool keepTogether)
    {
        ref readonly var terms = ref tasks[task];
        var ready = Math.Max(Math.Max(notBefore, terms.NotBefore), begin[terms.Order] + terms.WaitAtStart);
        var together = CompiledCalendar.Never;
        var ends = into.Times.End;
        foreach (ref readonly var one in problem.Before(task))
        {
            ready = Math.Max(ready, one.IsEven ? ends[one.Before] + one.Lag : problem.ReadyAfter(one, ends[one.Before]));
            if (one.SameSession && keepTogether)
            {
                together = Math.Min(together, SessionEnd(one.Before, into));
            }
        }

        if (terms.IsByCalendar)
        {
            into.Set(task, ready, problem.Clock.After(ready, minutes[task]));
            lastPiece[task] = -1;
            return true;
        }

        var split = new WorkSplit(minutes[task], terms);
        var fits = fitter.TryFit(task, split, ready, Math.Min(together, terms.StartBy), ref fit);
        var late = !fits && mayRunOver && terms.StartBy < together;
        if (late)
        {
            fits = fitter.TryFit(task, split, ready, together, ref fit);
        }

        if (mayRunOver && !terms.IsSplittable && together == CompiledCalendar.Never && !(fits && fit.End <= ready + WeekMinutes))
        {
            fits = TryRunOver(task, split, ready, fits ? fit.End : CompiledCalendar.Never, into);
        }

        if (!fits)
        {
            into.Unplaced = task;
            return false;
        }

        into.Overruns += late && fit.Start >= terms.StartBy ? 1 : 0;
        Take(task, terms, into);
        return true;
    }

    /// <summary>
    /// Lets a task begin where its planned time would fit, if it is then done more than a week before it could be done
    /// whole. When neither is possible, since the sessions long enough are over by then, it is done piece by piece.
    /// </summary>
    private bool TryRunOver(int task, WorkSplit whole, int ready, int wholeEnd, Schedule into)
    {
        if (wholeEnd < CompiledCalendar.Never && problem.Minutes[task] >= whole.Minutes)
        {
            return true;
        }

        (fit, spare) = (spare, fit);
        var over = whole with { IsSplittable = true, LeastPiece = problem.Minutes[task], WholeBelow = problem.Minutes[task] };
        if (fitter.TryFit(task, over, ready, CompiledCalendar.Never, ref fit) && fit.End + WeekMinutes < wholeEnd)
        {
            into.Overruns++;
            return true;
        }

        if (wholeEnd < CompiledCalendar.Never)
        {
            (fit, spare) = (spare, fit);
            return true;
        }

        into.Overruns++;
        return fitter.TryFit(task, over with { LeastPiece = 1, WholeBelow = 1 }, ready, CompiledCalendar.Never, ref fit);
    }

    private void Take(int task, in TaskTerms terms, Schedule into)
    {
        into.Set(task, fit.Start, fit.End);
        var pieces = fit.Pieces;
        if (fit.Team.Length == 1)
        {
            TakeAlone(task, terms, fit.Team[0], pieces, into);
        }
        else
        {
            TakeTogether(task, terms, pieces, into);
        }

        lastPiece[task] = into.Pieces.Length - 1;
        if ((terms.Needs & TaskNeeds.Keeps) != 0)
        {
            floor.TakeHolds(task, terms, fit.Start, fit.End);
        }
    }

    private void TakeAlone(int task, in TaskTerms terms, int worker, ReadOnlySpan<FitPiece> pieces, Schedule into)
    {
        var days = calendars[worker].Day;
        foreach (ref readonly var piece in pieces)
        {
            into.Add(new(task, worker, piece.Session, days[piece.Session], piece.From, piece.To));
            if ((terms.Needs & TaskNeeds.WhileWorked) != 0)
            {
                floor.TakeWhileWorked(terms.Needs, terms.Place, piece.From, piece.To);
            }
        }

        // From the last to the first: a piece is then still in the gap in which it was found.
        for (var index = pieces.Length - 1; index >= 0; index--)
        {
            floor.Take(worker, terms, pieces[index]);
        }
    }

    private void TakeTogether(int task, in TaskTerms terms, ReadOnlySpan<FitPiece> pieces, Schedule into)
    {
        foreach (ref readonly var piece in pieces)
        {
            floor.TakeWhileWorked(terms.Needs, terms.Place, piece.From, piece.To);
            foreach (var worker in fit.Team)
            {
                var calendar = calendars[worker];
                var session = worker == fit.Team[0] ? piece.Session : calendar.SessionEndingAfter(piece.From);
                floor.Take(worker, terms, session, piece.From, piece.To);
                into.Add(new(task, worker, session, calendars[fit.Team[0]].Day[piece.Session], piece.From, piece.To));
            }
        }
    }

    /// <summary>The end of the session in which a task that is placed ends; of a crew's sessions the one that ends first.</summary>
    public int SessionEnd(int task, Schedule into)
    {
        var end = CompiledCalendar.Never;
        var pieces = into.Pieces;
        for (var last = lastPiece[task]; last >= 0 && pieces[last].Task == task && pieces[last].To == into.End[task]; last--)
        {
            end = Math.Min(end, calendars[pieces[last].Worker].To[pieces[last].Session]);
        }

        return end;
    }
}
