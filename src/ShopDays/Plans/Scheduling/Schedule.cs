using System.Runtime.CompilerServices;

namespace ShopDays.Plans.Scheduling;

/// <summary>A stretch of work of one worker on one task, the end not included.</summary>
/// <param name="Task">The task.</param>
/// <param name="Worker">Who.</param>
/// <param name="Session">Which of the worker's sessions.</param>
/// <param name="Day">Its day.</param>
/// <param name="From">The first minute.</param>
/// <param name="To">The end.</param>
internal readonly record struct WorkPiece(int Task, int Worker, int Session, int Day, int From, int To);

/// <summary>A schedule, filled in by <see cref="ScheduleGenerator"/>; used again and again.</summary>
internal sealed class Schedule(int tasks, int orders = 1)
{
    private readonly int[] finishes = new int[orders];
    private readonly int[] start = new int[tasks];
    private readonly int[] end = new int[tasks];
    private WorkPiece[] pieces = new WorkPiece[(2 * tasks) + 16];
    private int count;

    /// <summary>The first minute of each task.</summary>
    public ReadOnlySpan<int> Start => start;

    /// <summary>The end of each task.</summary>
    public ReadOnlySpan<int> End => end;

    /// <summary>The first minutes and the ends of the tasks, to be written.</summary>
    public (int[] Start, int[] End) Times => (start, end);

    /// <summary>The stretches of work, a task's one after another, in the order in which tasks were placed.</summary>
    public ReadOnlySpan<WorkPiece> Pieces => pieces.AsSpan(0, count);

    /// <summary>How many stretches of work there are.</summary>
    public int Count => count;

    /// <summary>The end of the last task of each order and of its closing waits; <see cref="CompiledCalendar.Never"/> when not all is placed.</summary>
    public Span<int> Finishes => finishes;

    /// <summary>The end of the last task and of all closing waits; <see cref="CompiledCalendar.Never"/> when not all is placed.</summary>
    public int Finish { get; set; }

    /// <summary>Days on which somebody works.</summary>
    public int ShopDays { get; set; }

    /// <summary>Days on which anybody but the first worker is called in.</summary>
    public int CallDays { get; set; }

    /// <summary>Turns from one set-up to another within sessions, all workers together.</summary>
    public int Changeovers { get; set; }

    /// <summary>Tasks that ran over the session they should have ended in, or could not follow in the session they should have.</summary>
    public int Overruns { get; set; }

    /// <summary>The task that could not be placed before the calendars end; below 0 when all are.</summary>
    public int Unplaced { get; set; }

    /// <summary>What it is compared by.</summary>
    public ScheduleScore Score { get; set; }

    /// <summary>Nothing placed.</summary>
    public void Reset()
    {
        count = 0;
        Array.Clear(start);
        Array.Clear(end);
        Finish = CompiledCalendar.Never;
        Array.Fill(finishes, CompiledCalendar.Never);
        Score = ScheduleScore.None;
        (ShopDays, CallDays, Changeovers, Overruns, Unplaced) = (0, 0, 0, 0, -1);
    }

    /// <summary>Sets a task's beginning and end.</summary>
    public void Set(int task, int from, int to) => (start[task], end[task]) = (from, to);

    /// <summary>Adds a stretch of work.</summary>
    public void Add(WorkPiece piece)
    {
        unchecked
        {
            var (all, next) = (pieces, count);
            if ((uint)next < (uint)all.Length)
            {
                all[next] = piece;
                count = next + 1;
            }
            else
            {
                Grow(piece);
            }
        }
    }

    /// <summary>Takes the last stretches back.</summary>
    public void KeepPieces(int number) => count = number;

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Grow(WorkPiece piece)
    {
        Array.Resize(ref pieces, 2 * count);
        Add(piece);
    }
}
