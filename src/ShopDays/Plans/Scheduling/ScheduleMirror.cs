namespace ShopDays.Plans.Scheduling;

/// <summary>
/// The same job in a shop whose clock runs backwards. What is placed in it early lies late in the real one: a schedule
/// whose tasks are pushed to its end, in the order of their ends, and then back again in the order of their beginnings,
/// is often a shorter one.
/// </summary>
/// <remarks>
/// Forward-backward improvement, K. Y. Li and R. J. Willis (1992) and P. Tormos and A. Lova (2001), from memory. Only an order
/// of work is taken out of the mirrored schedule, so a rule that looks different from behind (the least piece, a
/// beginning that is fixed) is mirrored as nearly as it goes. So it is with cold nights: what sets takes as long as it would
/// from the middle of the schedule on, and no month is barred. The order is then placed again in the real shop, where each
/// wait is as long as its nights make it; the worst that can come of it is an order that is no better.
/// </remarks>
internal sealed class ScheduleMirror
{
    private readonly ScheduleProblem real;
    private readonly int end;

    /// <summary>Mirrors a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="end">The minute that becomes minute 0; nothing after it is there. Not before the end of any schedule that is to be turned.</param>
    public ScheduleMirror(ScheduleProblem problem, int end)
    {
        real = problem;
        this.end = end;
        Problem = new(
            [.. problem.Tasks.Select(Turned)],
            [.. problem.Precedences.Select(one => one with { Before = one.After, After = one.Before, Lag = InTheMiddle(one.Lag, one.Sets), Sets = CompiledNights.Nothing })],
            Turned(problem.Workers),
            problem.Capacities,
            problem.HeavyPerDay,
            problem.Changeover,
            orders: [.. problem.Orders.Select(one => new CompiledOrder(CompiledCalendar.Never, one.Weight))]);
        ToMirror = Mapped(problem, Problem);
        FromMirror = Mapped(Problem, problem);
    }

    /// <summary>The mirrored problem. Its tasks have their numbers, its blocks are the same sets of tasks with other numbers.</summary>
    public ScheduleProblem Problem { get; }

    /// <summary>The mirrored block of each block.</summary>
    public int[] ToMirror { get; }

    /// <summary>The block of each mirrored block.</summary>
    public int[] FromMirror { get; }

    /// <summary>The minute of the real shop that one in the mirrored shop is, and the other way round; of a stretch the first becomes the end.</summary>
    public int Turned(int minute) => end - minute;

    /// <summary>How long a wait is that begins halfway through.</summary>
    private int InTheMiddle(int minutes, int sets) => real.Nights.EndOf(end / 2, minutes, sets) - (end / 2);

    private static int[] Mapped(ScheduleProblem one, ScheduleProblem other)
    {
        var blocks = new int[one.Blocks];
        for (var block = 0; block < blocks.Length; block++)
        {
            blocks[block] = other.BlockOf(one.Members(block)[0]);
        }

        return blocks;
    }

    /// <summary>
    /// A wait at the end is one before the beginning. That a task may not begin too early becomes a wait at its end, which
    /// forbids nothing but counts; what sets takes as long as halfway through, and cold bars nothing; that it must begin by a minute becomes a minute before which it may not begin.
    /// </summary>
    private CompiledTask Turned(CompiledTask task) => task with
    {
        NotBefore = task.StartBy >= CompiledCalendar.Never ? 0 : Math.Max(0, end - (task.StartBy - 1 + task.Minutes)),
        StartBy = CompiledCalendar.Never,
        WaitAtStart = InTheMiddle(task.WaitAtEnd, task.SetsAtEnd),
        WaitAtEnd = Math.Max(task.NotBefore, task.WaitAtStart),
        WetAfter = task.WetBefore,
        WetBefore = InTheMiddle(task.WetAfter, task.DriesAfter),
        SetsAtEnd = CompiledNights.Nothing,
        DriesAfter = CompiledNights.Nothing,
        TooCold = CompiledNights.Nothing,
        Holds = [.. task.Holds.Select(hold => hold with { MinutesAfter = hold.MinutesBefore, MinutesBefore = InTheMiddle(hold.MinutesAfter, hold.Sets), Sets = CompiledNights.Nothing })],
    };

    private List<CompiledCalendar> Turned(IReadOnlyList<CompiledCalendar> workers)
    {
        // One last day for all, so that workers who meet do so on the same day.
        var last = 0;
        foreach (var worker in workers)
        {
            for (var session = 0; session < worker.Count && worker.From[session] < end; session++)
            {
                last = Math.Max(last, worker.Day[session]);
            }
        }

        return [.. workers.Select(worker => Turned(worker, last))];
    }

    private CompiledCalendar Turned(CompiledCalendar worker, int lastDay)
    {
        var open = new List<OpenStretch>();
        for (var session = worker.Count - 1; session >= 0; session--)
        {
            if (worker.From[session] < end)
            {
                open.Add(new(end - Math.Min(end, worker.To[session]), end - worker.From[session], lastDay - worker.Day[session]));
            }
        }

        return new(open, [.. worker.Quiet.Where(still => still.From < end).Select(still => new QuietStretch(end - Math.Min(end, still.To), end - still.From)).Reverse()]);
    }
}
