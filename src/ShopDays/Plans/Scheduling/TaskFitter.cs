namespace ShopDays.Plans.Scheduling;

/// <summary>How a task is broken up.</summary>
/// <param name="Minutes">Its work.</param>
/// <param name="IsSplittable">Whether it may go on after a break.</param>
/// <param name="LeastPiece">The least stretch worth beginning.</param>
/// <param name="WholeBelow">When less than this is left, it is not broken off any more; no less than the least stretch.</param>
internal readonly record struct WorkSplit(int Minutes, bool IsSplittable, int LeastPiece, int WholeBelow)
{
    /// <summary>How a task is broken up.</summary>
    public WorkSplit(int minutes, in TaskTerms terms)
        : this(minutes, terms.IsSplittable, terms.LeastPiece, terms.WholeBelow)
    {
    }

    /// <summary>The least stretch worth beginning when some is left to do.</summary>
    public int LeastOf(int left) => IsSplittable && left >= WholeBelow ? LeastPiece : left;

    /// <summary>How much of a stretch is worked in: as much as it has room for, and no more than leaves the rest worth beginning.</summary>
    /// <param name="room">The stretch, not shorter than the least of what is left.</param>
    /// <param name="left">What is left to do.</param>
    public int WorkIn(int room, int left) => room >= left ? left : Math.Min(room, left - (WholeBelow - LeastPiece));
}

/// <summary>Finds where a task fits into a shop as it stands.</summary>
internal sealed class TaskFitter(ScheduleProblem problem, ShopFloor floor)
{
    private readonly TeamHours together = new(problem, floor);
    private readonly CompiledCalendar[] calendars = [.. problem.Workers];
    private readonly TaskTerms[] tasks = problem.Terms;
    private TaskFit spare = new();

    /// <summary>The fit that ends first, among all the teams that can do a task; the first of these where several end together.</summary>
    /// <param name="task">The task.</param>
    /// <param name="split">Its work.</param>
    /// <param name="ready">The first minute in which it may begin.</param>
    /// <param name="startBy">The minute before which it must begin.</param>
    /// <param name="best">Receives the fit; may be exchanged for another buffer.</param>
    /// <returns>Whether there is one before the calendars end.</returns>
    public bool TryFit(int task, WorkSplit split, int ready, int startBy, ref TaskFit best)
    {
        ref readonly var terms = ref tasks[task];
        var teams = problem.TeamsOf(terms.Crew);
        if (teams.Length == 1)
        {
            return TryFit(teams[0], task, terms, split, ready, startBy, CompiledCalendar.Never, best);
        }

        var found = false;
        foreach (var team in teams)
        {
            if (TryFit(team, task, terms, split, ready, startBy, found ? best.End : CompiledCalendar.Never, spare))
            {
                (spare, best) = (best, spare);
                found = true;
            }
        }

        return found;
    }

    private bool TryFit(int[] team, int task, in TaskTerms terms, WorkSplit split, int ready, int startBy, int endBefore, TaskFit fit)
    {
        var minute = ready;
        while (minute < startBy)
        {
            fit.Clear(team, minute);
            switch (team.Length)
            {
                case 0:
                    fit.GoOnBy(split.Minutes);
                    break;
                case 1 when !TryAlone(team[0], terms, split, minute, endBefore, fit):
                case > 1 when !together.TryWork(team, terms, split, minute, endBefore, fit):
                    return false;
                default:
                    break;
            }

            if (fit.Start >= startBy)
            {
                return false;
            }

            if ((terms.Needs & TaskNeeds.Keeps) == 0)
            {
                return true;
            }

            minute = floor.CanHoldFrom(task, terms, fit.Start, fit.End);
            if (minute == fit.Start)
            {
                return true;
            }
        }

        return false;
    }

    private bool TryAlone(int worker, in TaskTerms task, WorkSplit split, int minute, int endBefore, TaskFit fit)
    {
        var free = floor.Free(worker);
        var session = calendars[worker].SessionEndingAfter(minute);
        if ((task.Needs & TaskNeeds.Cuts) != 0)
        {
            return TryAloneWithCuts(worker, task, split, session, minute, endBefore, fit);
        }

        var left = split.Minutes;
        while (left > 0)
        {
            if (!free.TryNext(session, minute, task.SetupKey, split.LeastOf(left), also: null, out var found)
                || found.From + left >= endBefore)
            {
                return false;
            }

            var work = split.WorkIn(found.To - found.From, left);
            left -= work;
            (session, minute) = (found.Session, found.From + work);
            fit.Add(new(found.From, minute, session, found.Gap, found.Previous));
        }

        return true;
    }

    private bool TryAloneWithCuts(int worker, in TaskTerms task, WorkSplit split, int session, int minute, int endBefore, TaskFit fit)
    {
        var free = floor.Free(worker);
        var days = calendars[worker].Day;
        var heavy = (task.Needs & TaskNeeds.Heavy) != 0 ? floor.Heavy(worker) : null;
        var doneBy = new HeavyDays();
        var left = split.Minutes;
        while (left > 0)
        {
            var least = split.LeastOf(left);
            if (!free.TryNext(session, minute, task.SetupKey, least, heavy?.Room, out var found)
                || found.From + left >= endBefore)
            {
                return false;
            }

            session = found.Session;
            var (start, end) = (found.From, found.To);
            if (!floor.Cut(worker, task, session, ref start, ref end))
            {
                minute = start;
                continue;
            }

            var room = end - start;
            if (heavy is not null)
            {
                doneBy.GoOnTo(days[session]);
                room = Math.Min(room, heavy.LeftBeside(session, doneBy.Today, doneBy.DayBefore));
            }

            if (room < least)
            {
                minute = end;
                continue;
            }

            var work = split.WorkIn(room, left);
            left -= work;
            doneBy.Add(work);
            minute = start + work;
            fit.Add(new(start, minute, session, found.Gap, found.Previous));
        }

        return true;
    }
}
