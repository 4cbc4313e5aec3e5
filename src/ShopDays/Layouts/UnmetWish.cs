namespace ShopDays.Layouts;

/// <summary>Something that a maker wished of a layout and that the boards do not give.</summary>
/// <param name="Name">The name that matched parts share, or the part for the best face.</param>
public abstract record UnmetWish(string Name)
{
    /// <summary>Matched parts that do not all come from one board; offcuts of a board are still that board.</summary>
    /// <param name="Name">The name that they share.</param>
    public sealed record NotInOneBoard(string Name) : UnmetWish(Name);

    /// <summary>
    /// Matched parts that come from one board, but not in sequence: not one behind or beside the other in the order in which
    /// they are written and numbered, with nothing but a kerf between.
    /// </summary>
    /// <param name="Name">The name that they share.</param>
    public sealed record NotInSequence(string Name) : UnmetWish(Name);

    /// <summary>Pieces for the best face that come out of a board although one on hand of better figure could give them.</summary>
    /// <param name="Name">The part.</param>
    /// <param name="Numbers">Which of it, from 1.</param>
    public sealed record NotBestFace(string Name, IReadOnlyList<int> Numbers) : UnmetWish(Name);
}
