namespace ShopDays.Plans.Scheduling;

/// <summary>A block as a lone worker's placer reads it, in the order in which it asks.</summary>
internal readonly record struct LoneTask
{
    /// <summary>Longer than any stretch: of work that is not broken off.</summary>
    public const int Whole = CompiledCalendar.Never;

    /// <summary>The only task of the block; below 0 of a block of several.</summary>
    public required int Task { get; init; }

    /// <summary>Whether the worker works on it; otherwise it goes on by itself.</summary>
    public bool IsWork { get; init; }

    /// <summary>Whether it is left to others.</summary>
    public bool IsLeft { get; init; }

    /// <summary>What it follows; of a task that follows nothing, one that says nothing.</summary>
    public Link After { get; init; }

    /// <summary>The first of what else it follows.</summary>
    public int FirstMore { get; init; }

    /// <summary>How many of these there are.</summary>
    public int More { get; init; }

    /// <summary>The first minute in which it may begin, when that of its order is known.</summary>
    public int Earliest { get; init; }

    /// <summary>The first minute in which it may begin in any case.</summary>
    public int NotBefore { get; init; }

    /// <summary>Clock time after the first minute of its order before it may begin.</summary>
    public int WaitAtStart { get; init; }

    /// <summary>Its order.</summary>
    public int Order { get; init; }

    /// <summary>The minute before which it must begin.</summary>
    public int StartBy { get; init; }

    /// <summary>The least stretch worth beginning; <see cref="Whole"/> of work that is not broken off.</summary>
    public int LeastPiece { get; init; }

    /// <summary>When less than this is left, it is not broken off any more.</summary>
    public int WholeBelow { get; init; }

    /// <summary>Its set-up; below 0 none.</summary>
    public int Key { get; init; }

    /// <summary>Where it is worked on, if it needs that.</summary>
    public int Place { get; init; }

    /// <summary>What of the shop matters to it.</summary>
    public TaskNeeds Needs { get; init; }

    /// <summary>The least stretch worth beginning when some is left to do.</summary>
    public int LeastOf(int left) => left < WholeBelow ? left : LeastPiece;

    /// <summary>How much of a stretch, not shorter than the least of what is left, is worked in.</summary>
    public int WorkIn(int room, int left) => unchecked(room >= left ? left : Math.Min(room, left - (WholeBelow - LeastPiece)));

    /// <summary>A task that must end some minutes before.</summary>
    public readonly record struct Link(int Before, int Lag);

    /// <summary>The blocks of a problem, and a row of all that they follow beyond one each.</summary>
    public static (LoneTask[] Blocks, Link[] More) Of(ScheduleProblem problem)
    {
        var blocks = new LoneTask[problem.Blocks];
        var more = new List<Link>();
        for (var block = 0; block < blocks.Length; block++)
        {
            var task = problem.OnlyMember(block);
            if (task < 0 || !IsSimple(problem, task))
            {
                blocks[block] = new() { Task = task, IsLeft = true };
                continue;
            }

            var first = more.Count;
            var links = problem.Before(task);
            foreach (var one in links[Math.Min(1, links.Length)..])
            {
                more.Add(new(one.Before, one.Lag));
            }

            var plan = problem.Terms[task];
            blocks[block] = new()
            {
                Task = task,
                After = links.IsEmpty ? new(task, -CompiledCalendar.Never) : new(links[0].Before, links[0].Lag),
                FirstMore = first,
                More = more.Count - first,
                NotBefore = plan.NotBefore,
                WaitAtStart = plan.WaitAtStart,
                Order = plan.Order,
                StartBy = plan.StartBy,
                LeastPiece = plan.IsSplittable ? plan.LeastPiece : Whole,
                WholeBelow = plan.IsSplittable ? plan.WholeBelow : Whole,
                Key = plan.SetupKey,
                Place = plan.Place,
                Needs = plan.Needs,
                IsWork = plan.Crew > 0,
            };
        }

        return (blocks, [.. more]);
    }

    private static bool IsSimple(ScheduleProblem problem, int task)
    {
        foreach (var one in problem.Before(task))
        {
            if (!one.IsEven)
            {
                return false;
            }
        }

        ref readonly var terms = ref problem.Terms[task];
        return (terms.Needs & TaskNeeds.Keeps) == 0 && !(terms.IsByCalendar && problem.Clock.Changes);
    }
}
