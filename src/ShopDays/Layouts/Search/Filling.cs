namespace ShopDays.Layouts.Search;

/// <summary>
/// Some of one kind of blank that a board may be filled with. Sizes are whole numbers of any unit; a kerf is put into
/// them, as into the board, by making all a kerf longer and wider.
/// </summary>
/// <param name="Length">Along the grain.</param>
/// <param name="Width">Across the grain.</param>
/// <param name="Value">What one is worth.</param>
/// <param name="Most">How many there are at most.</param>
internal readonly record struct Candidate(int Length, int Width, double Value, int Most = int.MaxValue);

/// <summary>What comes of the cuts that fill a piece; the length and width are the least that hold it.</summary>
internal abstract record Filling(int Length, int Width)
{
    /// <summary>One candidate.</summary>
    /// <param name="Kind">Which, by its place in the list of candidates, from 0.</param>
    /// <param name="Length">Its length.</param>
    /// <param name="Width">Its width.</param>
    internal sealed record Single(int Kind, int Length, int Width) : Filling(Length, Width);

    /// <summary>Two fillings that a crosscut parts, right across the wider of them.</summary>
    internal sealed record EndToEnd(Filling Near, Filling Far) : Filling(Near.Length + Far.Length, Math.Max(Near.Width, Far.Width));

    /// <summary>Two fillings that a rip parts, all along the longer of them.</summary>
    internal sealed record SideBySide(Filling Near, Filling Far) : Filling(Math.Max(Near.Length, Far.Length), Near.Width + Far.Width);
}
