using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Benchmarks;

/// <summary>Jobs of any size made by a seed: furniture parts, several of them alike, on boards of mixed sizes and prices.</summary>
internal static class FurnitureJobs
{
    private static readonly Currency Dollars = new("USD", 2);

    /// <summary>Near common practice for hand work; the times need them plausible, not exact.</summary>
    public static SawingRates Rates { get; } = new()
    {
        Straighten = new CutRate(WorkTime.FromMinutes(4), WorkTime.FromMinutes(3), 1.1, 0.5),
        Rip = new CutRate(WorkTime.FromMinutes(3), WorkTime.FromMinutes(3), 1.1, 0.5),
        Crosscut = new CutRate(WorkTime.FromMinutes(2), WorkTime.FromMinutes(4), 1.1, 0.5),
        Resaw = new CutRate(WorkTime.FromMinutes(5), WorkTime.FromMinutes(4), 1.1, 0.5),
        PlaneDown = new PlaneRate(WorkTime.FromMinutes(60), 0.8, 0.5),
        HourlyRate = new Money(48, Dollars),
    };

    public static Species Oak { get; } = new()
    {
        Name = "oak",
        BotanicalName = "Quercus",
        Kind = SpeciesKind.Hardwood,
        GreenSpecificGravity = 0.6,
        SpecificGravityAt12 = 0.68,
        DensityAt12 = 755,
        HardnessPoundsForce = 1360,
        RadialShrinkage = 5.6,
        TangentialShrinkage = 10.5,
        VolumetricShrinkage = 16.3,
        GravitySource = "benchmark",
        HardnessSource = "benchmark",
        ShrinkageSource = "benchmark",
    };

    /// <summary>So many parts on so many boards, which fill about seven tenths of them when there are five parts a board.</summary>
    public static LayoutRequest Make(int parts, int boards, int seed)
    {
        var chance = new Random(seed);
        return new LayoutRequest
        {
            Boards = Stock(boards, chance),
            Parts = Wanted(parts, chance),
            Allowances = new Allowances(),
            Rates = Rates,
            Seed = seed,
        };
    }

    private static List<Board> Stock(int count, Random chance)
    {
        var stock = new List<Board>();
        while (stock.Count < count)
        {
            var line = FormattableString.Invariant($"L{stock.Count}");
            var length = 12 * chance.Next(7, 13);
            var width = 6.5m + (chance.Next(0, 13) / 2m);
            var price = Math.Round((5 + chance.Next(0, 5)) * length * width * 1.25m / 144, 2, MidpointRounding.ToEven);
            var edges = chance.Next(3) switch { 0 => BoardEdges.Live, 1 => BoardEdges.RoughSawn, _ => BoardEdges.Straight };
            for (var like = chance.Next(1, 5); like > 0 && stock.Count < count; like--)
            {
                stock.Add(new Board
                {
                    Name = FormattableString.Invariant($"B{stock.Count + 1}"),
                    Line = line,
                    Species = Oak,
                    Length = Length.FromInches((decimal)length),
                    Width = Length.FromInches(width),
                    Thickness = Length.FromInches(1.25m),
                    Edges = edges,
                    EndTrim = Length.FromInches(1m),
                    Price = new Money(price, Dollars),
                    Flaws = chance.Next(4) == 0 ? [AFlaw(length, chance)] : [],
                });
            }
        }

        return stock;
    }

    private static Flaw AFlaw(int length, Random chance)
    {
        var from = chance.Next(6, length - 12);
        return new Flaw(Length.FromInches((decimal)from), Length.FromInches(from + 3m), Length.FromInches(0m), Length.FromInches(2m));
    }

    private static List<Part> Wanted(int count, Random chance)
    {
        var wanted = new List<Part>();
        while (count > 0)
        {
            // Legs, rails, shelves, drawer sides, slats: how many are alike, and how long and wide, in inches.
            var (most, shortest, longest, narrowest, widest) = chance.Next(5) switch
            {
                0 => (4, 16, 32, 2m, 3m),
                1 => (4, 18, 50, 2.5m, 4m),
                2 => (3, 24, 44, 5m, 7.5m),
                3 => (4, 12, 22, 3m, 6m),
                _ => (8, 14, 40, 1.5m, 2.5m),
            };
            var alike = Math.Min(count, chance.Next(1, most + 1));
            wanted.Add(new Part
            {
                Name = FormattableString.Invariant($"part {wanted.Count + 1}"),
                Count = alike,
                Species = Oak,
                Length = Length.FromInches(chance.Next(shortest * 4, (longest * 4) + 1) / 4m),
                Width = Length.FromInches(narrowest + (chance.Next(0, (int)((widest - narrowest) * 8) + 1) / 8m)),
                Thickness = Length.FromInches(chance.Next(3) == 0 ? 0.75m : 0.875m),
            });
            count -= alike;
        }

        return wanted;
    }
}
