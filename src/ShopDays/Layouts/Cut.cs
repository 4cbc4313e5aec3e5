using ShopDays.Measures;

namespace ShopDays.Layouts;

/// <summary>What a cut does.</summary>
public enum CutKind
{
    /// <summary>Makes a live or rough edge straight.</summary>
    Straighten,

    /// <summary>Goes along the grain, right through the piece.</summary>
    Rip,

    /// <summary>Goes across the grain, right through the piece.</summary>
    Crosscut,

    /// <summary>Goes through the thickness.</summary>
    Resaw,
}

/// <summary>One cut, right across the piece that is in hand at that moment.</summary>
/// <param name="Order">Its place in the order of cutting on this board, from 1; a later cut never needs to come first.</param>
/// <param name="Kind">What it does.</param>
/// <param name="Of">The piece that is cut, in the board's frame.</param>
/// <param name="At">
/// Where the near side of the kerf lies: y for straightening and ripping, x for crosscutting, depth from the face for resawing.
/// </param>
/// <param name="Length">How long the cut is.</param>
/// <param name="Thickness">How thick the stock is there: for resawing, how wide the piece is.</param>
/// <param name="Frees">What comes of it, in words: the labels of blanks that are free now, or <c>offcut</c>; empty when nothing is yet.</param>
public sealed record Cut(int Order, CutKind Kind, Region Of, Length At, Length Length, Length Thickness, string Frees);

/// <summary>A blank with its place in a board.</summary>
/// <param name="Blank">The blank.</param>
/// <param name="Region">Where it lies.</param>
public sealed record PlacedBlank(Blank Blank, Region Region);

/// <summary>What is left of a board in one piece.</summary>
/// <param name="Region">Where it lies.</param>
/// <param name="IsUseful">Whether it is large enough to keep.</param>
public sealed record Offcut(Region Region, bool IsUseful)
{
    /// <summary>Its name as a board of its own, once the board is sawn and it was kept; null until then.</summary>
    public string? Name { get; init; }
}
