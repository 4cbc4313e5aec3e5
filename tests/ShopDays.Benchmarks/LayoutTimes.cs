using System.Diagnostics;
using System.Globalization;
using ShopDays.Layouts;

namespace ShopDays.Benchmarks;

/// <summary>How soon a layout is there, how good it is after a while, how time grows with the job, and what memory it takes.</summary>
internal static class LayoutTimes
{
    public static int Print()
    {
        // The first runs are slow while the code is made ready for the machine; they are not counted.
        for (var warm = 0; warm < 3; warm++)
        {
            Run(FurnitureJobs.Make(60, 12, 99) with { Effort = LayoutEffort.Quick });
        }

        Console.WriteLine("60 parts on 12 boards, five jobs: first answer, money after 1 s and at the end, above the best known");
        for (var seed = 1; seed <= 5; seed++)
        {
            var job = FurnitureJobs.Make(60, 12, seed);
            var normal = Run(job);
            var thorough = Run(job with { Effort = LayoutEffort.Thorough });
            var best = Math.Min(normal.Last, thorough.Last);
            Write($"  job {seed}: first {normal.First:0.0} ms, {normal.FirstCost:0.00}; normal {normal.Last:0.00} in {normal.Total:0} ms, {normal.Boards} boards, {normal.Minutes:0} min; thorough {thorough.Last:0.00} in {thorough.Total:0} ms, {thorough.Boards} boards, {thorough.Minutes:0} min");
            Write($"         above the best: first {Above(normal.FirstCost, best)}, normal {Above(normal.Last, best)}, thorough after 1 s {Above(thorough.CostAfter(1000), best)}; left {normal.Left}, {thorough.Left}");
        }

        Console.WriteLine("growth: parts on boards, first answer, quick and normal, ratio to the row above, money and boards");
        var above = (Quick: 0.0, Normal: 0.0);
        foreach (var parts in (int[])[20, 50, 100, 200, 400])
        {
            var job = FurnitureJobs.Make(parts, parts / 5, 7);
            var quick = Run(job with { Effort = LayoutEffort.Quick });
            var normal = Run(job);
            Write($"  {parts,3} on {parts / 5,2}: first {quick.First,6:0.0} ms; quick {quick.Total,6:0} ms {Ratio(quick.Total, above.Quick)}, {quick.Last:0.00}, {quick.Boards} boards; normal {normal.Total,6:0} ms {Ratio(normal.Total, above.Normal)}, {normal.Last:0.00}, {normal.Boards} boards; left {quick.Left}, {normal.Left}");
            above = (quick.Total, normal.Total);
        }

        using var process = Process.GetCurrentProcess();
        Write($"memory: peak working set {process.PeakWorkingSet64 / 1e6:0} MB, managed heap now {GC.GetTotalMemory(forceFullCollection: false) / 1e6:0} MB");
        return 0;
    }

    private static string Above(double cost, double best) => (cost / best - 1).ToString("0.00%", CultureInfo.InvariantCulture);

    private static string Ratio(double time, double before) => before == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"(x{time / before:0.0})");

    private static void Write(FormattableString line) => Console.WriteLine(FormattableString.Invariant(line));

    private static Curve Run(LayoutRequest request)
    {
        var curve = new Curve();
        var layout = LayoutSearch.LayOut(request with { Progress = curve });
        curve.End(layout);
        return curve;
    }

    /// <summary>What a search reports, with the time at which it does.</summary>
    private sealed class Curve : IProgress<LayoutStep>
    {
        private readonly Stopwatch watch = Stopwatch.StartNew();
        private readonly List<(double Milliseconds, LayoutStep Step)> steps = [];

        public double First => steps[0].Milliseconds;

        public double FirstCost => steps[0].Step.Cost;

        public double Last => steps[^1].Step.Cost;

        public int Left => steps[^1].Step.Left;

        public double Total { get; private set; }

        public int Boards { get; private set; }

        public double Minutes { get; private set; }

        public void Report(LayoutStep value) => steps.Add((watch.Elapsed.TotalMilliseconds, value));

        public double CostAfter(double milliseconds) => steps.Last(step => step.Milliseconds <= Math.Max(milliseconds, First)).Step.Cost;

        public void End(Layout layout)
        {
            Total = watch.Elapsed.TotalMilliseconds;
            Boards = layout.Boards.Count;
            Minutes = layout.SawingTime.Minutes;
        }
    }
}
