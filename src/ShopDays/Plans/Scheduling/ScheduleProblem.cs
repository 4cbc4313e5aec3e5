using System.Collections.Immutable;

namespace ShopDays.Plans.Scheduling;

/// <summary>
/// A job and a shop in the form that is scheduled: tasks, what comes before what, workers with their hours, resources,
/// the cap on heavy work and the cost of changing over. Times are whole minutes from one origin.
/// </summary>
internal sealed class ScheduleProblem
{
    private readonly int[] blockOf;
    private readonly Rows<int> members;
    private readonly int[] onlyMember;
    private readonly Rows<CompiledPrecedence> before;
    private readonly Rows<CompiledPrecedence> after;
    private readonly Rows<Hold> holds;
    private readonly Rows<int> blocksBefore;
    private readonly Rows<int> blocksAfter;
    private readonly int[][][] teams;

    /// <summary>Checks and prepares a problem.</summary>
    /// <exception cref="ArgumentException">
    /// A task cannot be done at all: no time, more workers or resources than there are, the place that it is worked at kept
    /// by itself; what it holds of one row is not told as <see cref="CompiledTask.Holds"/> says; or the order goes round.
    /// </exception>
    public ScheduleProblem(
        IReadOnlyList<CompiledTask> tasks,
        IReadOnlyList<CompiledPrecedence> precedences,
        IReadOnlyList<CompiledCalendar> workers,
        IReadOnlyList<int> capacities,
        HeavyCaps? heavyPerDay = null,
        int changeover = 0,
        ShopStanding? standing = null,
        IReadOnlyList<CompiledOrder>? orders = null,
        CompiledClock? clock = null,
        CompiledNights? nights = null)
    {
        Tasks = [.. tasks];
        Precedences = [.. precedences];
        Workers = [.. workers];
        Capacities = [.. capacities];
        HeavyPerDay = heavyPerDay ?? HeavyCaps.None;
        Changeover = changeover;
        Clock = clock ?? CompiledClock.Even;
        Nights = nights ?? CompiledNights.None;
        Standing = standing ?? ShopStanding.Empty;
        Orders = orders is null ? [new CompiledOrder()] : [.. orders];
        Days = workers.Select(worker => worker.Days).DefaultIfEmpty().Max();
        Minutes = [.. tasks.Select(task => task.Minutes)];
        foreach (var task in tasks)
        {
            Check(task);
        }

        before = new(tasks.Count, precedences.Select(one => (one.After, one)));
        after = new(tasks.Count, precedences.Select(one => (one.Before, one)));
        holds = new(tasks.Count, tasks.SelectMany((task, id) => task.Holds.Select(hold => (id, hold))));
        InOrder = TasksInOrder(tasks.Count);
        blockOf = SessionBlocks.Find(tasks.Count, precedences);
        Blocks = blockOf.Length == 0 ? 0 : blockOf.Max() + 1;
        members = new(Blocks, InOrder.Select(task => (blockOf[task], task)));
        onlyMember = [.. Enumerable.Range(0, Blocks).Select(block => members[block].Length == 1 ? members[block][0] : -1)];
        var between = precedences
            .Select(one => (Before: blockOf[one.Before], After: blockOf[one.After]))
            .Where(one => one.Before != one.After)
            .Distinct()
            .ToList();
        blocksBefore = new(Blocks, between.Select(one => (one.After, one.Before)));
        blocksAfter = new(Blocks, between.Select(one => (one.Before, one.After)));
        Shop = ShopAtAll.Of(this);
        Terms = [.. Tasks.Select(task => new TaskTerms(this, task))];
        teams = [.. Enumerable.Range(0, workers.Count + 1).Select(crew => Teams.Of(crew, workers.Count).ToArray())];
    }

    /// <summary>The tasks.</summary>
    public ImmutableArray<CompiledTask> Tasks { get; }

    /// <summary>What comes before what.</summary>
    public ImmutableArray<CompiledPrecedence> Precedences { get; }

    /// <summary>The hours of each worker.</summary>
    public ImmutableArray<CompiledCalendar> Workers { get; }

    /// <summary>How many there are of each resource.</summary>
    public ImmutableArray<int> Capacities { get; }

    /// <summary>Heavy work that each worker does in a day at most.</summary>
    public HeavyCaps HeavyPerDay { get; }

    /// <summary>What turning to work with another set-up costs a worker within a session.</summary>
    public int Changeover { get; }

    /// <summary>How the shop's clock is put forward and back.</summary>
    public CompiledClock Clock { get; }

    /// <summary>What the shop's nights mean to the work.</summary>
    public CompiledNights Nights { get; }

    /// <summary>How the shop stands before the first of the tasks.</summary>
    public ShopStanding Standing { get; }

    /// <summary>The orders that the tasks belong to, at least one.</summary>
    public ImmutableArray<CompiledOrder> Orders { get; }

    /// <summary>Days up to the last session of any worker.</summary>
    public int Days { get; }

    /// <summary>What there is in the shop at all.</summary>
    public ShopAtAll Shop { get; }

    /// <summary>The tasks as the generator reads them.</summary>
    public TaskTerms[] Terms { get; }

    /// <summary>The planned minutes of each task.</summary>
    public ImmutableArray<int> Minutes { get; }

    /// <summary>The tasks in one order of work.</summary>
    public ImmutableArray<int> InOrder { get; }

    /// <summary>How many blocks there are; in the order of their numbers they are an order of work.</summary>
    public int Blocks { get; }

    /// <summary>The block of a task.</summary>
    public int BlockOf(int task) => blockOf[task];

    /// <summary>The tasks of a block, in an order of work.</summary>
    public ReadOnlySpan<int> Members(int block) => members[block];

    /// <summary>The task of a block that has no other; below 0 where it has.</summary>
    public int OnlyMember(int block) => onlyMember[block];

    /// <summary>What a task holds.</summary>
    public ReadOnlySpan<Hold> Holds(int task) => holds[task];

    /// <summary>What comes before a task.</summary>
    public ReadOnlySpan<CompiledPrecedence> Before(int task) => before[task];

    /// <summary>When what comes before another has ended and its wait is over.</summary>
    /// <param name="one">What comes before what.</param>
    /// <param name="end">The earlier's end.</param>
    public int ReadyAfter(in CompiledPrecedence one, int end) => Nights.EndOf(end, one.Lag, one.Sets);

    /// <summary>What comes after a task.</summary>
    public ReadOnlySpan<CompiledPrecedence> After(int task) => after[task];

    /// <summary>The blocks that come before a block.</summary>
    public ReadOnlySpan<int> BlocksBefore(int block) => blocksBefore[block];

    /// <summary>The blocks that come after a block.</summary>
    public ReadOnlySpan<int> BlocksAfter(int block) => blocksAfter[block];

    /// <summary>The sets of workers that make up a crew; one empty set for work that goes on by itself.</summary>
    public int[][] TeamsOf(int crew) => teams[crew];

    /// <summary>
    /// The same problem where something is spoiled in some tasks: they may then be done in pieces, and what comes after them
    /// and what shares a session with them waits longer. Blocks keep their numbers.
    /// </summary>
    /// <param name="tasks">Each of the tasks, and how many minutes of the clock new timber is waited for.</param>
    public ScheduleProblem Interrupted(IReadOnlyList<(int Task, int Wait)> tasks)
    {
        var waits = tasks.ToDictionary(one => one.Task, one => one.Wait);
        var waitsOfBlock = tasks.GroupBy(one => blockOf[one.Task]).ToDictionary(group => group.Key, group => group.Max(one => one.Wait));
        var settings = Nights.Settings.ToList();
        return new(
            [.. Tasks.Select((task, number) => waits.TryGetValue(number, out var wait) ? task with { IsSplittable = true, LeastPiece = 1, WaitAtEnd = task.WaitAtEnd + wait, SetsAtEnd = SetsAfter(task.SetsAtEnd, wait) } : task)],
            [.. Precedences.Select(one => blockOf[one.Before] != blockOf[one.After] && waitsOfBlock.TryGetValue(blockOf[one.Before], out var wait) ? one with { Lag = one.Lag + wait, Sets = SetsAfter(one.Sets, wait) } : one)],
            Workers,
            Capacities,
            HeavyPerDay,
            Changeover,
            Standing,
            Orders,
            Clock,
            Nights with { Settings = [.. settings] });

        // Glue begins to set only when there is something to be glued.
        int SetsAfter(int sets, int wait)
        {
            if (sets == CompiledNights.Nothing || wait == 0)
            {
                return sets;
            }

            settings.Add(Nights.Settings[sets - 1].After(wait));
            return settings.Count;
        }
    }

    private void Check(CompiledTask task)
    {
        if (task.Crew < 0 || task.Crew > Workers.Length)
        {
            throw new ArgumentException($"a task takes {task.Crew} workers of {Workers.Length}");
        }

        if (task.Minutes < (task.Crew == 0 ? 0 : 1))
        {
            throw new ArgumentException("a task that somebody does takes a minute at least");
        }

        if (task.LeastPiece < 1)
        {
            throw new ArgumentException("the least piece of a task is a minute at least");
        }

        if (task.Order < 0 || task.Order >= Orders.Length)
        {
            throw new ArgumentException("a task belongs to an order that is not there");
        }

        if (task.Place >= Capacities.Length)
        {
            throw new ArgumentException("a task needs a place that is not there");
        }

        for (var next = 0; next < task.Holds.Count; next++)
        {
            var hold = task.Holds[next];
            if (hold.First < 0 || hold.Last < hold.First || hold.Last >= Capacities.Length)
            {
                throw new ArgumentException("a task holds a resource that is not there");
            }

            if (Enumerable.Range(hold.First, hold.Last - hold.First + 1).Sum(resource => Capacities[resource]) < hold.Count)
            {
                throw new ArgumentException("a task holds more than there are");
            }

            if (hold.First <= task.Place && task.Place <= hold.Last)
            {
                throw new ArgumentException("a task holds the place that it is worked at: to be worked at it must be free");
            }

            if (task.Holds.Take(next).Any(other => other.Last >= hold.First && other.First <= hold.Last && !hold.MayFollow(other)))
            {
                throw new ArgumentException("a task holds some of a row for other times than the rest of it, or of a wider row first");
            }
        }
    }

    private ImmutableArray<int> TasksInOrder(int tasks)
    {
        var waitsFor = Enumerable.Range(0, tasks).Select(task => before[task].Length).ToArray();
        var order = Enumerable.Range(0, tasks).Where(task => waitsFor[task] == 0).ToList();
        for (var next = 0; next < order.Count; next++)
        {
            foreach (var one in after[order[next]])
            {
                if (--waitsFor[one.After] == 0)
                {
                    order.Add(one.After);
                }
            }
        }

        return order.Count == tasks ? [.. order] : throw new ArgumentException("the order of work goes round");
    }
}
