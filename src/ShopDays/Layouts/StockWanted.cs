using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>Stock that is missing.</summary>
/// <param name="Species">The timber.</param>
/// <param name="Length">Length of each board.</param>
/// <param name="Width">Width of each board.</param>
/// <param name="Thickness">Rough thickness.</param>
/// <param name="Count">How many boards.</param>
public sealed record StockWanted(Species Species, Length Length, Length Width, Length Thickness, int Count)
{
    /// <summary>Whether boards on hand of these sizes have flaws: then those wanted are to be clear of them, as others might not do.</summary>
    public bool ClearOfFlaws { get; init; }

    /// <summary>The volume of them all.</summary>
    public Volume Volume => Length * Width * Thickness * Count;
}
