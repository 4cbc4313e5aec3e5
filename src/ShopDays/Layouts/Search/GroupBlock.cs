namespace ShopDays.Layouts.Search;

/// <summary>Matched blanks next to each other in one clear block and in their order, so that the grain runs on from one to the next.</summary>
internal static class GroupBlock
{
    /// <summary>Places them side by side or end to end in the first free piece that has room; changes nothing when none has.</summary>
    public static bool TryPlace(BoardCutting cutting, IReadOnlyList<WantedBlank> blanks, bool sideBySide)
    {
        var kerfs = cutting.Stock.Kerf * (blanks.Count - 1);
        var longest = blanks.Max(blank => blank.Length);
        var widest = blanks.Max(blank => blank.Width);
        var (length, width) = sideBySide
            ? (longest, blanks.Aggregate(kerfs, (sum, blank) => sum + blank.Width))
            : (blanks.Aggregate(kerfs, (sum, blank) => sum + blank.Length), widest);
        foreach (var piece in cutting.Free)
        {
            foreach (var place in cutting.Stock.ClearPlaces(piece.Region, length, width))
            {
                Fill(cutting, cutting.Carve(piece, place, sideBySide), blanks, sideBySide);
                return true;
            }
        }

        return false;
    }

    private static void Fill(BoardCutting cutting, Piece block, IReadOnlyList<WantedBlank> blanks, bool sideBySide)
    {
        var rest = block;
        for (var index = 0; index < blanks.Count; index++)
        {
            var blank = blanks[index];
            var place = new Region(rest.Region.X, rest.Region.Y, blank.Length, blank.Width);
            var piece = cutting.Carve(rest, place, crosscutFirst: !sideBySide);
            cutting.Fill(piece, blank);
            if (index + 1 < blanks.Count)
            {
                rest = rest.Far!;
            }
        }
    }
}
