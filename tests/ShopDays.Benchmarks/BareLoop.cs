using ShopDays.Plans.Scheduling;

namespace ShopDays.Benchmarks;

/// <summary>
/// The least that any schedule over a calendar costs: tasks one after another in their order, each after what comes before
/// it and its waits, in sessions, some in one stretch; nothing goes back into a gap. A yardstick for other machines.
/// </summary>
internal sealed class BareLoop(ScheduleProblem problem)
{
    private readonly int[] ends = new int[problem.Tasks.Length];
    private readonly int[] from = problem.Workers[0].From.ToArray();
    private readonly int[] to = problem.Workers[0].To.ToArray();

    /// <summary>Does the work.</summary>
    /// <returns>The end of the last task.</returns>
    public int Run(ReadOnlySpan<int> order, ReadOnlySpan<int> minutes)
    {
        var (session, clock, last) = (0, 0, 0);
        foreach (var block in order)
        {
            var task = problem.OnlyMember(block);
            foreach (ref readonly var one in problem.Before(task))
            {
                clock = Math.Max(clock, ends[one.Before] + one.Lag);
            }

            var left = minutes[task];
            while (left > 0 && session < to.Length)
            {
                clock = Math.Max(clock, from[session]);
                var room = to[session] - clock;
                if (room < (problem.Terms[task].IsSplittable ? 1 : left))
                {
                    session++;
                    continue;
                }

                var work = Math.Min(room, left);
                left -= work;
                clock += work;
            }

            ends[task] = clock;
            last = Math.Max(last, clock);
        }

        return last;
    }
}
