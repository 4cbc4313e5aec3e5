using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ShopDays.Plans.Scheduling;

/// <summary>
/// Places work in a shop with one worker: what keeps nothing beyond its own minutes goes straight into the schedule and out
/// of the free time, stretch by stretch, as soon as each is found. Everything else is left to others.
/// </summary>
internal sealed class LonePlacer
{
    private const int NoPlace = -1;
    private readonly LoneTask[] blocks;
    private readonly LoneTask.Link[] links;
    private readonly int[] begin;
    private readonly int[] begunAt;
    private readonly CompiledCalendar calendar;
    private readonly ShopFloor floor;
    private readonly FreeTime free;
    private readonly CutShortWork cutShort;
    private readonly int[] days;
    private readonly int[] planned;

    private LonePlacer(ScheduleProblem problem, ShopFloor floor, int[] begin)
    {
        (this.floor, this.begin) = (floor, begin);
        (blocks, links) = LoneTask.Of(problem);
        (calendar, free) = (problem.Workers[0], floor.Free(0));
        cutShort = new(problem, floor);
        days = [.. calendar.Day];
        planned = [.. problem.Minutes];
        begunAt = [.. begin];
        LookWhenTheyMayBegin();
    }

    /// <summary>A placer for a shop with one worker; null for any other.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="floor">Its shop.</param>
    /// <param name="begin">The first minute of each order, as they are set for each schedule.</param>
    public static LonePlacer? For(ScheduleProblem problem, ShopFloor floor, int[] begin) =>
        problem.Workers.Length == 1 ? new(problem, floor, begin) : null;

    /// <summary>Begins anew.</summary>
    public void Reset()
    {
        cutShort.Reset();
        if (!begin.AsSpan().SequenceEqual(begunAt))
        {
            begin.CopyTo(begunAt, 0);
            LookWhenTheyMayBegin();
        }
    }

    /// <summary>Places blocks, each where it ends first, up to one that others must see to.</summary>
    /// <param name="order">All blocks.</param>
    /// <param name="at">Which of them to begin with.</param>
    /// <param name="minutes">The minutes of each task.</param>
    /// <param name="into">The schedule so far; receives the task that found no place before the calendars end, if there is one.</param>
    /// <param name="mayRunOver">Whether work may run over its session.</param>
    /// <returns>Which of the blocks is the first that was not placed.</returns>
    /// <remarks>One loop of everything that is usual, and what is not kept out of it: so the processor keeps what it needs at hand (measured).</remarks>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public int Place(ReadOnlySpan<int> order, int at, ReadOnlySpan<int> minutes, Schedule into, bool mayRunOver)
    {
        unchecked
        {
            var view = free.View;
            var (starts, ends) = into.Times;
            ref var barred = ref MemoryMarshal.GetArrayDataReference(floor.Bars);
            var turns = 0;
            for (; at < order.Length; at++)
            {
                ref readonly var item = ref blocks[order[at]];
                if (item.IsLeft)
                {
                    break;
                }

                var ready = Math.Max(item.Earliest, ends[item.After.Before] + item.After.Lag);
                for (var link = item.FirstMore; link < item.FirstMore + item.More; link++)
                {
                    ready = Math.Max(ready, ends[links[link].Before] + links[link].Lag);
                }

                var left = minutes[item.Task];
                if (left == 0 || !item.IsWork)
                {
                    if (ready >= item.StartBy)
                    {
                        break;
                    }

                    starts[item.Task] = ready;
                    ends[item.Task] = item.IsWork ? ready : ready + left;
                    continue;
                }

                // Whole work that would have to wait for longer is broken off instead, which others see to.
                var lastEnd = mayRunOver && item.LeastPiece == LoneTask.Whole ? ready + TaskPlacer.WeekMinutes : LoneTask.Whole;
                if ((item.Needs & TaskNeeds.OftenCut) != 0)
                {
                    if (!TryPlaceCutShort(item, ready, left, lastEnd, into))
                    {
                        break;
                    }

                    view = free.View;
                    continue;
                }

                var (minute, key, first) = (ready, item.Key, NoPlace);
                var session = calendar.SessionAbout(ready);
                var pieces = into.Count;
                while (true)
                {
                    if (!view.TryNext(session, minute, key, item.LeastOf(left), out var found))
                    {
                        GiveUp(item, pieces, into);
                        goto stopped;
                    }

                    session = found.Session;
                    if (item.Needs != 0 && (Unsafe.Add(ref barred, session) & item.Needs) != 0)
                    {
                        minute = FinishCutShort(item, minute, left, pieces, lastEnd, into);
                        if (minute < 0)
                        {
                            goto stopped;
                        }

                        first = into.Pieces[pieces].From;
                        view = free.View;
                        break;
                    }

                    minute = found.From + item.WorkIn(found.To - found.From, left);
                    if (first == NoPlace)
                    {
                        if (found.From >= item.StartBy || (minute > lastEnd && MayRunOver(item, ready, left, minute)))
                        {
                            goto stopped;
                        }

                        first = found.From;
                    }

                    if (view.TryTakeFirst(session, found.From, minute, key, out var more))
                    {
                        turns += more;
                    }
                    else
                    {
                        view = TakeInside(found.From, minute, key, session, found.Gap, found.Previous);
                    }

                    if ((item.Needs & TaskNeeds.WhileWorked) != 0)
                    {
                        floor.TakeWhileWorked(item.Needs, item.Place, found.From, minute);
                    }

                    into.Add(new(item.Task, 0, session, days[session], found.From, minute));
                    left -= minute - found.From;
                    if (left == 0)
                    {
                        break;
                    }
                }

                starts[item.Task] = first;
                ends[item.Task] = minute;
            }

            stopped:
            free.Changeovers += turns;
            return at;
        }
    }

    /// <summary>Leaves a task to others; when some of it was placed, the calendars end before the rest of it.</summary>
    private static void GiveUp(in LoneTask item, int pieces, Schedule into)
    {
        if (into.Count > pieces)
        {
            into.KeepPieces(pieces);
            into.Unplaced = item.Task;
        }
    }

    /// <summary>Whether work that would be done whole only late could be begun so much sooner that others must look whether it runs over.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private bool MayRunOver(in LoneTask item, int ready, int work, int wholeEnd) =>
        planned[item.Task] < work
        && free.TryNext(calendar.SessionAbout(ready), ready, item.Key, planned[item.Task], also: null, out var found)
        && found.From + work + TaskPlacer.WeekMinutes < wholeEnd;

    private void LookWhenTheyMayBegin()
    {
        for (var block = 0; block < blocks.Length; block++)
        {
            ref var item = ref blocks[block];
            item = item with { Earliest = Math.Max(item.NotBefore, begin[item.Order] + item.WaitAtStart) };
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private FreeView TakeInside(int start, int end, int key, int session, int gap, int previous)
    {
        free.Take(start, end, key, session, gap, previous);
        return free.View;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private bool TryPlaceCutShort(in LoneTask item, int ready, int work, int lastEnd, Schedule into)
    {
        var pieces = into.Count;
        var end = FinishCutShort(item, ready, work, pieces, lastEnd, into);
        if (end < 0)
        {
            return false;
        }

        var (starts, ends) = into.Times;
        starts[item.Task] = into.Pieces[pieces].From;
        ends[item.Task] = end;
        return true;
    }

    /// <summary>Places what is left of a task where something may cut it short.</summary>
    /// <returns>Its end; below 0 when it is given up.</returns>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private int FinishCutShort(in LoneTask item, int minute, int left, int pieces, int lastEnd, Schedule into)
    {
        var isBegun = into.Count > pieces;
        var end = cutShort.Place(item, minute, left, isBegun ? LoneTask.Whole : item.StartBy, isBegun ? LoneTask.Whole : lastEnd, into);
        if (end < 0)
        {
            GiveUp(item, pieces, into);
        }

        return end;
    }
}
