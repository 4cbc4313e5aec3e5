namespace ShopDays.Plans.Scheduling;

/// <summary>The bench, the clamps, the floor while a schedule is made: what is in use when, by work and by what keeps it.</summary>
internal sealed class ThingsInUse
{
    /// <summary>About how long work goes on where nobody has hours.</summary>
    private const int UsualMinutes = 1 << 16;

    private readonly ScheduleProblem problem;
    private readonly SessionBars? bars;
    private readonly ResourceUse[] usage;
    private readonly bool[] isPlace;
    private readonly int[] taken;
    private readonly List<(int Resource, int From, int To, int Number)> uses = [];
    private readonly int[] workedBefore;
    private bool remembers;

    /// <summary>Nothing in use.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="bars">Of a lone worker, what may be barred in each session.</param>
    public ThingsInUse(ScheduleProblem problem, SessionBars? bars)
    {
        (this.problem, this.bars) = (problem, bars);
        var lastEnd = problem.Workers.Select(calendar => calendar.To.IsEmpty ? 0 : calendar.To[^1]).DefaultIfEmpty(UsualMinutes).Max();
        usage = [.. problem.Capacities.Select((_, resource) => new ResourceUse(lastEnd, problem.Workers.Length == 1 && !problem.Shop.IsOneOfARow(resource)))];
        isPlace = [.. problem.Capacities.Select((_, resource) => problem.Tasks.Any(task => task.Place == resource))];
        workedBefore = new int[usage.Length];
        taken = new int[usage.Length];
    }

    /// <summary>Only what is kept before the first task is in use.</summary>
    public void Reset()
    {
        foreach (var resource in usage)
        {
            resource.Reset();
        }

        problem.Standing.Take(problem.Capacities.AsSpan(), usage, bars);
    }

    /// <summary>Whether what is taken from now on is remembered; what was taken stays taken.</summary>
    public void Remember(bool yes)
    {
        remembers = yes;
        for (var resource = 0; resource < usage.Length; resource++)
        {
            workedBefore[resource] = usage[resource].Worked;
        }

        uses.Clear();
    }

    /// <summary>Gives back all that was taken since it began to remember.</summary>
    public void GoBack()
    {
        foreach (var (resource, from, to, number) in uses)
        {
            usage[resource].Add(from, to, -number);
        }

        for (var resource = 0; resource < usage.Length; resource++)
        {
            usage[resource].Worked = workedBefore[resource];
        }

        uses.Clear();
    }

    /// <summary>Somebody works at a place from a minute to another.</summary>
    public void WorkAt(int place, int from, int to)
    {
        var use = usage[place];
        if (use.HasLoneWorker)
        {
            use.Work(from, to);
        }
        else
        {
            Use(place, from, to, 1);
        }
    }

    /// <summary>Cuts a stretch of work off where its place is kept.</summary>
    /// <returns>Whether any of it is left; otherwise the start is moved to when the place is free again.</returns>
    public bool KeepPlaceFree(int place, ref int start, ref int end)
    {
        var limit = problem.Capacities[place] - 1;
        var full = usage[place].FirstKeptAbove(limit, start, end);
        if (full == start)
        {
            start = usage[place].FirstKeptWithin(limit, start);
            return false;
        }

        end = Math.Min(end, full);
        return true;
    }

    /// <summary>When work that would go from one minute to another could begin at the earliest for the sake of what it keeps: the same minute when all of that is free, otherwise a later one.</summary>
    public int CanKeepFrom(ReadOnlySpan<Hold> holds, int start, int end)
    {
        var later = start;
        foreach (ref readonly var hold in holds)
        {
            // What is kept for no time at all is not needed.
            var (from, to) = (start - hold.MinutesBefore, problem.Nights.EndOf(end, hold.MinutesAfter, hold.Sets));
            var missing = from < to ? hold.Count : 0;
            for (var resource = hold.First; resource <= hold.Last && missing > 0; resource++)
            {
                var number = Math.Clamp(Spare(resource, from, to), 0, missing);
                taken[resource] += number;
                missing -= number;
            }

            if (missing > 0)
            {
                later = Math.Min(CompiledCalendar.Never, Later(hold, from, to, missing) + hold.MinutesBefore);
                break;
            }
        }

        Array.Clear(taken);
        return later;
    }

    /// <summary>Takes what work keeps; <see cref="CanKeepFrom"/> must have found it free.</summary>
    public void Keep(ReadOnlySpan<Hold> holds, int start, int end)
    {
        foreach (ref readonly var hold in holds)
        {
            var (from, to) = (start - hold.MinutesBefore, problem.Nights.EndOf(end, hold.MinutesAfter, hold.Sets));
            var missing = from < to ? hold.Count : 0;
            for (var resource = hold.First; missing > 0; resource++)
            {
                var number = Math.Clamp(Spare(resource, from, to), 0, missing);
                Use(resource, from, to, number);
                missing -= number;
            }
        }
    }

    private void Use(int resource, int from, int to, int number)
    {
        usage[resource].Add(from, to, number);
        if (isPlace[resource])
        {
            bars?.Bar(TaskNeeds.Place, from, to);
        }

        if (remembers)
        {
            uses.Add((resource, from, to, number));
        }
    }

    private int Spare(int resource, int from, int to) =>
        problem.Capacities[resource] - usage[resource].Most(from, to) - taken[resource];

    /// <summary>The next minute from which more of what is missing could be free.</summary>
    private int Later(in Hold hold, int from, int to, int missing)
    {
        if (hold.First == hold.Last)
        {
            var use = usage[hold.First];
            var limit = problem.Capacities[hold.First] - taken[hold.First] - missing;
            return use.FirstWithin(limit, use.FirstAbove(limit, from, to));
        }

        // Of a row nothing is gained before something that is kept in it comes free.
        var free = CompiledCalendar.Never;
        for (var resource = hold.First; resource <= hold.Last; resource++)
        {
            free = Math.Min(free, usage[resource].NextFall(from));
        }

        return free;
    }
}
