namespace ShopDays.Plans.Scheduling;

/// <summary>
/// Makes schedules of work that all goes on by itself, each task keeping what it holds from its beginning to its end: the
/// classical problem of projects that share some resources. No calendar takes part, so nothing is looked up but minutes.
/// </summary>
internal sealed class ClockPlacer
{
    /// <summary>Beyond so many minutes of work and waits a row with every minute no longer pays.</summary>
    private const int MostMinutes = 1 << 14;

    private readonly Item[] items;
    private readonly Link[] links;
    private readonly ClockRoom room;

    private ClockPlacer(ScheduleProblem problem)
    {
        items = new Item[problem.Blocks];
        var before = new List<Link>();
        for (var block = 0; block < items.Length; block++)
        {
            var id = problem.Members(block)[0];
            var task = problem.Tasks[id];
            var first = before.Count;
            foreach (var one in problem.Before(id))
            {
                before.Add(new(one.Before, one.Lag));
            }

            items[block] = new(id, first, before.Count, task.NotBefore, task.WaitAtStart, task.StartBy, task.WaitAtEnd, NeedsOf(task));
        }

        links = [.. before];
        room = new(problem.Capacities.AsSpan());
    }

    /// <summary>A placer for a problem of that kind, one for each thread; null for any other problem.</summary>
    public static ClockPlacer? For(ScheduleProblem problem) =>
        problem.Capacities.Length <= ClockRoom.Lanes
        && problem.Capacities.All(count => count <= ClockRoom.Most)
        && problem.Blocks == problem.Tasks.Length
        && problem.Orders.Length == 1
        && problem.Standing == ShopStanding.Empty
        && problem.Nights == CompiledNights.None
        && problem.Tasks.All(task => IsSimple(task) && HasEnough(problem, task))
        && problem.Tasks.Sum(task => (long)task.Minutes + task.NotBefore + task.WaitAtStart) + problem.Precedences.Sum(one => (long)one.Lag) <= MostMinutes
            ? new(problem)
            : null;

    /// <summary>Places all tasks.</summary>
    /// <inheritdoc cref="ScheduleGenerator.Generate"/>
    /// <returns>The end of the last task and its wait; <see cref="CompiledCalendar.Never"/> when one could not begin in time.</returns>
    public int Place(ReadOnlySpan<int> order, ReadOnlySpan<int> minutes, Schedule into, bool mayRunOver, int begin)
    {
        room.Reset(begin);
        var (starts, ends) = into.Times;
        var finish = 0;
        foreach (var block in order)
        {
            ref readonly var item = ref items[block];
            var ready = Math.Max(item.NotBefore, begin + item.WaitAtStart);
            foreach (ref readonly var link in links.AsSpan(item.FirstLink, item.EndOfLinks - item.FirstLink))
            {
                ready = Math.Max(ready, ends[link.Before] + link.Lag);
            }

            var length = minutes[item.Task];
            var start = length > 0 && item.Needs != 0 ? room.TakeFrom(item.Needs, ready, length) : ready;
            if (start >= item.StartBy)
            {
                if (!mayRunOver)
                {
                    into.Unplaced = item.Task;
                    return CompiledCalendar.Never;
                }

                into.Overruns++;
            }

            var end = start + length;
            starts[item.Task] = start;
            ends[item.Task] = end;
            finish = Math.Max(finish, end + item.WaitAtEnd);
        }

        return finish;
    }

    private static bool IsSimple(CompiledTask task) =>
        task is { Crew: 0, IsByCalendar: false, Place: < 0, IsDusty: false, WetAfter: 0, WetBefore: 0 }
        && task.Holds.All(hold => hold is { MinutesAfter: 0, MinutesBefore: 0 } && hold.First == hold.Last);

    private static bool HasEnough(ScheduleProblem problem, CompiledTask task) => task.Holds
        .GroupBy(hold => hold.First, hold => hold.Count)
        .All(counts => counts.All(count => count >= 0) && counts.Sum() <= problem.Capacities[counts.Key]);

    private static ulong NeedsOf(CompiledTask task)
    {
        var needs = 0UL;
        foreach (var hold in task.Holds)
        {
            needs += ClockRoom.Lane(hold.First, hold.Count);
        }

        return needs;
    }

    private readonly record struct Item(int Task, int FirstLink, int EndOfLinks, int NotBefore, int WaitAtStart, int StartBy, int WaitAtEnd, ulong Needs);

    private readonly record struct Link(int Before, int Lag);
}
