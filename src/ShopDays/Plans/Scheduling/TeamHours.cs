namespace ShopDays.Plans.Scheduling;

/// <summary>Finds where a task of two or more fits in: stretches in which all of a team are there and free.</summary>
internal sealed class TeamHours(ScheduleProblem problem, ShopFloor floor)
{
    /// <summary>
    /// The first stretch at or after a minute in which a whole team is there and free for some time, with quiet hours left
    /// out for noisy work, wet coats kept clear of dust, and with a place to work at. The session is that of the team's first worker.
    /// </summary>
    public bool TryNext(int[] team, in TaskTerms task, int minute, int least, out int start, out int end, out int session)
    {
        start = minute;
        while (TryMeet(team, task, start, least, out start, out end, out session))
        {
            if (IsLeft(team, task, ref start, ref end))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Places a task's work in such stretches.</summary>
    /// <returns>Whether it is done before the calendars end, and before a minute.</returns>
    public bool TryWork(int[] team, in TaskTerms task, WorkSplit split, int minute, int endBefore, TaskFit fit)
    {
        var isHeavy = (task.Needs & TaskNeeds.Heavy) != 0;
        var doneBy = new HeavyDays();
        var left = split.Minutes;
        while (left > 0)
        {
            var least = split.LeastOf(left);
            if (!TryNext(team, task, minute, least, out var start, out var end, out var session) || start + left >= endBefore)
            {
                return false;
            }

            var room = end - start;
            if (isHeavy)
            {
                doneBy.GoOnTo(problem.Workers[team[0]].Day[session]);
                room = Math.Min(room, HeavyLeft(team, start, doneBy));
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
            fit.Add(new(start, minute, session));
        }

        return true;
    }

    private bool IsLeft(int[] team, in TaskTerms task, ref int start, ref int end)
    {
        if ((task.Needs & TaskNeeds.Cuts) == 0)
        {
            return true;
        }

        foreach (var worker in team)
        {
            if (!floor.Cut(worker, task, problem.Workers[worker].SessionEndingAfter(start), ref start, ref end))
            {
                return false;
            }
        }

        return true;
    }

    private int HeavyLeft(int[] team, int minute, HeavyDays doneBy)
    {
        var left = CompiledCalendar.Never;
        foreach (var worker in team)
        {
            left = Math.Min(left, floor.Heavy(worker).LeftBeside(problem.Workers[worker].SessionEndingAfter(minute), doneBy.Today, doneBy.DayBefore));
        }

        return left;
    }

    /// <summary>The first stretch in which every member of a team is free.</summary>
    private bool TryMeet(int[] team, in TaskTerms task, int minute, int least, out int start, out int end, out int session)
    {
        (start, end, session) = (minute, 0, 0);
        for (var member = 0; member < team.Length; member++)
        {
            var worker = team[member];
            if (!floor.Free(worker).TryNext(problem.Workers[worker].SessionEndingAfter(start), start, task.SetupKey, least, also: null, out var found))
            {
                return false;
            }

            if (member == 0)
            {
                (start, end, session) = (found.From, found.To, found.Session);
            }
            else if (found.From > start)
            {
                // Somebody comes later: begin again with the first, from there.
                (start, member) = (found.From, -1);
            }
            else
            {
                end = Math.Min(end, found.To);
            }
        }

        return true;
    }
}
