namespace ShopDays.Plans.Scheduling;

/// <summary>What of the shop matters to a task, beside the workers' time.</summary>
[Flags]
internal enum TaskNeeds : byte
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>It counts against a cap on heavy work.</summary>
    Heavy = 1,

    /// <summary>It is barred in quiet hours, and there are some.</summary>
    Quiet = 2,

    /// <summary>It raises dust, and there are coats.</summary>
    Dust = 4,

    /// <summary>It needs a place that others may have.</summary>
    Place = 8,

    /// <summary>What may cut its stretches of work short.</summary>
    Cuts = Heavy | Quiet | Dust | Place,

    /// <summary>What cuts its work short on most days.</summary>
    OftenCut = Heavy | Quiet,

    /// <summary>What it takes only while it is worked on.</summary>
    WhileWorked = Dust | Place,

    /// <summary>It is a coat, and there is dust.</summary>
    ClearAir = 16,

    /// <summary>It keeps things from its beginning to its end and beyond.</summary>
    Holds = 32,

    /// <summary>It is not done where it would get too cold for what sets after it.</summary>
    Warmth = 64,

    /// <summary>What is looked at when the whole task has its stretches.</summary>
    Keeps = ClearAir | Holds | Warmth,
}

/// <summary>A task as the generator reads it, in the order in which it asks: one row of numbers instead of records here and there.</summary>
internal readonly struct TaskTerms
{
    /// <summary>Picks out of a task what matters in a problem.</summary>
    /// <param name="problem">The problem; its tasks, workers and resources are read.</param>
    /// <param name="task">The task, one of its own or another.</param>
    public TaskTerms(ScheduleProblem problem, CompiledTask task)
    {
        Crew = task.Crew;
        IsSplittable = task.IsSplittable;
        IsByCalendar = task.IsByCalendar;
        LeastPiece = task.LeastPiece;
        WholeBelow = task.EndsInAPiece ? 2 * task.LeastPiece : task.LeastPiece;
        SetupKey = task.SetupKey;
        NotBefore = task.NotBefore;
        WaitAtStart = task.WaitAtStart;
        StartBy = task.StartBy;
        WaitAtEnd = task.WaitAtEnd;
        Order = task.Order;
        Place = task.Place;
        (WetBefore, WetAfter) = (task.WetBefore, task.WetAfter);
        (DriesAfter, TooCold) = (task.DriesAfter, task.TooCold);
        var shop = problem.Shop;
        Needs = (task.IsHeavy && problem.HeavyPerDay.IsAny ? TaskNeeds.Heavy : 0)
            | (task.IsNoisy && shop.HasQuietHours ? TaskNeeds.Quiet : 0)
            | (task.IsDusty && shop.HasCoats ? TaskNeeds.Dust : 0)
            | (task.Place >= 0 && shop.IsWanted(task.Place) ? TaskNeeds.Place : 0)
            | (task.WetBefore + task.WetAfter > 0 && shop.HasDust ? TaskNeeds.ClearAir : 0)
            | (task.Holds.Count > 0 ? TaskNeeds.Holds : 0)
            | (task.TooCold != CompiledNights.Nothing ? TaskNeeds.Warmth : 0);
    }

    /// <summary>Workers; 0 goes on by itself.</summary>
    public int Crew { get; }

    /// <summary>What else it needs.</summary>
    public TaskNeeds Needs { get; }

    /// <summary>Whether it may go on after a break.</summary>
    public bool IsSplittable { get; }

    /// <summary>Whether it goes on by itself, and whole days of it are days of the calendar.</summary>
    public bool IsByCalendar { get; }

    /// <summary>The least stretch worth beginning.</summary>
    public int LeastPiece { get; }

    /// <summary>When less than this is left, it is not broken off any more.</summary>
    public int WholeBelow { get; }

    /// <summary>Its set-up; below 0 none.</summary>
    public int SetupKey { get; }

    /// <summary>The first minute in which it may begin.</summary>
    public int NotBefore { get; }

    /// <summary>Clock time after the first minute of its order before it may begin.</summary>
    public int WaitAtStart { get; }

    /// <summary>The minute before which it must begin.</summary>
    public int StartBy { get; }

    /// <summary>Clock time after its end before its order can be finished.</summary>
    public int WaitAtEnd { get; }

    /// <summary>Its order.</summary>
    public int Order { get; }

    /// <summary>Where it is worked on, if it needs that.</summary>
    public int Place { get; }

    /// <summary>Clock time before its beginning that must be free of dust.</summary>
    public int WetBefore { get; }

    /// <summary>Clock time after its end that must be free of dust.</summary>
    public int WetAfter { get; }

    /// <summary>The number of what dries in that time and may take longer.</summary>
    public int DriesAfter { get; }

    /// <summary>The number of the stretches that are too cold for it.</summary>
    public int TooCold { get; }
}

/// <summary>What there is in a shop at all: what nobody can meet need not be looked for.</summary>
/// <param name="HasQuietHours">Whether any worker has quiet hours.</param>
/// <param name="HasCoats">Whether a coat is to be laid on, or still wet at the beginning.</param>
/// <param name="HasDust">Whether any task raises dust.</param>
/// <param name="Wanted">For each resource, whether work at it can be in another's way: more workers than there are, or something that keeps it.</param>
/// <param name="Rowed">For each resource, whether anything may keep another one instead.</param>
internal sealed record ShopAtAll(bool HasQuietHours, bool HasCoats, bool HasDust, bool[] Wanted, bool[] Rowed)
{
    /// <summary>Looks through a problem.</summary>
    public static ShopAtAll Of(ScheduleProblem problem)
    {
        var wanted = new bool[problem.Capacities.Length];
        for (var resource = 0; resource < wanted.Length; resource++)
        {
            wanted[resource] = problem.Workers.Length > problem.Capacities[resource]
                || problem.Tasks.Any(task => task.Holds.Any(hold => hold.First <= resource && resource <= hold.Last))
                || problem.Standing.Held.Any(held => held.Hold.First <= resource && resource <= held.Hold.Last);
        }

        return new(
            problem.Workers.Any(worker => worker.Quiet.Any()),
            problem.Standing.WetUntil > problem.Standing.Begin || problem.Tasks.Any(task => task.WetAfter + task.WetBefore > 0),
            problem.Tasks.Any(task => task.IsDusty),
            wanted,
            [.. wanted.Select((_, resource) => problem.Tasks.Any(task => task.Holds.Any(hold => hold.First < hold.Last && hold.First <= resource && resource <= hold.Last)))]);
    }

    /// <summary>Whether anything may keep another resource instead of this.</summary>
    public bool IsOneOfARow(int resource) => Rowed[resource];

    /// <summary>Whether work at a place can be in another's way.</summary>
    public bool IsWanted(int place) => Wanted[place];
}
