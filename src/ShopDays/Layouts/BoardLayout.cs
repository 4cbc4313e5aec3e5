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

    /// <summary>The cuts; each finds its piece already freed by those before it.</summary>
    public required IReadOnlyList<Cut> Cuts { get; init; }

    /// <summary>What is left.</summary>
    public required IReadOnlyList<Offcut> Offcuts { get; init; }
}
