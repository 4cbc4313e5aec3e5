using NodaTime;
using ShopDays.Days;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>What still goes on by itself after work that is done: glue that sets, coats that dry, clamps that stay on.</summary>
internal sealed class EndedWork(TaskGraph whole, JobStanding standing, IReadOnlyList<WorkingCalendar> calendars, Instant from)
{
    private readonly Dictionary<int, Instant> ends = standing.In(TaskState.Done)
        .ToDictionary(one => one.Task.Id, one => EndOf(one.Last!.Value, calendars, from));

    /// <summary>When a task that is done was done.</summary>
    public Instant EndOf(int id) => ends[id];

    /// <summary>Waits that are not over, those after one task for one reason together.</summary>
    /// <param name="places">The place of each task that is left, by its id in the whole job.</param>
    public IReadOnlyList<RunningWait> Running(IReadOnlyDictionary<int, int> places)
    {
        var between = whole.Precedences
            .Where(one => one.Wait is not null && ends.ContainsKey(one.Before) && places.ContainsKey(one.After))
            .Select(one => (Task: one.Before, Wait: one.Wait!, Holds: (int?)places[one.After]));
        var closing = whole.ClosingWaits
            .Where(one => ends.ContainsKey(one.After))
            .Select(one => (Task: one.After, one.Wait, Holds: (int?)null));
        return
        [
            .. between.Concat(closing)
                .GroupBy(one => (one.Task, Reason: SlowedWait.Reason(one.Wait, ends[one.Task].InZone(calendars[0].Place.Zone)), Until: one.Wait.EndFrom(ends[one.Task].InZone(calendars[0].Place.Zone)).ToInstant()))
                .Select(group => new RunningWait(
                    whole.Tasks[group.Key.Task],
                    ends[group.Key.Task],
                    group.Key.Until,
                    group.Key.Reason,
                    [.. group.Select(one => one.Holds).OfType<int>().Distinct()],
                    group.Any(one => one.Holds is null)))
                .Where(wait => wait.Until > from),
        ];
    }

    /// <summary>Clamps, benches and wet coats that are not free yet.</summary>
    public IReadOnlyList<StillHeld> Held()
    {
        // Where what waited is begun, the clamps are off, whatever the clock says.
        var waits = whole.Precedences.Where(one => one.Wait is not null && standing.Tasks[one.After].State == TaskState.ToDo).Select(one => (Task: one.Before, Wait: one.Wait!))
            .Concat(whole.ClosingWaits.Select(one => (Task: one.After, one.Wait)))
            .ToLookup(one => one.Task, one => one.Wait);
        return [.. ends.Keys.Order().Select(id => HeldBy(whole.Tasks[id], waits[id])).Where(held => held is not (_, null, null, null, null))];
    }

    private StillHeld HeldBy(ShopTask task, IEnumerable<Wait> waits)
    {
        var end = ends[task.Id];
        List<Wait> all = [.. waits];
        var dust = new Wait(task.DustFreeAfter, "") { Sets = task.Sets };
        return new(
            task,
            task.Clamps.Count == 0 ? null : After(end, all.Where(wait => wait.HoldsClamps)),
            After(end, all.Where(wait => wait.HoldsBench)),
            After(end, [dust]),
            task.Floor == Area.Zero ? null : After(end, all.Where(wait => wait.HoldsFloor)));
    }

    private Instant? After(Instant end, IEnumerable<Wait> waits)
    {
        var zone = calendars[0].Place.Zone;
        var until = waits.Select(wait => (wait.Sets is null ? end.InZone(zone) + wait.Duration : wait.EndFrom(end.InZone(zone))).ToInstant()).Append(end).Max();
        return until > from ? until : null;
    }

    /// <summary>Of a date without a moment, the end of its last session; without any session, the end of the date. Never later than now.</summary>
    public static Instant EndOf(WorkedOn on, IReadOnlyList<WorkingCalendar> calendars, Instant from)
    {
        if (on.Ended is { } known)
        {
            return Instant.Min(known, from);
        }

        var last = calendars.SelectMany(calendar => calendar.On(on.Date).Sessions).Select(session => session.End.ToInstant());
        return Instant.Min(from, last.DefaultIfEmpty(calendars[0].Place.Zone.AtStartOfDay(on.Date.PlusDays(1)).ToInstant()).Max());
    }
}
