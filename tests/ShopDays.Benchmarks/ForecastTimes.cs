using System.Diagnostics;
using System.Globalization;
using ShopDays.Plans;

namespace ShopDays.Benchmarks;

/// <summary>How long the schedules of 10,000 courses take on all cores, their times already drawn.</summary>
internal static class ForecastTimes
{
    private const int Trials = 10_000;
    private const int Rounds = 7;

    public static void Print(ScheduleProblem problem, int[] order, int[][] courses)
    {
        int[] trials = [.. Enumerable.Range(0, Trials)];
        var finishes = new int[Trials];
        var least = double.MaxValue;
        for (var round = 0; round < Rounds; round++)
        {
            var watch = Stopwatch.StartNew();
            TrialRuns.Run(
                problem,
                order,
                trials,
                (trial, minutes) => courses[trial % courses.Length].CopyTo(minutes, 0),
                (trial, schedule, _) => finishes[trial] = schedule.Finish);
            least = Math.Min(least, watch.Elapsed.TotalSeconds);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Trials:N0} courses on {Environment.ProcessorCount} cores, drawing left out: {least:0.000} s; limit with the drawing 0.15 s"));
    }
}
