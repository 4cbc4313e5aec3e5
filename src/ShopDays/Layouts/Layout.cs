using ShopDays.Measures;

namespace ShopDays.Layouts;

/// <summary>Where every part comes out of which board.</summary>
public sealed record Layout
{
    /// <summary>The boards that are sawn already, then those that are to be cut, each in the order of the stock.</summary>
    public required IReadOnlyList<BoardLayout> Boards { get; init; }

    /// <summary>The boards that are still to be cut.</summary>
    public IReadOnlyList<BoardLayout> ToCut => [.. Boards.Where(board => !board.IsSawn)];

    /// <summary>The boards that are sawn already.</summary>
    public IReadOnlyList<BoardLayout> Sawn => [.. Boards.Where(board => board.IsSawn)];

    /// <summary>The parts that no board yields, spares among them; empty when everything fits.</summary>
    public required IReadOnlyList<Unplaced> Unplaced { get; init; }

    /// <summary>The stock that would do for what is unplaced; empty when everything fits or when no board that is sold could.</summary>
    public required IReadOnlyList<StockWanted> Wanted { get; init; }

    /// <summary>Matched parts and parts for the best face that do not come as the maker wished; empty when all do.</summary>
    public required IReadOnlyList<UnmetWish> NotHonoured { get; init; }

    /// <summary>The best yield of any layout of the same blanks, counted as in <see cref="Yield"/>, 0 to 1: a proven upper bound; 0 when no board is to be cut.</summary>
    public required double BestPossibleYield { get; init; }

    /// <summary>Hands-on time of all cuts still to be sawn, at the rates given, with lining up and rest.</summary>
    public required WorkTime SawingTime { get; init; }

    /// <summary>What it costs: timber, offcuts kept, and the hours that the layout decides.</summary>
    public required LayoutCost Cost { get; init; }

    /// <summary>Whether every part is there.</summary>
    public bool Fits => Unplaced.Count == 0;

    /// <summary>
    /// Area of the blanks over area of the boards, 0 to 1, of the boards that are still to be cut: what is sawn is not to be
    /// decided any more. A blank that is resawn counts once. 0 when no board is to be cut.
    /// </summary>
    public double Yield
    {
        get
        {
            var boards = ToCut.Sum(board => (board.Board.Length * board.Board.Width).SquareMillimetres);
            return boards == 0 ? 0 : ToCut.Sum(board => board.Blanks.Sum(blank => blank.Region.Area.SquareMillimetres)) / boards;
        }
    }

    /// <summary>
    /// Whether no layout of the same blanks can have a better yield. Sums of areas in another order differ by less than the billionth
    /// that is allowed for.
    /// </summary>
    public bool HasBestYield => BestPossibleYield <= Yield * (1 + 1e-9);

    /// <summary>Length of all rips and straightening cuts that are still to be sawn.</summary>
    public Length RipLength => Total(CutKind.Rip, CutKind.Straighten);

    /// <summary>Length of all crosscuts that are still to be sawn.</summary>
    public Length CrosscutLength => Total(CutKind.Crosscut);

    private Length Total(params CutKind[] kinds) => Boards
        .SelectMany(board => board.Cuts)
        .Where(cut => kinds.Contains(cut.Kind))
        .Aggregate(Length.Zero, (sum, cut) => sum + cut.Length);
}
