using System.Runtime.CompilerServices;

namespace ShopDays.Plans.Scheduling;

/// <summary>Places a lone worker's work that a cap, quiet hours, wet coats or a place that is taken may cut short.</summary>
internal sealed class CutShortWork
{
    /// <summary>The end of work that finds no place.</summary>
    private const int NoPlace = -1;

    private readonly TaskTerms[] terms;
    private readonly CompiledCalendar calendar;
    private readonly ShopFloor floor;
    private readonly FreeTime free;
    private readonly LoudRoom loud;
    private readonly RoomRow any;
    private readonly int[] days;
    private readonly int[] noiseStops;

    /// <summary>For one problem and its shop.</summary>
    public CutShortWork(ScheduleProblem problem, ShopFloor floor)
    {
        this.floor = floor;
        terms = problem.Terms;
        (calendar, free) = (problem.Workers[0], floor.Free(0));
        any = new(calendar.Count, RoomRow.Most);
        loud = new(calendar, free);
        days = [.. calendar.Day];
        noiseStops = [.. Enumerable.Range(0, calendar.Count).Select(calendar.NoiseStopsAt)];
    }

    /// <summary>Begins anew.</summary>
    public void Reset() => loud.Reset();

    /// <summary>Places work.</summary>
    /// <param name="item">The task.</param>
    /// <param name="ready">The first minute in which it may begin.</param>
    /// <param name="work">Its minutes.</param>
    /// <param name="startBy">The minute before which its first stretch must begin.</param>
    /// <param name="lastEnd">When its first stretch must end.</param>
    /// <param name="into">Receives its stretches.</param>
    /// <returns>Its end; below 0 when it finds no place, or its first stretch begins or ends too late.</returns>
    public int Place(in LoneTask item, int ready, int work, int startBy, int lastEnd, Schedule into)
    {
        unchecked
        {
            ref readonly var task = ref terms[item.Task];
            var heavy = (item.Needs & TaskNeeds.Heavy) != 0 ? floor.Heavy(0) : null;
            var isLoud = (item.Needs & TaskNeeds.Quiet) != 0;
            var also = heavy is not null ? heavy.Room : isLoud ? loud.Most : any;
            var bars = floor.Bars;
            var (minute, left) = (ready, work);
            var session = calendar.SessionAbout(ready);
            var view = free.View;
            while (true)
            {
                var least = item.LeastOf(left);
                if (!view.TryNext(also, session, minute, item.Key, least, out var found))
                {
                    return NoPlace;
                }

                session = found.Session;
                var (start, end) = (found.From, found.To);
                var cuts = bars[session] & item.Needs;
                if ((cuts & TaskNeeds.Quiet) != 0)
                {
                    if (loud.Most[session] < least)
                    {
                        session++;
                        continue;
                    }

                    if (noiseStops[session] >= 0)
                    {
                        // Behind it there is no minute for noise in the session.
                        end = Math.Min(end, noiseStops[session]);
                        cuts &= ~TaskNeeds.Quiet;
                        if (end - start < least)
                        {
                            loud.Look(session);
                            session++;
                            continue;
                        }
                    }
                }

                if (cuts != 0 && !Cut(task, session, ref start, ref end))
                {
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

                end = start + item.WorkIn(room, left);
                if (start >= startBy || end > lastEnd)
                {
                    return NoPlace;
                }

                (startBy, lastEnd) = (LoneTask.Whole, LoneTask.Whole);
                if (view.TryTakeFirst(session, start, end, item.Key, out var turns))
                {
                    free.Changeovers += turns;
                }
                else
                {
                    free.Take(start, end, item.Key, session, found.Gap, found.Previous);
                    view = free.View;
                }

                heavy?.Take(session, end - start);
                if ((item.Needs & TaskNeeds.WhileWorked) != 0)
                {
                    floor.TakeWhileWorked(item.Needs, item.Place, start, end);
                }

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

    [MethodImpl(MethodImplOptions.NoInlining)]
    private bool Cut(in TaskTerms task, int session, ref int start, ref int end)
    {
        var isLeft = floor.Cut(0, task, session, ref start, ref end);
        if (!isLeft && (task.Needs & TaskNeeds.Quiet) != 0)
        {
            loud.Look(session);
        }

        return isLeft;
    }
}
