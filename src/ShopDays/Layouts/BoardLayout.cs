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

    /// <summary>Whether a part for the best face comes out of it: its better face is then chosen, and marked, before parts are chalked out on it.</summary>
    public bool IsBestFaceUp => Blanks.Any(placed => placed.Blank.Part.IsForBestFace);

    /// <summary>What is left.</summary>
    public required IReadOnlyList<Offcut> Offcuts { get; init; }
}
