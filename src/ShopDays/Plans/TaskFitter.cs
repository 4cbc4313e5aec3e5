namespace ShopDays.Plans;

/// <summary>How a task is broken up.</summary>
/// <param name="Minutes">Its work.</param>
/// <param name="IsSplittable">Whether it may go on after a break.</param>
/// <param name="LeastPiece">The least stretch worth beginning, unless less is left.</param>
internal readonly record struct WorkSplit(int Minutes, bool IsSplittable, int LeastPiece);

/// <summary>Finds where a task fits into a shop as it stands.</summary>
internal sealed class TaskFitter(ScheduleProblem problem, ShopFloor floor)
{
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
        var found = false;
        foreach (var team in problem.TeamsOf(problem.Tasks[task].Crew))
        {
            if (!TryFit(team, task, split, ready, startBy, spare))
            {
                continue;
            }

            if (found && spare.End >= best.End)
            {
                continue;
            }

            (spare, best) = (best, spare);
            found = true;
        }

        return found;
    }

    private bool TryFit(int[] team, int task, WorkSplit split, int ready, int startBy, TaskFit fit)
    {
        for (var minute = ready; minute < startBy && TryWork(team, problem.Tasks[task], split, minute, fit);)
        {
            if (fit.Start >= startBy)
            {
                return false;
            }

            minute = floor.CanHoldFrom(task, fit.Start, fit.End);
            if (minute == fit.Start)
            {
                return true;
            }
        }

        return false;
    }

    private bool TryWork(int[] team, CompiledTask task, WorkSplit split, int minute, TaskFit fit)
    {
        fit.Clear(team, minute);
        if (team.Length == 0)
        {
            fit.GoOnBy(split.Minutes);
            return true;
        }

        var heavyDay = -1;
        var heavyDone = 0;
        var left = split.Minutes;
        while (left > 0)
        {
            if (!floor.TryNext(team, task, minute, out var start, out var end, out var session))
            {
                return false;
            }

            var day = problem.Workers[team[0]].Day[session];
            var room = end - start;
            if (task.IsHeavy)
            {
                if (day != heavyDay)
                {
                    (heavyDay, heavyDone) = (day, 0);
                }

                room = Math.Min(room, floor.HeavyLeft(team, day) - heavyDone);
            }

            var least = split.IsSplittable ? Math.Min(left, split.LeastPiece) : left;
            if (room < least)
            {
                minute = end;
                continue;
            }

            var work = Math.Min(room, left);
            fit.Add(new(start, start + work, session, day));
            left -= work;
            minute = start + work;
            heavyDone += work;
        }

        return true;
    }
}
