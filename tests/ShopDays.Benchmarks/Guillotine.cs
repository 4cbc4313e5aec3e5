using System.Diagnostics;
using System.Globalization;
using ShopDays.Layouts.Search;
using ShopDays.Tests.Outside;

namespace ShopDays.Benchmarks;

/// <summary>Fills the rectangles of published problems and prints what is found beside the published best values.</summary>
internal static class Guillotine
{
    private const int Runs = 3;

    public static int Print()
    {
        var rows = GuillotineInstance.All().Select(problem => (Problem: problem, Outcome: Run(problem))).ToList();
        var fastest = rows.Min(row => row.Outcome.Seconds);
        Console.WriteLine($"seconds: median of {Runs} runs on one core; ratio: to the fastest of the table");
        Console.WriteLine("problem  size         kinds  limits  published     found  proven   seconds    ratio");
        foreach (var (problem, (value, proven, seconds)) in rows)
        {
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{problem.Name,-7}  {problem.Length + " x " + problem.Width,-11}  {problem.Pieces.Count,5}  {(problem.IsConstrained ? "yes" : "no"),-6}  {problem.Optimum,9}  {value,8}  {(proven ? "yes" : "no"),-6}  {seconds,8:0.0000}  {seconds / fastest,7:0}"));
        }

        return rows.TrueForAll(row => row.Outcome is { Proven: true } && row.Outcome.Value == row.Problem.Optimum) ? 0 : 1;
    }

    private static (double Value, bool Proven, double Seconds) Run(GuillotineInstance problem)
    {
        var outcome = (Value: 0.0, Proven: false);
        Solve(problem);
        var seconds = new double[Runs];
        for (var run = 0; run < Runs; run++)
        {
            var start = Stopwatch.GetTimestamp();
            outcome = Solve(problem);
            seconds[run] = Stopwatch.GetElapsedTime(start).TotalSeconds;
        }

        Array.Sort(seconds);
        return (outcome.Value, outcome.Proven, seconds[Runs / 2]);
    }

    private static (double Value, bool Proven) Solve(GuillotineInstance problem)
    {
        if (problem.IsConstrained)
        {
            var filled = new BoardFill(problem.Length, problem.Width, problem.Pieces).Find(int.MaxValue);
            return (problem.Verify(filled.Filling), filled.IsProven);
        }

        var table = new PieceValues(problem.Length, problem.Width, problem.Pieces);
        return (problem.Verify(table.Cuts(problem.Length, problem.Width)), table.IsExact);
    }
}
