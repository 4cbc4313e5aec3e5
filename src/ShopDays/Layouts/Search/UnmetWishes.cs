using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>What the maker wished and a layout does not give.</summary>
internal sealed class UnmetWishes(LayoutProblem problem, Arrangement arrangement, LayoutRequest request)
{
    /// <param name="boards">The boards as they are cut.</param>
    /// <param name="unplaced">The parts that no board yields.</param>
    public IReadOnlyList<UnmetWish> In(IReadOnlyList<BoardLayout> boards, IReadOnlyList<Unplaced> unplaced) =>
    [
        .. request.Parts
            .Where(part => part.Matched is not null)
            .GroupBy(part => part.Matched!, StringComparer.Ordinal)
            .Select(group => Unmet(group.Key, [.. group], boards, group.Any(part => unplaced.Any(one => one.Part.Name == part.Name))))
            .OfType<UnmetWish>(),
        .. NotBestFace(),
    ];

    private UnmetWish? Unmet(string group, List<Part> parts, IReadOnlyList<BoardLayout> boards, bool lacksSome)
    {
        if (lacksSome)
        {
            return new UnmetWish.NotInOneBoard(group);
        }

        var order = parts.Index().ToDictionary(one => one.Item.Name, one => one.Index, StringComparer.Ordinal);
        var placed = boards
            .SelectMany(board => board.Blanks, (board, one) => (board.Board, one.Blank, one.Region))
            .Where(one => order.ContainsKey(one.Blank.Part.Name))
            .OrderBy(one => order[one.Blank.Part.Name])
            .ThenBy(one => one.Blank.Numbers[0])
            .ThenBy(one => one.Blank.Strip)
            .ToList();
        return MatchedSequence.Of([.. placed.Select(one => (one.Board.Origin, one.Board.Name, one.Region))], request.Allowances.Kerf) switch
        {
            MatchKept.InSequence => null,
            MatchKept.InOneBoard => new UnmetWish.NotInSequence(group),
            MatchKept.Spread => new UnmetWish.NotInOneBoard(group),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private IEnumerable<UnmetWish> NotBestFace() => arrangement.Cuttings
        .Index()
        .Where(one => one.Item is not null)
        .SelectMany(one => one.Item!.Blanks.Where(placed => problem.StepsBelowBest(placed.Blank, one.Index) > 0), (_, placed) => placed.Blank.Blank)
        .GroupBy(blank => blank.Part.Name, StringComparer.Ordinal)
        .Select(part => new UnmetWish.NotBestFace(part.Key, [.. part.SelectMany(blank => blank.Numbers).Distinct().Order()]));
}
