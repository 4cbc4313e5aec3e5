using System.Diagnostics;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Benchmarks;

/// <summary>
/// Sticks of 1,000 units that are filled exactly by three pieces each, by the recipe of E. Falkenauer (Journal of
/// Heuristics 2 (1996) 5-30, from memory): the fewest sticks are known by construction.
/// </summary>
internal static class TripletSticks
{
    private const int Instances = 20;

    /// <summary>So many sticks more than needed lie there, so that one too many is seen as such.</summary>
    private const int Plenty = 3;

    public static int Print()
    {
        Run(Make(60, 1, 1, 0));
        Console.WriteLine("triplets: pieces, step, kerf; at the optimum, one over, worse; milliseconds on average and at most");
        foreach (var (step, kerf) in ((decimal, decimal)[])[(1, 0), (0.1m, 0), (0.001m, 0), (1, 3)])
        {
            foreach (var pieces in (int[])[60, 120, 249])
            {
                var over = new int[3];
                var times = new List<double>();
                for (var seed = 1; seed <= Instances; seed++)
                {
                    var watch = Stopwatch.StartNew();
                    var sticks = Run(Make(pieces, seed, step, kerf));
                    times.Add(watch.Elapsed.TotalMilliseconds);
                    over[Math.Clamp(sticks - (pieces / 3), 0, 2)]++;
                }

                Console.WriteLine(FormattableString.Invariant(
                    $"  {pieces,3} pieces, step {step,5}, kerf {kerf}: {over[0],2} {over[1],2} {over[2],2}   {times.Average(),6:0} {times.Max(),6:0}"));
            }
        }

        return 0;
    }

    private static int Run(LayoutRequest request) => LayoutSearch.LayOut(request) is { Fits: true } layout ? layout.Boards.Count : int.MaxValue;

    private static LayoutRequest Make(int pieces, int seed, decimal step, decimal kerf)
    {
        var chance = new Random(seed);
        var lengths = new List<decimal>();
        for (var stick = 0; stick < pieces / 3; stick++)
        {
            // Every piece from a quarter to half a stick, so that no stick holds four.
            var first = Draw(380, 490);
            var rest = 1000 - first;
            var second = Draw(250, rest / 2);
            lengths.AddRange([first, second, rest - second]);
        }

        var shuffled = lengths.ToArray();
        chance.Shuffle(shuffled);
        return new LayoutRequest
        {
            Boards =
            [
                .. Enumerable.Range(1, (pieces / 3) + Plenty).Select(number => new Board
                {
                    Name = FormattableString.Invariant($"S{number}"),
                    Line = "S",
                    Species = FurnitureJobs.Oak,
                    Length = Length.FromMillimetres(1000 + (2 * kerf)),
                    Width = Length.FromMillimetres(50m),
                    Thickness = Length.FromMillimetres(25m),
                    Edges = BoardEdges.Straight,
                    Faces = BoardFaces.Planed,
                }),
            ],
            Parts =
            [
                .. shuffled.Select((length, index) => new Part
                {
                    Name = FormattableString.Invariant($"piece {index + 1}"),
                    Species = FurnitureJobs.Oak,
                    Length = Length.FromMillimetres(length),
                    Width = Length.FromMillimetres(50m),
                    Thickness = Length.FromMillimetres(25m),
                }),
            ],
            Allowances = new Allowances { Kerf = Length.FromMillimetres(kerf), Length = Length.Zero, Width = Length.Zero },
            Rates = FurnitureJobs.Rates,
            Seed = seed,
        };

        decimal Draw(decimal from, decimal to) => from + (chance.Next((int)((to - from) / step) + 1) * step);
    }
}
