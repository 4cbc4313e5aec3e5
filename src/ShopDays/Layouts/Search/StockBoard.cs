using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>A board as the search sees it: its usable place, its flaws, and what timber and sawing are worth in it.</summary>
internal sealed class StockBoard
{
    private readonly SawingRates rates;
    private readonly double moneyPerHour;
    private readonly Allowances allowances;
    private readonly Region[] flaws;
    private readonly double[] setups;
    private readonly double[] perMetre;

    public StockBoard(Board board, LayoutRequest request)
    {
        Board = board;
        (allowances, rates) = (request.Allowances, request.Rates);
        moneyPerHour = request.Worth.JudgedPerHour;
        Kerf = allowances.Kerf;
        Whole = Region.Whole(board);
        Usable = Region.Usable(board, allowances);
        flaws = [.. board.Flaws.Select(Region.Of).Where(Usable.Overlaps).OrderBy(flaw => flaw.Y)];
        Depth = board.Thickness - allowances.PlaningDepth(board);
        Value = board.Price is { } price ? (double)price.Amount : (double)request.Worth.BoardFoot.Amount * board.Volume.BoardFeet;
        ValuePerArea = Usable.IsEmpty ? 0 : Value / Usable.Area.SquareMillimetres;
        setups = [.. Enum.GetValues<CutKind>().Select(kind => rates.For(kind).Setup.Minutes)];
        perMetre = [.. Enum.GetValues<CutKind>().Select(kind =>
            rates.For(kind).TimeFor(Length.FromMillimetres(1000m), board.Thickness, board.Species).Minutes - rates.For(kind).Setup.Minutes)];
    }

    public Board Board { get; }

    public Length Kerf { get; }

    public Region Whole { get; }

    public Region Usable { get; }

    /// <summary>The flaws that reach into the usable place.</summary>
    public IReadOnlyList<Region> Flaws => flaws;

    /// <summary>Thickness between flat and clean faces.</summary>
    public Length Depth { get; }

    /// <summary>What the board is worth, in money.</summary>
    public double Value { get; }

    /// <summary>What a square millimetre of its usable place is worth.</summary>
    public double ValuePerArea { get; }

    /// <summary>Whether a second edge is straightened too, rather than falling off with the last rip.</summary>
    public bool StraightensBothEdges => Board.Edges == BoardEdges.Live;

    /// <summary>The time of a cut through the board's thickness, in minutes.</summary>
    public double Minutes(CutKind kind, Length length) => setups[(int)kind] + (perMetre[(int)kind] * length.Millimetres / 1000);

    /// <summary>
    /// What a blank costs here beyond the cuts that free it, in money: planing down what is too thick, resawing, and
    /// planing the new faces. Infinite when the board must not yield it.
    /// </summary>
    public double CostOf(Blank blank)
    {
        if (Depth < blank.DepthNeeded(allowances) || !Suits(blank.Part))
        {
            return double.PositiveInfinity;
        }

        var resawing = rates.Resaw.TimeFor(blank.Length, blank.Width, blank.Part.Species) * (blank.Numbers.Count - 1);
        return (PlaningTime(blank) + resawing).Hours * moneyPerHour;
    }

    /// <summary>The time of planing down a blank that the board may yield, and the faces that resawing it leaves.</summary>
    public WorkTime PlaningTime(Blank blank)
    {
        var parts = blank.Numbers.Count;
        var face = blank.Length * blank.Width;
        var spare = Depth - blank.DepthNeeded(allowances);
        var newFace = rates.PlaneDown.TimeFor(face, allowances.RoughFaces / 2, blank.Part.Species);
        return (rates.PlaneDown.TimeFor(face, spare / parts, blank.Part.Species) * parts) + (newFace * (2 * (parts - 1)));
    }

    /// <summary>Whether it is of the right timber, and the maker lets the part come from it.</summary>
    public bool Suits(Part part) => Board.Species == part.Species && part.MayComeFrom(Board);

    /// <summary>Whether the uncut board has a clear place of this size.</summary>
    public bool CanTake(Length length, Length width) => ClearPlaces(Usable, length, width).Count > 0;

    /// <summary>
    /// The places of a size in a free piece that touch no flaw: in its near corner, or hard behind and above flaws, with
    /// at least a kerf before them.
    /// </summary>
    public List<Region> ClearPlaces(Region piece, Length length, Length width)
    {
        var places = new List<Region>();
        ListClearPlaces(piece, length, width, places);
        return places;
    }

    /// <summary>Lists the clear places of a size in a free piece, in a list that may be used again and again.</summary>
    public void ListClearPlaces(Region piece, Length length, Length width, List<Region> places)
    {
        places.Clear();
        if (piece.Length < length || piece.Width < width)
        {
            return;
        }

        if (IsClear(piece))
        {
            places.Add(new Region(piece.X, piece.Y, length, width));
            return;
        }

        for (var behind = -1; behind < flaws.Length; behind++)
        {
            if (behind >= 0 && !flaws[behind].Overlaps(piece))
            {
                continue;
            }

            var x = behind < 0 ? piece.X : Length.Max(flaws[behind].Right, piece.X + Kerf);
            for (var above = -1; above < flaws.Length; above++)
            {
                if (above >= 0 && !flaws[above].Overlaps(piece))
                {
                    continue;
                }

                var y = above < 0 ? piece.Y : Length.Max(flaws[above].Top, piece.Y + Kerf);
                var place = new Region(x, y, length, width);
                if (piece.Holds(place) && IsClear(place))
                {
                    places.Add(place);
                }
            }
        }
    }

    /// <summary>How wide a free piece is, between its flaws, where it is clear over a length.</summary>
    public IEnumerable<Length> ClearWidths(Region piece, Length length)
    {
        if (piece.Length < length)
        {
            return [];
        }

        List<Region> inside = [.. Flaws.Where(piece.Overlaps).OrderBy(flaw => flaw.Y)];
        return inside.Count == 0 ? [piece.Width] :
            from x in inside.Select(flaw => Length.Max(flaw.Right, piece.X + Kerf)).Prepend(piece.X).Distinct()
            where x + length <= piece.Right
            from gap in GapsBetween(inside, piece, x, x + length)
            let width = gap.Y > piece.Y ? gap.Top - Length.Max(gap.Y, piece.Y + Kerf) : gap.Width
            where width > Length.Zero
            select width;
    }

    /// <summary>Whether no flaw reaches into a piece.</summary>
    public bool IsClear(Region piece)
    {
        foreach (var flaw in flaws)
        {
            if (flaw.Overlaps(piece))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The largest clear rectangle in what is left of the board; empty when there is none.</summary>
    public Region LargestClear(Region piece)
    {
        var clear = piece.Common(Usable);
        if (IsClear(clear))
        {
            return clear;
        }

        var largest = default(Region);
        for (var from = -1; from < flaws.Length; from++)
        {
            var x = from < 0 ? clear.X : Length.Max(clear.X, flaws[from].Right);
            for (var to = -1; to < flaws.Length; to++)
            {
                var right = to < 0 ? clear.Right : Length.Min(clear.Right, flaws[to].X);
                if (x < right)
                {
                    largest = LargestGap(clear, x, right, largest);
                }
            }
        }

        return largest;
    }

    /// <summary>What an offcut is worth when kept: nothing when it is too small; one large piece more than two halves.</summary>
    public double ValueOfOffcut(Region piece)
    {
        var clear = LargestClear(piece);
        if (clear.Length < allowances.UsefulLength || clear.Width < allowances.UsefulWidth)
        {
            return 0;
        }

        // From three tenths of its timber's value for a small piece to seven tenths for a whole board (common practice, no source).
        var area = clear.Area.SquareMillimetres;
        return area * ValuePerArea * (0.3 + (0.4 * area / Usable.Area.SquareMillimetres));
    }

    /// <summary>The clear gaps of a stretch of a piece, from edge to edge past the flaws that reach into it.</summary>
    private static IEnumerable<Region> GapsBetween(List<Region> flaws, Region piece, Length x, Length right)
    {
        var y = piece.Y;
        foreach (var flaw in flaws.Where(flaw => flaw.X < right && flaw.Right > x))
        {
            yield return Region.Between(x, y, right, flaw.Y);
            y = Length.Max(y, flaw.Top);
        }

        yield return Region.Between(x, y, right, piece.Top);
    }

    /// <summary>The largest of the clear gaps of a stretch of a piece, from edge to edge past the flaws that reach into it, when larger than another.</summary>
    private Region LargestGap(Region piece, Length x, Length right, Region other)
    {
        var largest = other;
        var y = piece.Y;
        foreach (var flaw in flaws)
        {
            if (flaw.X < right && flaw.Right > x && flaw.Y < piece.Top && flaw.Top > piece.Y)
            {
                Judge(Region.Between(x, y, right, flaw.Y));
                y = Length.Max(y, flaw.Top);
            }
        }

        Judge(Region.Between(x, y, right, piece.Top));
        return largest;

        void Judge(Region gap)
        {
            if (gap.Area > largest.Area)
            {
                largest = gap;
            }
        }
    }
}
