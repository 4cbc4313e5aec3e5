using System.Diagnostics;
using System.Globalization;
using ShopDays.Layouts;
using ShopDays.Layouts.Search;

namespace ShopDays.Benchmarks;

/// <summary>How near the bounds in yield and money come to layouts of jobs of several sizes, and how long they take.</summary>
internal static class Bounds
{
    private const int Runs = 3;

    public static int Print()
    {
        Console.WriteLine($"milliseconds: least of {Runs} runs");
        Console.WriteLine("parts  boards  seed   yield  at best      ms       cost   at least  share      ms");
        foreach (var (parts, boards, seed) in ((int, int, int)[])[(60, 12, 1), (60, 12, 2), (60, 12, 3), (20, 4, 7), (50, 10, 7), (100, 20, 7), (200, 40, 7), (400, 80, 7)])
        {
            var job = FurnitureJobs.Make(parts, boards, seed) with { Effort = LayoutEffort.Quick };
            var problem = new LayoutProblem(job, [.. job.Parts.Select(part => Demand.For(part, []))], PanelStrips.Usual());
            var layout = LayoutSearch.LayOut(job);
            var bound = new LayoutBound(problem, job.Allowances, layout.Boards);
            var (best, forYield) = Timed(bound.BestYield);
            var (least, forMoney) = Timed(() => bound.LeastMoney((double)job.Worth.Hour.Amount / 60));
            var cost = (double)layout.Cost.Total.Amount;
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{parts,5}  {boards,6}  {seed,4}  {layout.Yield,6:0.0%}  {best,7:0.0%}  {forYield,6:0}  {cost,9:0.00}  {least,9:0.00}  {least / cost,5:0.0%}  {forMoney,6:0}"));
        }

        return 0;
    }

    private static (double Value, double Milliseconds) Timed(Func<double> bound)
    {
        var (value, least) = (0.0, double.PositiveInfinity);
        for (var run = 0; run < Runs; run++)
        {
            var start = Stopwatch.GetTimestamp();
            value = bound();
            least = Math.Min(least, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        return (value, least);
    }
}
