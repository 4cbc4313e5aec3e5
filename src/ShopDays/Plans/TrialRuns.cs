using ShopDays.Plans.Scheduling;
using ShopDays.Times;

namespace ShopDays.Plans;

/// <summary>
/// Makes the schedules of many trials on all cores. A trial depends on nothing but its own times, so that it does not
/// matter on which core, or when, it is run.
/// </summary>
internal static class TrialRuns
{
    /// <summary>Trials that a core takes at a time, so that none is left waiting for another at the end.</summary>
    private const int AtATime = 32;

    /// <summary>Runs trials.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="order">The order of work.</param>
    /// <param name="trials">The numbers of the trials.</param>
    /// <param name="write">Writes the minutes of each task in a trial; called for several trials at the same time.</param>
    /// <param name="see">
    /// Receives a trial, its schedule, which is used again afterwards, and whether everything was placed. Called for one
    /// trial after another, in any order.
    /// </param>
    public static void Run(ScheduleProblem problem, int[] order, IReadOnlyList<int> trials, Action<int, int[]> write, Action<int, Schedule, bool> see)
    {
        var next = 0;
        var gate = new Lock();
        Parallel.For(0, Math.Clamp(trials.Count / AtATime, 1, Environment.ProcessorCount), Cores.OfTheCaller, _ =>
        {
            var generator = new ScheduleGenerator(problem);
            var schedule = new Schedule(problem.Tasks.Length, problem.Orders.Length);
            var minutes = new int[problem.Tasks.Length];
            for (var begin = Interlocked.Add(ref next, AtATime) - AtATime; begin < trials.Count; begin = Interlocked.Add(ref next, AtATime) - AtATime)
            {
                for (var index = begin; index < Math.Min(trials.Count, begin + AtATime); index++)
                {
                    write(trials[index], minutes);
                    var placed = generator.Generate(order, minutes, schedule, mayRunOver: true);
                    lock (gate)
                    {
                        see(trials[index], schedule, placed);
                    }
                }
            }
        });
    }
}
