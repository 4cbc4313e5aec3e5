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

        Console.WriteLine("60 parts on 12 boards, five jobs: milliseconds and money; after 1 s: how far above the effort's own end");
        Console.WriteLine("job | first ms    money | normal ms    money  after 1 s | thorough ms    money  after 1 s | normal over thorough");
        for (var seed = 1; seed <= 5; seed++)
        {
            var job = FurnitureJobs.Make(60, 12, seed);
            var normal = Run(job);
            var thorough = Run(job with { Effort = LayoutEffort.Thorough });
            Write($"{seed,3} | {normal.First,8:0.0} {normal.FirstCost,8:0.00} | {normal.Total,9:0} {normal.Last,8:0.00} {Above(normal.CostAfter(1000), normal.Last),10} | {thorough.Total,11:0} {thorough.Last,8:0.00} {Above(thorough.CostAfter(1000), thorough.Last),10} | {Above(normal.Last, thorough.Last),20}");
            if (normal.Left + thorough.Left > 0)
            {
                throw new InvalidOperationException("a part has no place: the job is no measure");
            }
        }

        Console.WriteLine("growth, with the ratio to the row above");
        Console.WriteLine("parts boards | first ms | quick ms    ratio    money boards | normal ms    ratio    money boards");
        var above = (Quick: 0.0, Normal: 0.0);
        foreach (var parts in (int[])[20, 50, 100, 200, 400])
        {
            var job = FurnitureJobs.Make(parts, parts / 5, 7);
            var quick = Run(job with { Effort = LayoutEffort.Quick });
            var normal = Run(job);
            Write($"{parts,5} {parts / 5,6} | {quick.First,8:0.0} | {quick.Total,8:0} {Ratio(quick.Total, above.Quick),8} {quick.Last,8:0.00} {quick.Boards,6} | {normal.Total,9:0} {Ratio(normal.Total, above.Normal),8} {normal.Last,8:0.00} {normal.Boards,6}");
            above = (quick.Total, normal.Total);
        }

        using var process = Process.GetCurrentProcess();
        Write($"memory: peak working set {process.PeakWorkingSet64 / 1e6:0} MB, managed heap now {GC.GetTotalMemory(forceFullCollection: false) / 1e6:0} MB");
        return 0;
    }

    private static string Above(double cost, double best) => (cost / best - 1).ToString("0.00%", CultureInfo.InvariantCulture);

    private static string Ratio(double time, double before) => before == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{time / before:0.0}");

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

        public void Report(LayoutStep value) => steps.Add((watch.Elapsed.TotalMilliseconds, value));

        public double CostAfter(double milliseconds) => steps.Last(step => step.Milliseconds <= Math.Max(milliseconds, First)).Step.Cost;

        public void End(Layout layout)
        {
            Total = watch.Elapsed.TotalMilliseconds;
            Boards = layout.Boards.Count;
        }
    }
}
