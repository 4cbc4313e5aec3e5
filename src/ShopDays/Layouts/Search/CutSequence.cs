using ShopDays.Measures;

namespace ShopDays.Layouts.Search;

/// <summary>
/// The cuts of one board in the order in which a maker would saw them: to rough length while that goes right across the
/// board, then section by section the ends and edges that its blanks reach, then rips and shorter crosscuts.
/// </summary>
/// <remarks>
/// Live edges are both straightened. Of rough-sawn edges the first is straightened, to gauge from; the second falls off
/// with the last rip. A section that holds no blank is left as it is.
/// </remarks>
internal sealed class CutSequence
{
    private static readonly List<SawCut> NoCuts = [];
    private static readonly List<Region> NoneLeft = [];
    private static readonly List<(Piece Piece, Region Raw)> NoSections = [];
    private readonly StockBoard stock;
    private readonly bool written;
    private readonly List<SawCut> cuts;
    private readonly List<Region> left;
    private readonly List<(Piece Piece, Region Raw)> sections;

    /// <param name="stock">The board.</param>
    /// <param name="root">How its usable part is cut.</param>
    /// <param name="written">Whether cuts and rests are listed; if not, only their sums are to be had.</param>
    public CutSequence(StockBoard stock, Piece root, bool written = true)
    {
        this.stock = stock;
        this.written = written;
        (cuts, left, sections) = written ? ([], [], []) : (NoCuts, NoneLeft, NoSections);
        CutToSections(root, stock.Whole);
        foreach (var (piece, raw) in sections)
        {
            CutUp(piece, raw);
        }
    }

    /// <summary>Hands-on time of the cuts, in minutes.</summary>
    public double Minutes { get; private set; }

    /// <summary>What the useful offcuts are worth.</summary>
    public double ValueOfOffcuts { get; private set; }

    public IReadOnlyList<SawCut> Cuts => cuts;

    /// <summary>What is left when all blanks are out, waste and offcuts.</summary>
    public IReadOnlyList<Region> Left => left;

    private void CutToSections(Piece piece, Region raw)
    {
        if (piece.Split != CutKind.Crosscut)
        {
            if (written)
            {
                sections.Add((piece, raw));
            }
            else
            {
                CutUp(piece, raw);
            }

            return;
        }

        var rest = piece.Near is { HoldsBlank: true } ? TrimNearEnd(piece, raw) : raw;
        var (near, far) = Saw(CutKind.Crosscut, rest, piece.At);
        Go(piece.Near, near);
        Go(piece.Far, far);

        void Go(Piece? next, Region region)
        {
            if (next is null)
            {
                Leave(region);
            }
            else
            {
                CutToSections(next, region);
            }
        }
    }

    private void CutUp(Piece? piece, Region raw)
    {
        if (piece is null || !piece.HoldsBlank)
        {
            Leave(raw);
            return;
        }

        if (piece.Split == CutKind.Crosscut)
        {
            var (first, second) = Saw(CutKind.Crosscut, raw, piece.At);
            CutUp(piece.Near, first);
            CutUp(piece.Far, second);
            return;
        }

        var square = Square(piece, raw);
        if (piece.Split == CutKind.Rip)
        {
            var (first, second) = Saw(CutKind.Rip, square, piece.At);
            CutUp(piece.Near, first);
            CutUp(piece.Far, second);
        }
        else if (square.Top > piece.Region.Top)
        {
            Leave(Saw(CutKind.Rip, square, piece.Region.Top).Far);
        }
    }

    /// <summary>Ends trimmed and edges straight, as far as a piece still has the board's own.</summary>
    private Region Square(Piece piece, Region raw)
    {
        var rest = TrimNearEnd(piece, raw);
        if (rest.Right > piece.Region.Right)
        {
            (rest, var end) = Saw(CutKind.Crosscut, rest, piece.Region.Right);
            Leave(end);
        }

        if (rest.Y < piece.Region.Y)
        {
            (var edge, rest) = Saw(CutKind.Straighten, rest, piece.Region.Y - stock.Kerf);
            Leave(edge);
        }

        if (rest.Top > piece.Region.Top && stock.StraightensBothEdges)
        {
            (rest, var edge) = Saw(CutKind.Straighten, rest, piece.Region.Top);
            Leave(edge);
        }

        return rest;
    }

    private Region TrimNearEnd(Piece piece, Region raw)
    {
        if (raw.X >= piece.Region.X)
        {
            return raw;
        }

        var (end, rest) = Saw(CutKind.Crosscut, raw, piece.Region.X - stock.Kerf);
        Leave(end);
        return rest;
    }

    private (Region Near, Region Far) Saw(CutKind kind, Region of, Length at)
    {
        var cut = new SawCut(kind, of, at);
        Minutes += stock.Minutes(kind, cut.Length);
        if (written)
        {
            cuts.Add(cut);
        }

        return SawCut.Apart(kind, of, at, stock.Kerf);
    }

    private void Leave(Region region)
    {
        if (region.IsEmpty)
        {
            return;
        }

        ValueOfOffcuts += stock.ValueOfOffcut(region);
        if (written)
        {
            left.Add(region);
        }
    }
}

/// <summary>A cut through the thickness of the board, right across a piece.</summary>
/// <param name="Kind">What it does: not resawing.</param>
/// <param name="Of">The piece.</param>
/// <param name="At">Where the near side of the kerf lies.</param>
internal readonly record struct SawCut(CutKind Kind, Region Of, Length At)
{
    public Length Length => Kind == CutKind.Crosscut ? Of.Width : Of.Length;

    /// <summary>
    /// The two pieces that a cut leaves. A kerf may run off the piece on either side: then nothing is left there.
    /// </summary>
    public static (Region Near, Region Far) Apart(CutKind kind, Region of, Length at, Length kerf) => kind == CutKind.Crosscut
        ? (Region.Between(of.X, of.Y, at, of.Top), Region.Between(at + kerf, of.Y, of.Right, of.Top))
        : (Region.Between(of.X, of.Y, of.Right, at), Region.Between(of.X, at + kerf, of.Right, of.Top));
}
