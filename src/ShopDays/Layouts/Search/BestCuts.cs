using ShopDays.Measures;

namespace ShopDays.Layouts.Search;

/// <summary>
/// The cheapest way of cutting some blanks out of a board without flaws: every set of them on either side of every cut at a place
/// where some of them end is gone through, and what was found once is remembered. For few blanks only.
/// </summary>
internal sealed class BestCuts
{
    /// <summary>So many different sets of blanks at most: eight blanks that all differ, more when some are alike.</summary>
    private const int MostSets = 256;

    /// <summary>So many cuts are tried at most; where there would be more, what is there is left as it is.</summary>
    private const int MostTries = 100_000;

    private readonly StockBoard stock;
    private readonly double moneyPerMinute;
    private readonly List<Stack<WantedBlank>> kinds;
    private readonly int[] units;
    private readonly double[] areas;
    private readonly int[]?[] parts;
    private readonly Length[]?[] endsAlong;
    private readonly Length[]?[] endsAcross;
    private readonly Dictionary<(Length Length, Length Width, int Set), Found> known = [];

    private int tries;

    private BestCuts(StockBoard stock, double moneyPerMinute, List<Stack<WantedBlank>> kinds, int sets)
    {
        (this.stock, this.moneyPerMinute, this.kinds) = (stock, moneyPerMinute, kinds);
        units = new int[kinds.Count];
        for (var (kind, unit) = (0, 1); kind < kinds.Count; kind++)
        {
            units[kind] = unit;
            unit *= kinds[kind].Count + 1;
        }

        parts = new int[sets][];
        (endsAlong, endsAcross) = (new Length[sets][], new Length[sets][]);
        areas = new double[sets];
        for (var set = 0; set < sets; set++)
        {
            for (var kind = 0; kind < kinds.Count; kind++)
            {
                areas[set] += Count(set, kind) * kinds[kind].Peek().Area;
            }
        }
    }

    /// <summary>A board cut up anew for less; null when there is nothing cheaper, or too much to go through.</summary>
    public static BoardCutting? For(BoardCutting cutting, LayoutProblem problem, int board)
    {
        var kinds = cutting.Blanks
            .GroupBy(placed => (placed.Blank.Length, placed.Blank.Width))
            .Select(kind => new Stack<WantedBlank>(kind.Select(placed => placed.Blank)))
            .ToList();
        var sets = kinds.Aggregate(1L, (product, kind) => Math.Min(MostSets + 1, product * (kind.Count + 1)));
        if (cutting.Stock.Flaws.Count > 0 || sets > MostSets || cutting.Blanks.Count == 0)
        {
            return null;
        }

        var best = new BestCuts(cutting.Stock, problem.MoneyPerMinute, kinds, (int)sets);
        var usable = cutting.Stock.Usable;
        if (!double.IsFinite(best.Least(usable.Length, usable.Width, (int)sets - 1)) || best.tries > MostTries)
        {
            return null;
        }

        var root = new Piece(usable);
        best.Cut(root, (int)sets - 1);
        var anew = new BoardCutting(cutting.Stock, root);
        return anew.Cost(problem, board) < cutting.Cost(problem, board) ? anew : null;
    }

    private double Least(Length length, Length width, int set)
    {
        if (set == 0)
        {
            return length <= Length.Zero || width <= Length.Zero ? 0 : -stock.ValueOfOffcut(new Region(stock.Usable.X, stock.Usable.Y, length, width));
        }

        if (IsTooMuch(length, width, set) || tries > MostTries)
        {
            return double.PositiveInfinity;
        }

        if (known.TryGetValue((length, width, set), out var before))
        {
            return before.Cost;
        }

        var best = new Found(IsJust(length, width, set) ? 0 : double.PositiveInfinity, default, default, 0);
        foreach (var near in PartsOf(set))
        {
            Try(CutKind.Crosscut, near, EndsAlong(near), length, width);
            Try(CutKind.Rip, near, EndsAcross(near), width, length);
        }

        known[(length, width, set)] = best;
        return best.Cost;

        void Try(CutKind kind, int near, Length[] ends, Length room, Length across)
        {
            var sawing = stock.Minutes(kind, across) * moneyPerMinute;
            foreach (var at in ends)
            {
                if (at >= room)
                {
                    break;
                }

                tries++;
                var rest = room - at - stock.Kerf;
                var cost = kind == CutKind.Crosscut
                    ? sawing + Least(at, width, near) + Least(rest, width, set - near)
                    : sawing + Least(length, at, near) + Least(length, rest, set - near);
                if (cost < best.Cost)
                {
                    best = new Found(cost, kind, at, near);
                }
            }
        }
    }

    private void Cut(Piece piece, int set)
    {
        if (set == 0)
        {
            return;
        }

        var found = known[(piece.Region.Length, piece.Region.Width, set)];
        if (found.Near == 0)
        {
            piece.Blank = kinds[Array.IndexOf(units, set)].Pop();
            return;
        }

        if (found.Kind == CutKind.Crosscut)
        {
            piece.Crosscut(piece.Region.X + found.At, stock.Kerf);
        }
        else
        {
            piece.Rip(piece.Region.Y + found.At, stock.Kerf);
        }

        Cut(piece.Near!, found.Near);
        if (piece.Far is { } far)
        {
            Cut(far, set - found.Near);
        }
    }

    private bool IsJust(Length length, Length width, int set) =>
        Array.IndexOf(units, set) is >= 0 and var kind && kinds[kind].Peek().Length == length && kinds[kind].Peek().Width == width;

    /// <summary>Whether a set has no room, by its area and its longest and widest blank. A hair of slack: areas are sums.</summary>
    private bool IsTooMuch(Length length, Length width, int set)
    {
        if (length <= Length.Zero || width <= Length.Zero || areas[set] > (length * width).SquareMillimetres * (1 + 1e-9))
        {
            return true;
        }

        for (var kind = 0; kind < kinds.Count; kind++)
        {
            if (Count(set, kind) > 0 && (kinds[kind].Peek().Length > length || kinds[kind].Peek().Width > width))
            {
                return true;
            }
        }

        return false;
    }

    private int Count(int set, int kind) => set / units[kind] % (kinds[kind].Count + 1);

    /// <summary>The sets within a set, itself too, none empty.</summary>
    private int[] PartsOf(int set) => parts[set] ??= [.. Enumerable.Range(1, set).Where(some => Enumerable.Range(0, kinds.Count).All(kind => Count(some, kind) <= Count(set, kind)))];

    private Length[] EndsAlong(int set) => endsAlong[set] ??= EndsOf(set, blank => blank.Length);

    private Length[] EndsAcross(int set) => endsAcross[set] ??= EndsOf(set, blank => blank.Width);

    /// <summary>Where rows of some of a set end, the nearest first.</summary>
    private Length[] EndsOf(int set, Func<WantedBlank, Length> size)
    {
        var ends = PartsOf(set).Select(some =>
            Enumerable.Range(0, kinds.Count).Aggregate(-stock.Kerf, (sum, kind) => sum + ((size(kinds[kind].Peek()) + stock.Kerf) * Count(some, kind))));
        return [.. ends.Distinct().Order()];
    }

    /// <summary>What is cheapest for a piece and a set; no cut when the set is one blank of just its size.</summary>
    private readonly record struct Found(double Cost, CutKind Kind, Length At, int Near);
}
