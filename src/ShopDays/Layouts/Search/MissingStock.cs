using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>
/// How many more boards of the kinds on hand would do for what is unplaced: laid out on plenty of such boards and then on
/// ever fewer, of the kind that takes the most of it and comes cheapest.
/// </summary>
internal static class MissingStock
{
    /// <summary>Boards that would do; none for parts that no kind on hand could ever yield.</summary>
    public static IReadOnlyList<Board> For(IReadOnlyList<Unplaced> unplaced, LayoutRequest request)
    {
        var (boards, allowances) = (request.Boards, request.Allowances);
        var wanted = new List<Board>();
        List<Board> kinds = [.. boards
            .Select(board => board with { Flaws = [], Line = board.Line })
            .DistinctBy(board => board with { Name = "", Line = board.Line })];
        List<Demand> remaining = [.. unplaced
            .GroupBy(one => one.Part)
            .Select(part => new Demand(part.Key with { Matched = null, From = LineOf(part.Key), NotFrom = LinesAmong(part.Key.NotFrom) }, [.. part.Select(one => one.Number)]))];
        while (remaining.Count > 0)
        {
            var takers = kinds
                .Select(kind => (Kind: kind, Takes: remaining.Where(demand => CouldTake(kind, demand.Part)).ToList()))
                .Where(taker => taker.Takes.Count > 0)
                .GroupBy(taker => taker.Takes.Sum(demand => demand.Part.Volume.CubicMillimetres * demand.Numbers.Count))
                .MaxBy(group => group.Key);
            if (takers is null)
            {
                break;
            }

            var (cheapest, count, takes) = takers
                .Select(taker => (taker.Kind, Count: CountOf(taker.Kind, taker.Takes), taker.Takes))
                .MinBy(choice => new StockBoard(choice.Kind, request).Value * choice.Count);
            wanted.AddRange(More(cheapest, count));
            remaining = [.. remaining.Except(takes)];
        }

        return wanted;

        string? LineOf(Part part) =>
            boards.FirstOrDefault(board => string.Equals(board.Name, part.From, StringComparison.Ordinal))?.Line ?? part.From;

        // Another board like one that is forbidden may do; another of a line that is forbidden may not.
        IReadOnlyList<string> LinesAmong(IReadOnlyList<string> names) =>
            [.. names.Where(name => boards.Any(board => string.Equals(board.Line, name, StringComparison.Ordinal)))];

        bool CouldTake(Board kind, Part part) =>
            new WaysToSaw([new StockBoard(kind, request)], allowances, PanelStrips.Usual()).WhyNever(part) is null;

        int CountOf(Board kind, List<Demand> takes)
        {
            var oneBoard = new LayoutProblem(request with { Boards = [kind] }, takes, PanelStrips.Usual());
            var area = oneBoard.Wants.Sum(want => want.Ways.Min(way => way.Blanks.Sum(blank => blank.Area)));
            var least = (int)(area / oneBoard.Stock[0].Usable.Area.SquareMillimetres);
            var plenty = oneBoard.Wants.Sum(want => want.Ways[0].Blanks.Count);
            var count = Used(kind, takes, plenty, _ => true) ?? plenty;
            while (count > Math.Max(1, least) && Used(kind, takes, count - 1, found => found.Left.Count == 0) is { } fewer)
            {
                count = fewer;
            }

            return count;
        }

        // How many of so many boards are cut when everything is placed; null when it is not.
        int? Used(Board kind, List<Demand> takes, int count, Predicate<Arrangement> enough)
        {
            var (_, arrangement) = LayoutSearch.Arrange(request with { Boards = More(kind, count), Effort = LayoutEffort.Quick }, takes, enough);
            return arrangement.Left.Count == 0 ? arrangement.Cuttings.Count(cutting => cutting is not null) : null;
        }
    }

    /// <summary>So many boards of a kind, by names that no board on hand has.</summary>
    public static IReadOnlyList<Board> More(Board kind, int count) =>
        [.. Enumerable.Range(1, count).Select(number => kind with { Name = FormattableString.Invariant($"{kind.Name} more {number}"), Line = kind.Line })];
}
