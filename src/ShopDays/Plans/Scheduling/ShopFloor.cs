namespace ShopDays.Plans.Scheduling;

/// <summary>The shop while a schedule is made: whose time is free, what is in use, how much heavy work each day has had.</summary>
internal sealed class ShopFloor
{
    private readonly ScheduleProblem problem;
    private readonly FreeTime[] free;
    private readonly HeavyRoom[] heavy;
    private readonly ClearAir air = new();
    private readonly ThingsInUse things;
    private readonly SessionBars? bars;
    private (int Dust, int Wet) airBefore;
    private bool remembers;

    /// <summary>A shop as it stands before the first task.</summary>
    public ShopFloor(ScheduleProblem problem)
    {
        this.problem = problem;
        free = [.. problem.Workers.Select(calendar => new FreeTime(calendar, problem.Changeover))];
        heavy = [.. problem.Workers.Select((calendar, worker) => new HeavyRoom(calendar, problem.HeavyPerDay.Of(worker), problem.HeavyPerDay.OfTwoDays(worker)))];
        bars = problem.Workers.Length == 1 ? new(problem.Workers[0]) : null;
        things = new(problem, bars);
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

    /// <summary>What may be barred in each session of a lone worker.</summary>
    public TaskNeeds[] Bars => bars?.Sessions ?? [];

    /// <summary>Empties the shop.</summary>
    public void Reset()
    {
        Forget();
        for (var worker = 0; worker < free.Length; worker++)
        {
            free[worker].Reset();
            heavy[worker].Reset(problem.Standing.HeavyDoneBy(worker), problem.Standing.HeavyDoneBeforeBy(worker));
        }

        air.Reset();
        bars?.Reset();
        things.Reset();
        air.Coat(problem.Standing.Begin, problem.Standing.WetUntil);
        bars?.Bar(TaskNeeds.Dust, problem.Standing.Begin, problem.Standing.WetUntil);
    }

    /// <summary>Says that nobody works after a minute, so that the shop is emptied sooner.</summary>
    public void NobodyAfter(int minute)
    {
        foreach (var worker in free)
        {
            worker.NothingAfter(minute);
        }
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

        things.GoBack();
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
        && ((task.Needs & TaskNeeds.Place) == 0 || things.KeepPlaceFree(task.Place, ref start, ref end));

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
    public void TakeWhileWorked(TaskNeeds needs, int at, int start, int end)
    {
        if ((needs & TaskNeeds.Place) != 0)
        {
            things.WorkAt(at, start, end);
        }

        if ((needs & TaskNeeds.Dust) != 0)
        {
            air.Dust(start, end);
        }
    }

    /// <summary>
    /// When a task that would go from one minute to another could begin at the earliest for the sake of what it holds,
    /// for a coat clear air too, and for what sets after it warmth: the same minute when all of that is free, otherwise a later one.
    /// </summary>
    public int CanHoldFrom(int task, in TaskTerms terms, int start, int end)
    {
        if ((terms.Needs & TaskNeeds.Warmth) != 0 && problem.Nights.AllowedFrom(terms.TooCold, start, end) is var warm && warm > start)
        {
            return warm;
        }

        if ((terms.Needs & TaskNeeds.ClearAir) != 0 && air.CoatFrom(start - terms.WetBefore, DryFrom(terms, end)) + terms.WetBefore is var clear && clear > start)
        {
            return clear;
        }

        return (terms.Needs & TaskNeeds.Holds) == 0 ? start : things.CanKeepFrom(problem.Holds(task), start, end);
    }

    /// <summary>Takes what a task holds; <see cref="CanHoldFrom"/> must have found it free.</summary>
    public void TakeHolds(int task, in TaskTerms terms, int start, int end)
    {
        if ((terms.Needs & TaskNeeds.ClearAir) != 0)
        {
            var dry = DryFrom(terms, end);
            air.Coat(start - terms.WetBefore, dry);
            bars?.Bar(TaskNeeds.Dust, start - terms.WetBefore, dry);
        }

        things.Keep(problem.Holds(task), start, end);
    }

    private int DryFrom(in TaskTerms terms, int end) => problem.Nights.EndOf(end, terms.WetAfter, terms.DriesAfter);

    private void Remember(bool yes)
    {
        remembers = yes;
        airBefore = air.Mark;
        things.Remember(yes);
        for (var worker = 0; worker < free.Length; worker++)
        {
            free[worker].Remembers = heavy[worker].Remembers = yes;
            free[worker].Forget();
            heavy[worker].Forget();
        }
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
}
