using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>
/// How many more boards of the kinds on hand would do for what is unplaced: laid out on plenty of such boards and then on
/// ever fewer, of the kind that takes the most of it and comes cheapest.
/// </summary>
internal static class MissingStock
{
    /// <summary>The stock that would do; nothing for parts that no kind on hand could ever yield.</summary>
    public static IReadOnlyList<StockWanted> For(
        IReadOnlyList<Unplaced> unplaced, IReadOnlyList<Board> boards, Allowances allowances, SawingRates rates, int seed)
    {
        var wanted = new List<StockWanted>();
        List<Board> kinds = [.. boards
            .Select(board => board with { Flaws = [], Line = board.Line })
            .DistinctBy(board => board with { Name = "", Line = board.Line })];
        List<Demand> remaining = [.. unplaced
            .GroupBy(one => one.Part)
            .Select(part => new Demand(part.Key with { Matched = null, From = LineOf(part.Key) }, [.. part.Select(one => one.Number)]))];
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
                .MinBy(choice => new StockBoard(choice.Kind, allowances, rates).Value * choice.Count);
            wanted.Add(new StockWanted(cheapest.Species, cheapest.Length, cheapest.Width, cheapest.Thickness, count));
            remaining = [.. remaining.Except(takes)];
        }

        return wanted;

        string? LineOf(Part part) =>
            boards.FirstOrDefault(board => string.Equals(board.Name, part.From, StringComparison.Ordinal))?.Line ?? part.From;

        bool CouldTake(Board kind, Part part) =>
            new WaysToSaw([new StockBoard(kind, allowances, rates)], allowances, new HashSet<(string, int)>()).WhyNever(part) is null;

        int CountOf(Board kind, List<Demand> takes)
        {
            var oneBoard = new LayoutProblem([kind], takes, allowances, rates, new HashSet<(string, int)>());
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
            List<Board> more = [.. Enumerable.Range(1, count).Select(number => kind with { Name = FormattableString.Invariant($"{kind.Name} more {number}"), Line = kind.Line })];
            var (_, arrangement) = LayoutSearch.Arrange(more, takes, allowances, rates, LayoutEffort.Quick, seed, enough);
            return arrangement.Left.Count == 0 ? arrangement.Cuttings.Count(cutting => cutting is not null) : null;
        }
    }
}
