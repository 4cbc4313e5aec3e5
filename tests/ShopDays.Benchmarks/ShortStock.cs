using System.Diagnostics;
using System.Globalization;
using ShopDays.Layouts;

namespace ShopDays.Benchmarks;

/// <summary>How long the answer takes when the stock is far short, and what it comes to.</summary>
internal static class ShortStock
{
    private const int Runs = 3;

    public static int Print()
    {
        Console.WriteLine("parts boards effort   left wanted  board ft  seconds (least of 3)");
        foreach (var (parts, boards) in new[] { (60, 6), (200, 14), (400, 28) })
        {
            foreach (var effort in new[] { LayoutEffort.Quick, LayoutEffort.Normal })
            {
                var request = FurnitureJobs.Make(parts, boards, seed: 1) with { Effort = effort };
                var least = TimeSpan.MaxValue;
                Layout? layout = null;
                for (var run = 0; run < Runs; run++)
                {
                    var clock = Stopwatch.StartNew();
                    layout = LayoutSearch.LayOut(request);
                    least = clock.Elapsed < least ? clock.Elapsed : least;
                }

                Console.WriteLine(string.Create(
                    CultureInfo.InvariantCulture,
                    $"{parts,5} {boards,6} {effort,-8} {layout!.Unplaced.Count,4} {layout.Wanted.Sum(wanted => wanted.Count),6} {layout.Wanted.Sum(wanted => wanted.Volume.BoardFeet),9:0.0} {least.TotalSeconds,8:0.00}"));
            }
        }

        return 0;
    }
}
