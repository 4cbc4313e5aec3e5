using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>
/// Leaves out days on which somebody beside the first worker is called in: a schedule does everything as early as it can,
/// and would have a helper come for a short coat today though there is time for it on the next visit. A day is left out
/// where nothing that weighs more is lost by it.
/// </summary>
internal static class FewerVisits
{
    /// <summary>Days that are tried, those with the least work first: who is there every day is not called in.</summary>
    private const int MostTried = 40;

    /// <summary>The problem without the hours of the days that are left out, and its schedule; the same as were given where none can be.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="order">An order of its blocks.</param>
    /// <param name="plan">The schedule of that order.</param>
    public static (ScheduleProblem Problem, Schedule Plan) Of(ScheduleProblem problem, int[] order, Schedule plan)
    {
        var found = (Problem: problem, Plan: plan);
        var left = new HashSet<int>();
        foreach (var day in DaysOf(plan).Take(MostTried))
        {
            left.Add(day);
            var fewer = Changed.Workers(problem, [problem.Workers[0], .. problem.Workers.Skip(1).Select(worker => worker.Without(left))]);
            var trial = new Schedule(problem.Tasks.Length, problem.Orders.Length);
            if (new ScheduleGenerator(fewer).Generate(order, problem.Minutes.AsSpan(), trial) && trial.Score < found.Plan.Score)
            {
                found = (fewer, trial);
            }
            else
            {
                left.Remove(day);
            }
        }

        return found;
    }

    private static IEnumerable<int> DaysOf(Schedule plan) => plan.Pieces.ToArray()
        .Where(piece => piece.Worker > 0)
        .GroupBy(piece => piece.Day)
        .OrderBy(day => day.Sum(piece => piece.To - piece.From))
        .ThenBy(day => day.Key)
        .Select(day => day.Key);
}
