using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>What a layout cuts out of one timber, and the least that could be cut for it.</summary>
internal sealed class TimberShare
{
    /// <summary>In how many ways boards may be picked before their areas are no longer added up one by one.</summary>
    private const int MostSums = 50_000;

    private readonly LayoutProblem problem;
    private readonly AreaBound byArea;
    private readonly IReadOnlyList<(StockBoard Stock, BoardLayout Layout)> cut;
    private readonly IReadOnlyList<(StockBoard Stock, int Count)> stock;
    private readonly IReadOnlyList<(Blank Blank, int Count)> blanks;
    private readonly double[][] extra;

    public TimberShare(LayoutProblem problem, AreaBound byArea, Species species, IReadOnlyList<BoardLayout> boards)
    {
        (this.problem, this.byArea, Species) = (problem, byArea, species);
        Blanks = [.. boards.SelectMany(board => board.Blanks).Select(placed => placed.Blank)];
        cut = [.. boards.Select(board => (problem.Stock.First(stock => ReferenceEquals(stock.Board, board.Board)), board))];
        stock = [.. Enumerable.Range(0, problem.OnHand)
            .Where(board => problem.Stock[board].Board.Species == species && !problem.Stock[board].Usable.IsEmpty)
            .GroupBy(board => problem.Like[board])
            .Select(like => (problem.Stock[like.Key], like.Count()))];
        (blanks, extra) = Alike();
    }

    public Species Species { get; }

    public IReadOnlyList<Blank> Blanks { get; }

    /// <summary>The whole area of the boards that are cut, in square millimetres.</summary>
    public double AreaCut => cut.Sum(board => board.Stock.Whole.Area.SquareMillimetres);

    /// <summary>The least area of boards by prices, as if boards could be cut in part.</summary>
    public double LeastArea() => Bound(AreaCut, (board, costs) =>
    {
        var least = new LeastCosts(board.Whole.Area.SquareMillimetres, [.. costs.Select(cost => double.IsFinite(cost) ? 0 : cost)]);
        return (least, least, default, default);
    });

    /// <summary>The least area of whole boards that is no less than an area.</summary>
    public double WholeBoards(double area)
    {
        List<double> sums = [0];
        foreach (var (areas, count) in stock.GroupBy(board => board.Stock.Whole.Area.SquareMillimetres, (size, boards) => (size, boards.Sum(board => board.Count))))
        {
            if ((long)sums.Count * (count + 1) > MostSums)
            {
                return area;
            }

            sums = [.. sums.SelectMany(sum => Enumerable.Range(0, count + 1), (sum, boards) => sum + (boards * areas))];
        }

        // A hair less than a sum is that sum, reckoned in another order.
        return sums.Where(sum => sum >= area * (1 - 1e-9)).DefaultIfEmpty(area).Min();
    }

    /// <summary>The least that the blanks cost, in money (<see cref="LeastWork"/>).</summary>
    public double LeastMoney(double moneyPerMinute)
    {
        var judged = problem.MoneyPerMinute == 0 ? 0 : moneyPerMinute / problem.MoneyPerMinute;
        var work = new LeastWork(
            moneyPerMinute, judged, Worthwhile(one => one.Length, LeastWork.OwnEdges), Worthwhile(one => one.Width, LeastWork.OwnEnds));
        List<Blank> kinds = [.. blanks.Select(kind => kind.Blank)];
        return Bound(cut.Sum(board => Known(board.Stock, board.Layout)), (board, costs) => work.On(board, kinds, costs));

        double Known(StockBoard board, BoardLayout layout) => board.Value
            - layout.Offcuts.Sum(offcut => board.ValueOfOffcut(offcut.Region))
            + (moneyPerMinute * layout.Cuts.Where(saw => saw.Kind != CutKind.Resaw).Sum(saw => board.Minutes(saw.Kind, saw.Length)))
            + (judged * layout.Blanks.Sum(placed => board.CostOf(placed.Blank)));
    }

    /// <summary>Whether a bound says more when it reckons with the length of cuts, although edges that need none are taken off.</summary>
    private bool Worthwhile(Func<Region, Length> size, Func<StockBoard, int> own) =>
        Blanks.Sum(blank => size(new Region(Length.Zero, Length.Zero, blank.Length, blank.Width)).Millimetres)
            > cut.Sum(board => own(board.Stock) / 2.0 * size(board.Stock.Usable).Millimetres);

    private double Bound(double known, Func<StockBoard, double[], (LeastCosts ByArea, LeastCosts BySaw, CostOfCuts Cuts, BorderCost Border)> costs)
    {
        var kerf = cut[0].Stock.Kerf;
        List<BlankKind> kinds = [.. blanks.Select(kind => new BlankKind(Units(kind.Blank.Length + kerf), Units(kind.Blank.Width + kerf), kind.Count))];
        List<BoardKind> boards = [.. stock.Select((board, index) =>
        {
            var (byArea, bySaw, cuts, border) = costs(board.Stock, extra[index]);
            return new BoardKind(
                Units(board.Stock.Usable.Length + kerf),
                Units(board.Stock.Usable.Width + kerf),
                this.byArea.ClearArea(board.Stock) * Length.PerMillimetre * Length.PerMillimetre,
                board.Count,
                byArea,
                bySaw,
                cuts,
                border);
        })];
        // Finer steps and more rounds say hardly more, and take long where boards are many: measured.
        var (along, across, rounds) = boards.Count switch
        {
            <= 40 => (96, 48, 30),
            _ => (64, 32, 20),
        };
        return new PricedBound(kinds, boards, Units(kerf), along, across).Least(known, rounds);
    }

    /// <summary>The blanks by kinds that are as large and cost the same on every board, and what they cost there.</summary>
    private (IReadOnlyList<(Blank Blank, int Count)> Kinds, double[][] Extra) Alike()
    {
        var kinds = new List<(Blank Blank, int Count, double[] Costs)>();
        foreach (var same in Blanks.GroupBy(blank => (blank.Part.Name, blank.Length, blank.Width, blank.Numbers.Count)))
        {
            var blank = same.First();
            double[] costs = [.. stock.Select(board => board.Stock.CanTake(blank.Length, blank.Width) ? board.Stock.CostOf(blank) : double.PositiveInfinity)];
            var like = kinds.FindIndex(kind => kind.Blank.Length == blank.Length && kind.Blank.Width == blank.Width && kind.Costs.AsSpan().SequenceEqual(costs));
            if (like < 0)
            {
                kinds.Add((blank, same.Count(), costs));
            }
            else
            {
                kinds[like] = kinds[like] with { Count = kinds[like].Count + same.Count() };
            }
        }

        return ([.. kinds.Select(kind => (kind.Blank, kind.Count))], [.. stock.Select((_, board) => kinds.Select(kind => kind.Costs[board]).ToArray())]);
    }

    private static int Units(Length length) => checked((int)length.EighthMicrometres);
}
