using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>Goes over what a layout says of matched parts and of those for the best face, without the code that said it.</summary>
internal static class WishCheck
{
    /// <summary>Everything that is said to be as the maker wished and is not, or the other way about.</summary>
    public static IEnumerable<string> Faults(IReadOnlyList<Board> boards, IReadOnlyList<Part> parts, Allowances allowances, Layout layout)
    {
        foreach (var name in parts.Select(part => part.Matched).OfType<string>().Distinct(StringComparer.Ordinal))
        {
            var said = layout.NotHonoured.Where(wish => wish.Name == name && wish is not UnmetWish.NotBestFace).ToList();
            var group = parts.Where(part => part.Matched == name).ToList();
            var isTogether = IsInOneBoard(group, layout);
            var isInSequence = isTogether && layout.Boards.Any(board => LiesInSequence(group, board, allowances.Kerf));
            if (isInSequence ? said.Count > 0 : said is not [var one] || one is UnmetWish.NotInSequence != isTogether)
            {
                yield return $"the matched parts '{name}' are not as the layout says";
            }
        }

        foreach (var (board, blank) in layout.ToCut
            .SelectMany(board => board.Blanks, (board, placed) => (board.Board, placed.Blank))
            .Where(one => one.Blank.Part.IsForBestFace))
        {
            var isTold = layout.NotHonoured.OfType<UnmetWish.NotBestFace>().Any(wish => wish.Name == blank.Part.Name && blank.Numbers.All(wish.Numbers.Contains));
            if (!isTold && boards.FirstOrDefault(other => other.Figure > board.Figure && CouldGive(other, blank, allowances)) is { } better)
            {
                yield return $"{blank.Label} is for the best face, and board {better.Name} could give a better one than {board.Name}";
            }
        }
    }

    private static bool IsInOneBoard(List<Part> group, Layout layout)
    {
        var numbers = group.SelectMany(part => Enumerable.Range(1, part.Count + part.Spare), (part, number) => (part.Name, number));
        var placed = layout.Boards
            .SelectMany(board => board.Blanks.SelectMany(one => one.Blank.Numbers.Select(number => (one.Blank.Part.Name, Number: number, Board: board.Board.CutFrom ?? board.Board.Name))))
            .Where(one => group.Exists(part => part.Name == one.Name))
            .ToList();
        return !layout.Unplaced.Any(one => group.Exists(part => part.Name == one.Part.Name)) && numbers.All(wanted => placed.Exists(one => (one.Name, one.Number) == wanted)) && placed.DistinctBy(one => one.Board).Count() == 1;
    }

    /// <summary>Whether each blank of the group but the first begins where the one before it and a kerf end, as a saw frees them.</summary>
    private static bool LiesInSequence(List<Part> group, BoardLayout board, Length kerf)
    {
        List<Region> regions = [.. group.SelectMany(part => board.Blanks
            .Where(placed => placed.Blank.Part.Name == part.Name)
            .OrderBy(placed => placed.Blank.Numbers.Min())
            .ThenBy(placed => placed.Blank.Strip)
            .Select(placed => placed.Region))];
        var isAllHere = group.TrueForAll(part => Enumerable.Range(1, part.Count + part.Spare).All(number =>
            board.Blanks.Where(placed => placed.Blank.Part.Name == part.Name && placed.Blank.Numbers.Contains(number)) is var blanks
                && blanks.Any() && blanks.Count() == Math.Max(1, blanks.First().Blank.Strips)));
        return isAllHere && (Follow(regions) || Follow([.. Enumerable.Reverse(regions)]));

        bool Follow(List<Region> row)
        {
            var (isAlong, isAcross) = (true, true);
            for (var at = 1; at < row.Count; at++)
            {
                var (before, after) = (row[at - 1], row[at]);
                isAlong &= after.X - before.Right == kerf && (after.Y == before.Y || after.Top == before.Top);
                isAcross &= after.Y - before.Top == kerf && (after.X == before.X || after.Right == before.Right);
            }

            return isAlong || isAcross;
        }
    }

    /// <summary>Whether an uncut board has a clear place for a blank: in its first corner, or hard behind flaws.</summary>
    private static bool CouldGive(Board board, Blank blank, Allowances allowances)
    {
        var part = blank.Part;
        string?[] names = [board.Name, board.Line, board.CutFrom];
        if (board.Species != part.Species
            || (part.From is not null && !names.Contains(part.From))
            || part.NotFrom.Any(name => names.Contains(name))
            || board.Thickness - allowances.PlaningDepth(board) < blank.DepthNeeded(allowances))
        {
            return false;
        }

        var usable = Region.Usable(board, allowances);
        List<Region> flaws = [.. board.Flaws.Select(Region.Of)];
        var within = flaws.Where(usable.Overlaps).ToList();
        var places =
            from x in within.Select(flaw => Length.Max(flaw.Right, usable.X + allowances.Kerf)).Append(usable.X)
            from y in within.Select(flaw => Length.Max(flaw.Top, usable.Y + allowances.Kerf)).Append(usable.Y)
            select new Region(x, y, blank.Length, blank.Width);
        return places.Any(place => usable.Holds(place) && !flaws.Exists(place.Overlaps));
    }
}
