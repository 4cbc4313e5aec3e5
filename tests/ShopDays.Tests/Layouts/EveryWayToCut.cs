using ShopDays.Layouts;
using ShopDays.Layouts.Search;
using ShopDays.Measures;

namespace ShopDays.Tests.Layouts;

/// <summary>
/// The least that any way of cutting some boards can cost, found by going through them all: every set of blanks for either
/// side of every cut at a place where some of them end. Slow and plain; for planed boards with straight edges and no flaws.
/// </summary>
internal sealed class EveryWayToCut(LayoutRequest request)
{
    private readonly int[] counts = [.. request.Parts.Select(part => part.Count)];
    private readonly Length kerf = request.Allowances.Kerf;
    private readonly Dictionary<(Length, Length, int), double> known = [];

    /// <summary>The least money for all parts; infinite when they do not come out.</summary>
    public double LeastMoney() => Least(0, Whole);

    private int Whole => Code(counts);

    private double Least(int board, int wanted)
    {
        if (wanted == 0 || board == request.Boards.Count)
        {
            return wanted == 0 ? 0 : double.PositiveInfinity;
        }

        var stock = new StockBoard(request.Boards[board], request);
        known.Clear();
        var here = Subsets(wanted).ToDictionary(some => some, some => some == 0 ? 0 : stock.Value + Cut(stock, stock.Usable.Length, stock.Usable.Width, some));
        return here.Min(some => some.Value + Least(board + 1, wanted - some.Key));
    }

    private double Cut(StockBoard stock, Length length, Length width, int wanted)
    {
        if (wanted == 0)
        {
            return length <= Length.Zero || width <= Length.Zero ? 0 : -stock.ValueOfOffcut(new Region(stock.Usable.X, stock.Usable.Y, length, width));
        }

        if (length <= Length.Zero || width <= Length.Zero || IsTooMuch(length, width, wanted))
        {
            return double.PositiveInfinity;
        }

        if (known.TryGetValue((length, width, wanted), out var before))
        {
            return before;
        }

        var least = IsJust(length, width, wanted) ? 0 : double.PositiveInfinity;
        foreach (var near in Subsets(wanted).Where(some => some > 0))
        {
            foreach (var at in Ends(near, part => part.Length).Where(at => at < length))
            {
                var sawing = stock.Minutes(CutKind.Crosscut, width) * request.Worth.JudgedPerMinute;
                least = Math.Min(least, sawing + Cut(stock, at, width, near) + Cut(stock, length - at - kerf, width, wanted - near));
            }

            foreach (var at in Ends(near, part => part.Width).Where(at => at < width))
            {
                var sawing = stock.Minutes(CutKind.Rip, length) * request.Worth.JudgedPerMinute;
                least = Math.Min(least, sawing + Cut(stock, length, at, near) + Cut(stock, length, width - at - kerf, wanted - near));
            }
        }

        known[(length, width, wanted)] = least;
        return least;
    }

    private bool IsJust(Length length, Length width, int wanted) =>
        Enumerable.Range(0, counts.Length).Any(kind => wanted == Unit(kind) && request.Parts[kind].Length == length && request.Parts[kind].Width == width);

    private bool IsTooMuch(Length length, Length width, int wanted)
    {
        var area = 0.0;
        for (var kind = 0; kind < counts.Length; kind++)
        {
            var part = request.Parts[kind];
            var count = Count(wanted, kind);
            if (count > 0 && (part.Length > length || part.Width > width))
            {
                return true;
            }

            area += count * (part.Length * part.Width).SquareMillimetres;
        }

        // A hair of slack: areas are sums of doubles.
        return area > (length * width).SquareMillimetres * (1 + 1e-9);
    }

    /// <summary>Where a row of some of these blanks ends.</summary>
    private IEnumerable<Length> Ends(int wanted, Func<ShopDays.Parts.Part, Length> size) => Subsets(wanted)
        .Where(some => some > 0)
        .Select(some => Enumerable.Range(0, counts.Length).Aggregate(-kerf, (sum, kind) => sum + ((size(request.Parts[kind]) + kerf) * Count(some, kind))))
        .Distinct();

    private IEnumerable<int> Subsets(int wanted) => Enumerable.Range(0, wanted + 1).Where(some => Enumerable.Range(0, counts.Length).All(kind => Count(some, kind) <= Count(wanted, kind)));

    private int Code(int[] some) => Enumerable.Range(0, some.Length).Sum(kind => some[kind] * Unit(kind));

    private int Unit(int kind) => counts.Take(kind).Aggregate(1, (product, count) => product * (count + 1));

    private int Count(int some, int kind) => some / Unit(kind) % (counts[kind] + 1);
}
