namespace ShopDays.Plans.Scheduling;

/// <summary>The shop while a schedule is made: whose time is free, what is in use, how much heavy work each day has had.</summary>
internal sealed class ShopFloor
{
    /// <summary>About how long work goes on where nobody has hours.</summary>
    private const int UsualMinutes = 1 << 16;

    private readonly ScheduleProblem problem;
    private readonly FreeTime[] free;
    private readonly HeavyRoom[] heavy;
    private readonly ResourceUse[] usage;
    private readonly ClearAir air = new();
    private readonly int[] taken;
    private readonly List<(int Resource, int From, int To, int Number)> uses = [];
    private readonly int[] workedBefore;
    private (int Dust, int Wet) airBefore;
    private bool remembers;

    /// <summary>A shop as it stands before the first task.</summary>
    public ShopFloor(ScheduleProblem problem)
    {
        this.problem = problem;
        free = [.. problem.Workers.Select(calendar => new FreeTime(calendar, problem.Changeover))];
        heavy = [.. problem.Workers.Select((calendar, worker) => new HeavyRoom(calendar, problem.HeavyPerDay.Of(worker)))];
        var lastEnd = problem.Workers.Select(calendar => calendar.To.IsEmpty ? 0 : calendar.To[^1]).DefaultIfEmpty(UsualMinutes).Max();
        usage = [.. problem.Capacities.Select((_, resource) => new ResourceUse(lastEnd, problem.Workers.Length == 1 && !problem.Shop.IsOneOfARow(resource)))];
        workedBefore = new int[usage.Length];
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

    /// <summary>The free time of a worker.</summary>
    public FreeTime Free(int worker) => free[worker];

    /// <summary>The heavy work that a worker may still do.</summary>
    public HeavyRoom Heavy(int worker) => heavy[worker];

    /// <summary>Empties the shop.</summary>
    public void Reset()
    {
        Forget();
        for (var worker = 0; worker < free.Length; worker++)
        {
            free[worker].Reset();
            heavy[worker].Reset(worker < problem.Standing.HeavyDone.Length ? problem.Standing.HeavyDone[worker] : 0);
        }

        foreach (var resource in usage)
        {
            resource.Reset();
        }

        air.Reset();
        problem.Standing.Take(problem.Capacities.AsSpan(), usage, air);
    }

    /// <summary>From now on remembers what is taken.</summary>
    public void Remember() => Remember(true);

    /// <summary>Stops remembering; what is taken stays taken.</summary>
    public void Forget()
    {
        if (remembers)
        {
            Remember(false);
        }
    }

    /// <summary>Gives back all that was taken since it began to remember, and goes on remembering.</summary>
    public void GoBack()
    {
        for (var worker = 0; worker < free.Length; worker++)
        {
            free[worker].GoBack();
            heavy[worker].GoBack();
        }

        foreach (var (resource, from, to, number) in uses)
        {
            usage[resource].Add(from, to, -number);
        }

        for (var resource = 0; resource < usage.Length; resource++)
        {
            usage[resource].Worked = workedBefore[resource];
        }

        uses.Clear();
        air.GoBackTo(airBefore);
    }

    /// <summary>Leaves quiet hours out of a stretch for noisy work, keeps dust off wet coats, and sees to a place to work at.</summary>
    /// <param name="worker">Whose stretch.</param>
    /// <param name="task">The task.</param>
    /// <param name="session">The session.</param>
    /// <param name="start">Its first minute; when nothing is left of it, a later one from which to look again.</param>
    /// <param name="end">Its end.</param>
    /// <returns>Whether anything is left.</returns>
    public bool Cut(int worker, in TaskTerms task, int session, ref int start, ref int end) =>
        ((task.Needs & TaskNeeds.Quiet) == 0 || KeepNoiseAllowed(worker, session, ref start, ref end))
        && ((task.Needs & TaskNeeds.Dust) == 0 || air.KeepOffWetCoats(ref start, ref end))
        && ((task.Needs & TaskNeeds.Place) == 0 || KeepPlaceFree(task.Place, ref start, ref end));

    /// <summary>Takes a worker's time, where it was found.</summary>
    public void Take(int worker, in TaskTerms task, in FitPiece piece)
    {
        free[worker].Take(piece.From, piece.To, task.SetupKey, piece.Session, piece.Gap, piece.Previous);
        if ((task.Needs & TaskNeeds.Heavy) != 0)
        {
            heavy[worker].Take(piece.Session, piece.To - piece.From);
        }
    }

    /// <summary>Takes a worker's time.</summary>
    public void Take(int worker, in TaskTerms task, int session, int start, int end)
    {
        free[worker].Take(start, end, task.SetupKey);
        if ((task.Needs & TaskNeeds.Heavy) != 0)
        {
            heavy[worker].Take(session, end - start);
        }
    }

    /// <summary>Takes what a task needs only while it is worked on: a place, and air that may be dusty.</summary>
    public void TakeWhileWorked(in TaskTerms task, int start, int end)
    {
        if ((task.Needs & TaskNeeds.Place) != 0)
        {
            var place = usage[task.Place];
            if (place.HasLoneWorker)
            {
                place.Work(start, end);
            }
            else
            {
                Use(task.Place, start, end, 1);
            }
        }

        if ((task.Needs & TaskNeeds.Dust) != 0)
        {
            air.Dust(start, end);
        }
    }

    /// <summary>
    /// When a task that would go from one minute to another could begin at the earliest for the sake of what it holds,
    /// for a coat clear air too: the same minute when all of that is free, otherwise a later one.
    /// </summary>
    public int CanHoldFrom(int task, in TaskTerms terms, int start, int end)
    {
        if ((terms.Needs & TaskNeeds.ClearAir) != 0 && air.CoatFrom(start - terms.WetBefore, end + terms.WetAfter) + terms.WetBefore is var clear && clear > start)
        {
            return clear;
        }

        var later = start;
        foreach (ref readonly var hold in problem.Holds(task))
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
                later = Math.Min(CompiledCalendar.Never, Later(hold, from, to, missing) + hold.MinutesBefore);
                break;
            }
        }

        Array.Clear(taken);
        return later;
    }

    /// <summary>Takes what a task holds; <see cref="CanHoldFrom"/> must have found it free.</summary>
    public void TakeHolds(int task, in TaskTerms terms, int start, int end)
    {
        if ((terms.Needs & TaskNeeds.ClearAir) != 0)
        {
            air.Coat(start - terms.WetBefore, end + terms.WetAfter);
        }

        foreach (ref readonly var hold in problem.Holds(task))
        {
            var (from, to) = (start - hold.MinutesBefore, end + hold.MinutesAfter);
            var missing = from < to ? hold.Count : 0;
            for (var resource = hold.First; missing > 0; resource++)
            {
                var number = Math.Clamp(Spare(resource, from, to), 0, missing);
                Use(resource, from, to, number);
                missing -= number;
            }
        }
    }

    private void Remember(bool yes)
    {
        remembers = yes;
        airBefore = air.Mark;
        for (var resource = 0; resource < usage.Length; resource++)
        {
            workedBefore[resource] = usage[resource].Worked;
        }

        uses.Clear();
        for (var worker = 0; worker < free.Length; worker++)
        {
            free[worker].Remembers = heavy[worker].Remembers = yes;
            free[worker].Forget();
            heavy[worker].Forget();
        }
    }

    private void Use(int resource, int from, int to, int number)
    {
        usage[resource].Add(from, to, number);
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

    private bool KeepNoiseAllowed(int worker, int session, ref int start, ref int end)
    {
        var calendar = problem.Workers[worker];
        var next = calendar.QuietAfter(session, start);
        var quiet = calendar.NoiseEndsAt(next, start);
        if (quiet == start)
        {
            start = calendar.QuietEnd(next);
            return false;
        }

        end = Math.Min(end, quiet);
        return true;
    }

    private bool KeepPlaceFree(int place, ref int start, ref int end)
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
}
