using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>How one board is cut.</summary>
public sealed record BoardLayout
{
    /// <summary>The board.</summary>
    public required Board Board { get; init; }

    /// <summary>What is left of it when the ends are trimmed and the edges straight.</summary>
    public required Region Usable { get; init; }

    /// <summary>The blanks that come out of it; none overlap.</summary>
    public required IReadOnlyList<PlacedBlank> Blanks { get; init; }

    /// <summary>The cuts in an order that can be followed with a saw.</summary>
    public required IReadOnlyList<Cut> Cuts { get; init; }

    /// <summary>What is left.</summary>
    public required IReadOnlyList<Offcut> Offcuts { get; init; }
}

/// <summary>A part that no board yields.</summary>
/// <param name="Part">The part.</param>
/// <param name="Number">Which of it, from 1.</param>
/// <param name="Reason">Why, in words a maker would use.</param>
public sealed record Unplaced(Part Part, int Number, string Reason);

/// <summary>Stock that is missing.</summary>
/// <param name="Species">The timber.</param>
/// <param name="Length">Length of each board.</param>
/// <param name="Width">Width of each board.</param>
/// <param name="Thickness">Rough thickness.</param>
/// <param name="Count">How many boards.</param>
public sealed record StockWanted(Species Species, Length Length, Length Width, Length Thickness, int Count)
{
    /// <summary>The volume of them all.</summary>
    public Volume Volume => Length * Width * Thickness * Count;
}

/// <summary>Where every part comes out of which board.</summary>
public sealed record Layout
{
    /// <summary>The boards that are cut, in the order of the stock.</summary>
    public required IReadOnlyList<BoardLayout> Boards { get; init; }

    /// <summary>The parts that no board yields; empty when everything fits.</summary>
    public required IReadOnlyList<Unplaced> Unplaced { get; init; }

    /// <summary>The stock that would do for what is unplaced; empty when everything fits or when no kind on hand could.</summary>
    public required IReadOnlyList<StockWanted> Wanted { get; init; }

    /// <summary>The best yield that any layout could have, 0 to 1: a proven upper bound.</summary>
    public required double BestPossibleYield { get; init; }

    /// <summary>Hands-on time of all cuts at the rates given, with lining up and rest.</summary>
    public required WorkTime SawingTime { get; init; }

    /// <summary>Whether every part is there.</summary>
    public bool Fits => Unplaced.Count == 0;

    /// <summary>Area of the blanks over area of the boards cut, 0 to 1; 0 when no board is cut.</summary>
    public double Yield
    {
        get
        {
            var boards = Boards.Sum(board => (board.Board.Length * board.Board.Width).SquareMillimetres);
            return boards == 0 ? 0 : Boards.Sum(board => board.Blanks.Sum(blank => blank.Region.Area.SquareMillimetres)) / boards;
        }
    }

    /// <summary>Length of all rips and straightening cuts.</summary>
    public Length RipLength => Total(CutKind.Rip, CutKind.Straighten);

    /// <summary>Length of all crosscuts.</summary>
    public Length CrosscutLength => Total(CutKind.Crosscut);

    private Length Total(params CutKind[] kinds) => Boards
        .SelectMany(board => board.Cuts)
        .Where(cut => kinds.Contains(cut.Kind))
        .Aggregate(Length.Zero, (sum, cut) => sum + cut.Length);
}
