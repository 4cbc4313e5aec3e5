namespace ShopDays.Plans;

/// <summary>The shop while a schedule is made: whose time is free, what is in use, how much heavy work each day has had.</summary>
internal sealed class ShopFloor
{
    private readonly ScheduleProblem problem;
    private readonly FreeTime[] free;
    private readonly Usage[] usage;
    private readonly ClearAir air = new();
    private readonly int[][] heavy;
    private readonly int[] taken;

    /// <summary>An empty shop.</summary>
    public ShopFloor(ScheduleProblem problem)
    {
        this.problem = problem;
        free = [.. problem.Workers.Select(calendar => new FreeTime(calendar, problem.Changeover))];
        usage = [.. problem.Capacities.Select(_ => new Usage())];
        heavy = [.. problem.Workers.Select(_ => new int[problem.Days])];
        taken = new int[problem.Capacities.Length];
        Reset();
    }

    /// <summary>Turns from one set-up to another, all workers together.</summary>
    public int Changeovers
    {
        get
        {
            var sum = 0;
            foreach (var worker in free)
            {
                sum += worker.Changeovers;
            }

            return sum;
        }
    }

    /// <summary>Empties the shop.</summary>
    public void Reset()
    {
        foreach (var worker in free)
        {
            worker.Reset();
        }

        foreach (var resource in usage)
        {
            resource.Reset();
        }

        air.Reset();

        foreach (var days in heavy)
        {
            Array.Clear(days);
        }

        problem.Standing.Take(problem.Capacities.AsSpan(), usage, air, heavy);
    }

    /// <summary>Becomes like another shop for the same problem.</summary>
    public void CopyFrom(ShopFloor other)
    {
        for (var worker = 0; worker < free.Length; worker++)
        {
            free[worker].CopyFrom(other.free[worker]);
            other.heavy[worker].CopyTo(heavy[worker], 0);
        }

        for (var resource = 0; resource < usage.Length; resource++)
        {
            usage[resource].CopyFrom(other.usage[resource]);
        }

        air.CopyFrom(other.air);
    }

    /// <summary>
    /// The first stretch at or after a minute in which a whole team is there and free, with quiet hours left out for
    /// noisy work, wet coats kept clear of dust, and with a place to work at. The session is that of the team's first worker.
    /// </summary>
    public bool TryNext(int[] team, CompiledTask task, int minute, out int start, out int end, out int session)
    {
        start = minute;
        while (TryMeet(team, task.SetupKey, start, out start, out end, out session))
        {
            if (task.IsNoisy && !KeepNoiseAllowed(team, ref start, ref end))
            {
                continue;
            }

            if (task.IsDusty && !air.KeepOffWetCoats(ref start, ref end))
            {
                continue;
            }

            if (task.Place >= 0 && !KeepPlaceFree(task.Place, ref start, ref end))
            {
                continue;
            }

            return true;
        }

        return false;
    }

    /// <summary>Heavy work that a whole team may still do on a day.</summary>
    public int HeavyLeft(int[] team, int day)
    {
        var left = problem.HeavyPerDay;
        foreach (var worker in team)
        {
            left = Math.Min(left, problem.HeavyPerDay - heavy[worker][day]);
        }

        return left;
    }

    /// <summary>Takes a worker's time.</summary>
    public void Take(int worker, CompiledTask task, int day, int start, int end)
    {
        free[worker].Take(start, end, task.SetupKey);
        if (task.IsHeavy)
        {
            heavy[worker][day] += end - start;
        }
    }

    /// <summary>Takes what a task needs only while it is worked on: a place, and air that may be dusty.</summary>
    public void TakeWhileWorked(CompiledTask task, int start, int end)
    {
        if (task.Place >= 0)
        {
            usage[task.Place].Add(start, end, 1);
        }

        if (task.IsDusty)
        {
            air.Dust(start, end);
        }
    }

    /// <summary>
    /// When a task that would go from one minute to another could begin at the earliest for the sake of what it holds,
    /// for a coat clear air too: the same minute when all of that is free, otherwise a later one.
    /// </summary>
    public int CanHoldFrom(int task, int start, int end)
    {
        var (before, wet) = (problem.Tasks[task].WetBefore, problem.Tasks[task].WetAfter);
        if (before + wet > 0 && air.CoatFrom(start - before, end + wet) + before is var clear && clear > start)
        {
            return clear;
        }

        Array.Clear(taken);
        foreach (var hold in problem.Holds(task))
        {
            // What is kept for no time at all is not needed.
            var (from, to) = (start - hold.MinutesBefore, end + hold.MinutesAfter);
            var missing = from < to ? hold.Count : 0;
            for (var resource = hold.First; resource <= hold.Last && missing > 0; resource++)
            {
                var number = Math.Clamp(Spare(resource, from, to), 0, missing);
                taken[resource] += number;
                missing -= number;
            }

            if (missing > 0)
            {
                return Later(hold, from, missing) + hold.MinutesBefore;
            }
        }

        return start;
    }

    /// <summary>Takes what a task holds; <see cref="CanHoldFrom"/> must have found it free.</summary>
    public void TakeHolds(int task, int start, int end)
    {
        var (before, wet) = (problem.Tasks[task].WetBefore, problem.Tasks[task].WetAfter);
        if (before + wet > 0)
        {
            air.Coat(start - before, end + wet);
        }

        Array.Clear(taken);
        foreach (var hold in problem.Holds(task))
        {
            var (from, to) = (start - hold.MinutesBefore, end + hold.MinutesAfter);
            var missing = from < to ? hold.Count : 0;
            for (var resource = hold.First; missing > 0; resource++)
            {
                var number = Math.Clamp(Spare(resource, from, to), 0, missing);
                usage[resource].Add(from, to, number);
                missing -= number;
            }
        }
    }

    private int Spare(int resource, int start, int end) =>
        problem.Capacities[resource] - usage[resource].Most(start, end) - taken[resource];

    private int Later(Hold hold, int start, int missing)
    {
        if (hold.First == hold.Last)
        {
            var limit = problem.Capacities[hold.First] - taken[hold.First] - missing;
            return usage[hold.First].FirstWithin(limit, usage[hold.First].FirstAbove(limit, start));
        }

        var change = CompiledCalendar.Never;
        for (var resource = hold.First; resource <= hold.Last; resource++)
        {
            change = Math.Min(change, usage[resource].NextChange(start));
        }

        return change;
    }

    /// <summary>The first stretch in which every member of a team is free.</summary>
    private bool TryMeet(int[] team, int key, int minute, out int start, out int end, out int session)
    {
        if (!free[team[0]].TryNext(minute, key, out start, out end, out session))
        {
            return false;
        }

        for (var member = 1; member < team.Length; member++)
        {
            if (!free[team[member]].TryNext(start, key, out var others, out var othersEnd, out _))
            {
                return false;
            }

            if (others > start)
            {
                // Somebody comes later: begin again with the first, from there.
                if (!free[team[0]].TryNext(others, key, out start, out end, out session))
                {
                    return false;
                }

                member = 0;
                continue;
            }

            end = Math.Min(end, othersEnd);
        }

        return true;
    }

    private bool KeepNoiseAllowed(int[] team, ref int start, ref int end)
    {
        foreach (var worker in team)
        {
            var calendar = problem.Workers[worker];
            var quiet = calendar.NoiseEndsAt(start);
            if (quiet == start)
            {
                start = calendar.QuietEndsAt(start);
                return false;
            }

            end = Math.Min(end, quiet);
        }

        return true;
    }

    private bool KeepPlaceFree(int place, ref int start, ref int end)
    {
        var limit = problem.Capacities[place] - 1;
        var full = usage[place].FirstAbove(limit, start);
        if (full == start)
        {
            start = usage[place].FirstWithin(limit, start);
            return false;
        }

        end = Math.Min(end, full);
        return true;
    }
}
