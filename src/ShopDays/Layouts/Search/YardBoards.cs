using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>The kinds of boards that could be bought: like those on hand, or, for parts that none of these could yield, others.</summary>
internal sealed class YardBoards
{
    /// <summary>How many blanks end to end, and side by side, a board that is not like one on hand is measured for at most.</summary>
    private const int MostAlong = 3;

    private const int MostAcross = 2;

    /// <summary>Length lost to checks at each end of a rough board when none on hand tells (common practice, no source).</summary>
    private static readonly Length UsualEndTrim = Length.FromInches(1m);

    private readonly LayoutRequest request;

    public YardBoards(LayoutRequest request)
    {
        this.request = request;
        LikeOnHand = [.. request.Boards.Select(AsSold).DistinctBy(board => board with { Name = "", Line = board.Line, Price = null })];
    }

    /// <summary>Boards like those on hand, in the size next above that is sold, without flaws.</summary>
    public IReadOnlyList<Board> LikeOnHand { get; }

    /// <summary>A board on hand as one more of its kind would be sold.</summary>
    public Board AsSold(Board board)
    {
        var yard = request.Yard;
        var isNamed = request.Parts.Any(part => part.NotFrom.Append(part.From).Contains(board.Line, StringComparer.Ordinal));
        var like = board with
        {
            Name = isNamed ? board.Line : board.Species.Name,
            Line = isNamed ? board.Line : board.Species.Name,
            CutFrom = null,
            Flaws = [],
            Length = yard.LengthFor(board.Length),
            Width = yard.WidthFor(board.Width),
            Thickness = yard.ThicknessFor(board.Thickness) ?? board.Thickness,
        };
        return board.Price is { } price ? like with { Price = (price * (decimal)(like.Volume.BoardFeet / board.Volume.BoardFeet)).Rounded() } : like;
    }

    /// <summary>Whether a board could yield a part if it had it to itself.</summary>
    public bool CouldTake(Board kind, Part part) =>
        new WaysToSaw([new StockBoard(kind, request)], request.Allowances, PanelStrips.Usual()).WhyNever(part) is null;

    /// <summary>Boards of sizes that are sold which could yield a part that none like those on hand could; none when no such board is sold.</summary>
    public IReadOnlyList<Board> For(Part part)
    {
        var (yard, allowances) = (request.Yard, request.Allowances);
        var like = Pattern(part);
        if (yard.ThicknessFor(part.Thickness + allowances.PlaningDepth(like)) is not { } thickness)
        {
            return [];
        }

        var (length, width) = (part.Length + allowances.Length, part.Width + allowances.Width);
        var edges = like.Width - Region.Usable(like, allowances).Width;
        var lengths = Enumerable.Range(1, MostAlong)
            .Select(along => yard.LengthFor((length * along) + (allowances.Kerf * (along - 1)) + (like.EndTrim * 2)))
            .Where(size => size <= yard.Longest).Distinct();
        var widths = Enumerable.Range(1, MostAcross)
            .Select(across => yard.WidthFor((width * across) + (allowances.Kerf * (across - 1)) + edges))
            .Concat(part.IsPanel ? yard.Usual : [])
            .Where(size => size <= yard.Widest).Distinct().ToList();
        return
        [
            .. from size in lengths
               from across in widths
               let kind = Priced(like with { Line = like.Line, Length = size, Width = across, Thickness = thickness })
               where CouldTake(kind, part)
               select kind,
        ];
    }

    /// <summary>Edges, faces and ends as boards of the timber on hand have them, else as boards come from the saw.</summary>
    private Board Pattern(Part part)
    {
        var line = part.From ?? part.Species.Name;
        var onHand = request.Boards.Where(board => board.Species == part.Species).MaxBy(board => board.Volume.CubicMillimetres);
        var size = Length.FromFeet(4);
        return onHand is null
            ? new Board { Name = line, Line = line, Species = part.Species, Length = size, Width = size, Thickness = size, EndTrim = UsualEndTrim }
            : onHand with { Name = line, Line = line, CutFrom = null, Flaws = [], Cup = Length.Zero, Length = size, Width = size, Price = null };
    }

    /// <summary>At what the priced boards of the timber cost; without any the search has its own worth for a board foot.</summary>
    private Board Priced(Board kind)
    {
        List<Board> priced = [.. request.Boards.Where(board => board.Species == kind.Species && board.Price is not null)];
        return priced.Count == 0 ? kind : kind with
        {
            Line = kind.Line,
            Price = (priced.Select(board => board.Price!).Aggregate((sum, price) => sum + price) * (decimal)(kind.Volume.BoardFeet / priced.Sum(board => board.Volume.BoardFeet))).Rounded(),
        };
    }
}
