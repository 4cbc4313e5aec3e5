using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>A rectangle in a board's own frame: x along the grain from the reference end, y across from the reference edge.</summary>
/// <param name="X">Its nearer end.</param>
/// <param name="Y">Its nearer edge.</param>
/// <param name="Length">How far it goes along the grain.</param>
/// <param name="Width">How far it goes across the grain.</param>
public readonly record struct Region(Length X, Length Y, Length Length, Length Width)
{
    /// <summary>Its farther end.</summary>
    public Length Right => X + Length;

    /// <summary>Its farther edge.</summary>
    public Length Top => Y + Width;

    /// <summary>Its area.</summary>
    public Area Area => Length * Width;

    /// <summary>Whether nothing is in it.</summary>
    public bool IsEmpty => Length <= Length.Zero || Width <= Length.Zero;

    /// <summary>The whole of a board.</summary>
    public static Region Whole(Board board) => new(Length.Zero, Length.Zero, board.Length, board.Width);

    /// <summary>Where a flaw lies.</summary>
    public static Region Of(Flaw flaw) => Between(flaw.From, flaw.AcrossFrom, flaw.To, flaw.AcrossTo);

    /// <summary>
    /// What is left of a board when the ends are trimmed and the edges straight. The saw's own kerf lies in what is lost.
    /// Flaws are still in it. Empty when the losses eat the board.
    /// </summary>
    public static Region Usable(Board board, Allowances allowances)
    {
        var edge = board.Edges switch
        {
            BoardEdges.Straight => Length.Zero,
            BoardEdges.RoughSawn => allowances.RoughEdge,
            BoardEdges.Live => allowances.LiveEdge,
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        return Between(board.EndTrim, edge, board.Length - board.EndTrim, board.Width - edge);
    }

    /// <summary>The rectangle between two corners; empty, but never of negative size, when they lie the wrong way round.</summary>
    public static Region Between(Length x, Length y, Length right, Length top) =>
        new(x, y, Length.Max(Length.Zero, right - x), Length.Max(Length.Zero, top - y));

    /// <summary>What two have in common; empty when nothing.</summary>
    public Region Common(Region other) => Between(
        Length.Max(X, other.X), Length.Max(Y, other.Y), Length.Min(Right, other.Right), Length.Min(Top, other.Top));

    /// <summary>Whether two share more than an edge.</summary>
    public bool Overlaps(Region other) => X < other.Right && other.X < Right && Y < other.Top && other.Y < Top;

    /// <summary>Whether another lies wholly in it, edges included.</summary>
    public bool Holds(Region other) => other.X >= X && other.Y >= Y && other.Right <= Right && other.Top <= Top;
}
