using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>Stock that is missing, in sizes that a yard sells.</summary>
/// <param name="Each">One of the boards as it is reckoned with: size, edges, faces and end trim; its line is one that the parts may come from.</param>
/// <param name="Count">How many boards, at least 1.</param>
public sealed record StockWanted(Board Each, int Count)
{
    /// <summary>The timber.</summary>
    public Species Species => Each.Species;

    /// <summary>Length of each board.</summary>
    public Length Length => Each.Length;

    /// <summary>Width of each board, at least.</summary>
    public Length Width => Each.Width;

    /// <summary>Rough thickness.</summary>
    public Length Thickness => Each.Thickness;

    /// <summary>Whether boards on hand that they are like have flaws: then those wanted are to be clear of them, as others might not do.</summary>
    public bool ClearOfFlaws { get; init; }

    /// <summary>The volume of them all.</summary>
    public Volume Volume => Length * Width * Thickness * Count;
}
