using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>Writes an arrangement down as a layout that can be followed with a saw.</summary>
internal sealed class LayoutWriter(LayoutProblem problem, Arrangement arrangement, LayoutRequest request)
{
    private readonly Allowances allowances = request.Allowances;
    private readonly SawingRates rates = request.Rates;

    /// <param name="wanted">The stock that would do for what is unplaced.</param>
    public Layout Write(IReadOnlyList<StockWanted> wanted)
    {
        List<BoardLayout> boards = [.. arrangement.Cuttings.OfType<BoardCutting>().Select(Write)];
        List<BoardLayout> all = [.. request.Sawn, .. boards];
        List<Unplaced> unplaced =
        [
            .. problem.Impossible.Select(one => one with { Reason = problem.WhyUnplaced(one.Part, one.Reason) }),
            .. arrangement.Left
                .SelectMany(blank => blank.Blank.Numbers.Select(number => (blank.Blank.Part, Number: number)))
                .Distinct()
                .Select(one => new Unplaced(one.Part, one.Number, problem.WhyUnplaced(one.Part))),
        ];
        var sawing = boards
            .SelectMany(board => board.Cuts, (board, cut) => rates.For(cut.Kind).TimeFor(cut.Length, cut.Thickness, board.Board.Species))
            .Aggregate(WorkTime.Zero, (sum, time) => sum + time);
        var bound = new LayoutBound(problem, allowances, boards);
        return new Layout
        {
            Boards = all,
            Unplaced = unplaced,
            Wanted = wanted,
            NotHonoured = new UnmetWishes(problem, arrangement, request).In(all, unplaced),
            BestPossibleYield = bound.BestYield(),
            SawingTime = sawing,
            Cost = new CostSheet(request.Worth, [.. arrangement.Cuttings.OfType<BoardCutting>()]).For(sawing, bound.LeastMoney),
        };
    }

    private BoardLayout Write(BoardCutting cutting)
    {
        var board = cutting.Stock.Board;
        List<PlacedBlank> blanks = [.. cutting.Blanks.Select(placed => new PlacedBlank(placed.Blank.Blank, placed.Region))];
        var sequence = cutting.Sequence();
        List<Offcut> offcuts = [.. sequence.Left.Select(region => new Offcut(region, cutting.Stock.ValueOfOffcut(region) > 0))];
        var names = blanks.ToDictionary(placed => placed.Region, placed => placed.Blank.Label);
        foreach (var offcut in offcuts.Where(offcut => offcut.IsUseful))
        {
            names.Add(offcut.Region, "offcut");
        }

        List<Cut> cuts =
        [
            .. sequence.Cuts.Select(cut =>
            {
                var (near, far) = SawCut.Apart(cut.Kind, cut.Of, cut.At, cutting.Stock.Kerf);
                var frees = ((Region[])[near, far]).Select(region => names.GetValueOrDefault(region)).OfType<string>();
                return new Cut(0, cut.Kind, cut.Of, cut.At, cut.Length, board.Thickness, string.Join(", ", frees));
            }),
            .. blanks.SelectMany(placed => Resaw(placed, cutting.Stock)),
        ];
        cuts = [.. cuts.Select((cut, index) => cut with { Order = index + 1 })];
        return new BoardLayout { Board = board, Usable = cutting.Stock.Usable, Blanks = blanks, Cuts = cuts, Offcuts = offcuts };
    }

    /// <summary>
    /// The cuts through the thickness of a blank. The parts share what is too thick; the outer ones carry half of what the
    /// board's faces lose, and every new face half of what rough faces lose.
    /// </summary>
    private IEnumerable<Cut> Resaw(PlacedBlank placed, StockBoard stock)
    {
        var blank = placed.Blank;
        var parts = blank.Numbers.Count;
        var share = (stock.Depth - blank.DepthNeeded(allowances)) / parts;
        var outer = blank.Part.Thickness + ((stock.Board.Thickness - stock.Depth + allowances.RoughFaces) / 2) + share;
        var inner = blank.Part.Thickness + allowances.RoughFaces + share;
        return Enumerable.Range(1, parts - 1).Select(cut => new Cut(
            0,
            CutKind.Resaw,
            placed.Region,
            outer + ((inner + allowances.Kerf) * (cut - 1)),
            blank.Length,
            blank.Width,
            cut < parts - 1 ? LabelOf(blank, cut - 1, 1) : LabelOf(blank, cut - 1, 2)));
    }

    private static string LabelOf(Blank blank, int from, int count) =>
        string.Join(", ", blank.Numbers.Skip(from).Take(count).Select(number => (blank with { Numbers = [number] }).Label));
}
