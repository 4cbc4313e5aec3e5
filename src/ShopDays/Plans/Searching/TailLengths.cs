using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>
/// How much must still follow each task before the job is finished: the longest way of waits and work to the end, its
/// own work included, in clock minutes as far as they can be known beforehand.
/// </summary>
internal static class TailLengths
{
    /// <summary>The tail of each task.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="clockPerWork">Clock minutes that go by for a minute of work, 0 to count waits only.</param>
    public static double[] Of(ScheduleProblem problem, double clockPerWork)
    {
        var tails = new double[problem.Tasks.Length];
        foreach (var task in problem.InOrder.Reverse())
        {
            double follows = problem.Tasks[task].WaitAtEnd;
            foreach (var one in problem.After(task))
            {
                follows = Math.Max(follows, one.Lag + tails[one.After]);
            }

            var scale = problem.Tasks[task].Crew == 0 && clockPerWork > 0 ? 1 : clockPerWork;
            tails[task] = follows + (scale * problem.Minutes[task]);
        }

        return tails;
    }

    /// <summary>Clock minutes that go by for each minute in which some worker is there, on average.</summary>
    public static double ClockPerWork(ScheduleProblem problem)
    {
        long open = 0;
        var end = 0;
        foreach (var worker in problem.Workers)
        {
            for (var session = 0; session < worker.Count; session++)
            {
                open += worker.To[session] - worker.From[session];
            }

            if (worker.Count > 0)
            {
                end = Math.Max(end, worker.To[^1]);
            }
        }

        return open == 0 ? 1 : Math.Max(1, (double)end / open);
    }
}
