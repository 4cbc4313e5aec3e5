using ShopDays.Measures;

namespace ShopDays.Layouts.Search;

/// <summary>How far matched parts are kept together; the worse, the greater.</summary>
internal enum MatchKept
{
    InSequence,
    InOneBoard,
    Spread,
}

/// <summary>Whether blanks follow each other so that the grain runs on from one to the next.</summary>
internal static class MatchedSequence
{
    /// <summary>How the blanks of a group are kept.</summary>
    /// <param name="places">For each in their order: the board of the stock, the board or offcut of it, and the place.</param>
    /// <param name="kerf">What the saw takes.</param>
    public static MatchKept Of(IReadOnlyList<(string Origin, string Board, Region Region)> places, Length kerf) =>
        places.DistinctBy(place => place.Origin, StringComparer.Ordinal).Count() > 1 ? MatchKept.Spread
        : places.DistinctBy(place => place.Board, StringComparer.Ordinal).Count() > 1 ? MatchKept.InOneBoard
        : Runs([.. places.Select(place => place.Region)], kerf) ? MatchKept.InSequence : MatchKept.InOneBoard;

    /// <summary>End to end in one lane, or side by side with their ends in line, from either end of the board.</summary>
    private static bool Runs(List<Region> regions, Length kerf)
    {
        var there = regions.Zip(regions.Skip(1)).ToList();
        var back = there.ConvertAll(pair => (First: pair.Second, Second: pair.First));
        return there.TrueForAll(IsEndToEnd) || back.TrueForAll(IsEndToEnd) || there.TrueForAll(IsSideBySide) || back.TrueForAll(IsSideBySide);

        bool IsEndToEnd((Region First, Region Second) pair) =>
            pair.Second.X == pair.First.Right + kerf && (pair.Second.Y == pair.First.Y || pair.Second.Top == pair.First.Top);

        bool IsSideBySide((Region First, Region Second) pair) =>
            pair.Second.Y == pair.First.Top + kerf && (pair.Second.X == pair.First.X || pair.Second.Right == pair.First.Right);
    }
}
