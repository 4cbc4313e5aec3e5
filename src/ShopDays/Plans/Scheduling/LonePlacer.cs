using System.Runtime.CompilerServices;

namespace ShopDays.Plans.Scheduling;

/// <summary>
/// Places work in a shop with one worker: what keeps nothing beyond its own minutes goes straight into the schedule and out
/// of the free time, stretch by stretch, as soon as each is found. Everything else is left to <see cref="TaskPlacer"/>.
/// </summary>
/// <remarks>Two methods are kept out of their callers: in one method of everything the processor runs out of registers (measured).</remarks>
internal sealed class LonePlacer
{
    private const int NoPlace = -1;
    private const int Whole = CompiledCalendar.Never;
    private readonly Item[] items;
    private readonly Link[] links;
    private readonly int[] begin;
    private readonly TaskTerms[] terms;
    private readonly CompiledCalendar calendar;
    private readonly ShopFloor floor;
    private readonly TaskPlacer others;
    private readonly FreeTime free;
    private readonly LoudRoom loud;
    private readonly int[] days;

    private LonePlacer(ScheduleProblem problem, ShopFloor floor, TaskPlacer others)
    {
        (this.floor, this.others) = (floor, others);
        (terms, begin) = (problem.Terms, others.Begin);
        (calendar, free) = (problem.Workers[0], floor.Free(0));
        loud = new(calendar, free);
        days = [.. calendar.Day];
        items = new Item[problem.Blocks];
        var before = new List<Link>();
        for (var block = 0; block < items.Length; block++)
        {
            var task = problem.OnlyMember(block);
            var first = before.Count;
            if (task < 0 || !IsSimple(problem, task))
            {
                items[block] = new() { Task = task, IsLeft = true };
                continue;
            }

            // Most have one: it is kept with them, of those that have none one that says nothing.
            var links = problem.Before(task);
            var one = links.IsEmpty ? new(task, -CompiledCalendar.Never) : new Link(links[0].Before, links[0].Lag);
            foreach (var more in links[Math.Min(1, links.Length)..])
            {
                before.Add(new(more.Before, more.Lag));
            }

            var plan = terms[task];
            items[block] = new()
            {
                Task = task,
                Link = one,
                FirstMore = first,
                More = before.Count - first,
                NotBefore = plan.NotBefore,
                WaitAtStart = plan.WaitAtStart,
                Order = plan.Order,
                StartBy = plan.StartBy,
                LeastPiece = plan.IsSplittable ? plan.LeastPiece : Whole,
                Key = plan.SetupKey,
                Needs = plan.Needs,
                IsWork = plan.Crew > 0,
            };
        }

        links = [.. before];
    }

    /// <summary>A placer for a shop with one worker; null for any other.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="floor">Its shop.</param>
    /// <param name="others">Places what this one leaves.</param>
    public static LonePlacer? For(ScheduleProblem problem, ShopFloor floor, TaskPlacer others) =>
        problem.Workers.Length == 1 ? new(problem, floor, others) : null;

    /// <summary>Begins anew.</summary>
    public void Reset() => loud.Reset();

    /// <summary>Places the only task of a block where it ends first.</summary>
    /// <param name="block">The block.</param>
    /// <param name="minutes">The minutes of each task.</param>
    /// <param name="into">The schedule so far.</param>
    /// <param name="mayRunOver">Whether work may run over its session.</param>
    /// <returns>Whether it found a place before the calendars end.</returns>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public bool Place(int block, ReadOnlySpan<int> minutes, Schedule into, bool mayRunOver)
    {
        unchecked
        {
            ref readonly var item = ref items[block];
            if (item.IsLeft)
            {
                return others.Place(item.Task, minutes, into, 0, mayRunOver, keepTogether: false);
            }

            var (starts, ends) = into.Times;
            var ready = Math.Max(item.NotBefore, begin[item.Order] + item.WaitAtStart);
            ready = Math.Max(ready, ends[item.Link.Before] + item.Link.Lag);
            for (var link = item.FirstMore; link < item.FirstMore + item.More; link++)
            {
                ready = Math.Max(ready, ends[links[link].Before] + links[link].Lag);
            }

            var work = minutes[item.Task];
            if (work > 0 && item.IsWork)
            {
                // Whole work that would have to wait for longer is broken off instead, which others see to.
                var lastEnd = mayRunOver && item.LeastPiece == Whole ? ready + TaskPlacer.WeekMinutes : Whole;
                var pieces = into.Count;
                var end = (item.Needs & TaskNeeds.Cuts) == 0
                    ? PlaceWork(item, ready, work, lastEnd, into)
                    : PlaceWorkCutShort(item, ready, work, lastEnd, into);
                if (end >= 0)
                {
                    starts[item.Task] = into.Pieces[pieces].From;
                    ends[item.Task] = end;
                    return true;
                }

                if (into.Count > pieces)
                {
                    into.KeepPieces(pieces);
                    into.Unplaced = item.Task;
                    return false;
                }
            }
            else if (ready < item.StartBy)
            {
                starts[item.Task] = ready;
                ends[item.Task] = item.IsWork ? ready : ready + work;
                return true;
            }

            return others.Place(item.Task, minutes, into, 0, mayRunOver, keepTogether: false);
        }
    }

    private static bool IsSimple(ScheduleProblem problem, int task)
    {
        foreach (var one in problem.Before(task))
        {
            if (one.Days != 0)
            {
                return false;
            }
        }

        return (problem.Terms[task].Needs & TaskNeeds.Keeps) == 0;
    }

    /// <summary>Places work that nothing but the worker's time bears upon.</summary>
    /// <returns>Its end; below 0 when it finds no place, or its first stretch begins or ends too late.</returns>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private int PlaceWork(in Item item, int ready, int work, int lastEnd, Schedule into)
    {
        unchecked
        {
            var (minute, left, isFirst) = (ready, work, true);
            var session = calendar.SessionEndingAfter(ready);
            while (free.TryNext(session, minute, item.Key, Math.Min(left, item.LeastPiece), also: null, out var found))
            {
                var end = Math.Min(found.To, found.From + left);
                if (isFirst && (found.From >= item.StartBy || end > lastEnd))
                {
                    return NoPlace;
                }

                isFirst = false;
                session = found.Session;
                free.Take(found.From, end, item.Key, session, found.Gap, found.Previous);
                into.Add(new(item.Task, 0, session, days[session], found.From, end));
                left -= end - found.From;
                if (left == 0)
                {
                    return end;
                }

                minute = end;
            }

            return NoPlace;
        }
    }

    /// <summary>Places work that a cap, quiet hours, wet coats or a place that is taken may cut short.</summary>
    /// <inheritdoc cref="PlaceWork"/>
    private int PlaceWorkCutShort(in Item item, int ready, int work, int lastEnd, Schedule into)
    {
        unchecked
        {
            ref readonly var task = ref terms[item.Task];
            var heavy = (item.Needs & TaskNeeds.Heavy) != 0 ? floor.Heavy(0) : null;
            var isLoud = (item.Needs & TaskNeeds.Quiet) != 0;
            var also = heavy is not null ? heavy.Room : isLoud ? loud.Most : null;
            var (minute, left, isFirst) = (ready, work, true);
            var session = calendar.SessionEndingAfter(ready);
            while (true)
            {
                var least = Math.Min(left, item.LeastPiece);
                if (!free.TryNext(session, minute, item.Key, least, also, out var found))
                {
                    return NoPlace;
                }

                session = found.Session;
                if (isLoud && loud.Most[session] < least)
                {
                    session++;
                    continue;
                }

                var (start, end) = (found.From, found.To);
                if (!floor.Cut(0, task, session, ref start, ref end))
                {
                    if (isLoud)
                    {
                        loud.Look(session);
                    }

                    minute = start;
                    continue;
                }

                var room = heavy is null ? end - start : Math.Min(end - start, heavy.Left[session]);
                if (room < least)
                {
                    if (isLoud)
                    {
                        loud.Look(session);
                    }

                    minute = end;
                    continue;
                }

                end = start + Math.Min(room, left);
                if (isFirst && (start >= item.StartBy || end > lastEnd))
                {
                    return NoPlace;
                }

                isFirst = false;
                free.Take(start, end, item.Key, session, found.Gap, found.Previous);
                heavy?.Take(session, end - start);
                floor.TakeWhileWorked(task, start, end);
                into.Add(new(item.Task, 0, session, days[session], start, end));
                left -= end - start;
                if (left == 0)
                {
                    return end;
                }

                minute = end;
            }
        }
    }

    /// <summary>A task of a block that has no other, in the order in which it is asked about.</summary>
    private readonly record struct Item
    {
        /// <summary>The task; below 0 of a block of several.</summary>
        public required int Task { get; init; }

        /// <summary>Whether it is left to others.</summary>
        public bool IsLeft { get; init; }

        /// <summary>Whether the worker works on it; otherwise it goes on by itself.</summary>
        public bool IsWork { get; init; }

        public Link Link { get; init; }

        public int FirstMore { get; init; }

        public int More { get; init; }

        public int NotBefore { get; init; }

        public int WaitAtStart { get; init; }

        public int Order { get; init; }

        public int StartBy { get; init; }

        /// <summary>The least stretch worth beginning; of work that is not broken off longer than any.</summary>
        public int LeastPiece { get; init; }

        public int Key { get; init; }

        public TaskNeeds Needs { get; init; }
    }

    private readonly record struct Link(int Before, int Lag);
}
