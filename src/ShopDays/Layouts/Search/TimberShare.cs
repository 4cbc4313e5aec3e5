using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>What a layout cuts out of one timber, and the least that could be cut for it.</summary>
internal sealed class TimberShare
{
    /// <summary>In how many ways boards may be picked before their areas are no longer added up one by one.</summary>
    private const int MostSums = 50_000;

    /// <summary>An offcut is worth at most this share of its timber (<see cref="StockBoard.ValueOfOffcut"/>).</summary>
    private const double MostOfOffcut = 0.7;

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
    public double LeastArea() => Bound(
        (_, costs) => [.. costs.Select(cost => double.IsFinite(cost) ? 0 : cost)], board => board.Whole.Area.SquareMillimetres, AreaCut);

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

    /// <summary>
    /// The least that the blanks cost. Every board that is cut loses what its offcuts cannot fetch. All blanks of a board but
    /// one need a cut of their own; each cut makes an edge or an end of two blanks at most, and those that lie at the border
    /// of the usable place need one too where the board's own edge or end falls off.
    /// </summary>
    public double LeastMoney(double moneyPerMinute)
    {
        var judged = problem.MoneyPerMinute == 0 ? 0 : moneyPerMinute / problem.MoneyPerMinute;
        var (rips, crosscuts) = (Worthwhile(one => one.Length, LooseEdges), Worthwhile(one => one.Width, LooseEnds));
        return Bound(ExtraOn, CostOf, cut.Sum(board => Known(board.Stock, board.Layout)));

        double[] ExtraOn(StockBoard board, double[] costs)
        {
            var (least, rip, crosscut) = Rates(board);
            return [.. costs.Select((cost, kind) =>
            {
                var blank = blanks[kind].Blank;
                return double.IsInfinity(cost) ? cost : (cost * judged)
                    + (MostOfOffcut * board.ValuePerArea * (blank.Length * blank.Width).SquareMillimetres)
                    + (moneyPerMinute * (least + (rip * blank.Length.Millimetres) + (crosscut * blank.Width.Millimetres)));
            })];
        }

        double CostOf(StockBoard board)
        {
            var (least, rip, crosscut) = Rates(board);
            var (edges, ends) = (LooseEdges(board), LooseEnds(board));
            var minutes = ((2 - edges) * FirstEdge(board)) + ((2 - ends) * board.Minutes(CutKind.Crosscut, Length.Zero)) - least
                - (edges / 2.0 * rip * board.Usable.Length.Millimetres) - (ends / 2.0 * crosscut * board.Usable.Width.Millimetres);
            return ((1 - MostOfOffcut) * board.Value) + (moneyPerMinute * minutes);
        }

        (double Least, double Rip, double Crosscut) Rates(StockBoard board) => (
            Math.Min(FirstEdge(board), board.Minutes(CutKind.Crosscut, Length.Zero)),
            rips || LooseEdges(board) == 0 ? Math.Min(PerMillimetre(board, CutKind.Rip), PerMillimetre(board, CutKind.Straighten)) : 0,
            crosscuts || LooseEnds(board) == 0 ? PerMillimetre(board, CutKind.Crosscut) : 0);

        double Known(StockBoard board, BoardLayout layout) => board.Value
            - layout.Offcuts.Sum(offcut => board.ValueOfOffcut(offcut.Region))
            + (moneyPerMinute * layout.Cuts.Where(saw => saw.Kind != CutKind.Resaw).Sum(saw => board.Minutes(saw.Kind, saw.Length)))
            + (judged * layout.Blanks.Sum(placed => board.CostOf(placed.Blank)));
    }

    private static double FirstEdge(StockBoard board) => Math.Min(board.Minutes(CutKind.Rip, Length.Zero), board.Minutes(CutKind.Straighten, Length.Zero));

    private static double PerMillimetre(StockBoard board, CutKind kind) =>
        board.Minutes(kind, Length.FromMillimetres(1m)) - board.Minutes(kind, Length.Zero);

    /// <summary>How many edges of the usable place are the board's own, so that blanks there have an edge for nothing.</summary>
    private static int LooseEdges(StockBoard board) =>
        (board.Usable.Y > Length.Zero ? 0 : 1) + (board.Usable.Top < board.Whole.Top ? 0 : 1);

    private static int LooseEnds(StockBoard board) =>
        (board.Usable.X > Length.Zero ? 0 : 1) + (board.Usable.Right < board.Whole.Right ? 0 : 1);

    /// <summary>Whether a bound says more when it reckons with the length of cuts, although edges that need none are taken off.</summary>
    private bool Worthwhile(Func<Region, Length> size, Func<StockBoard, int> loose) =>
        Blanks.Sum(blank => size(new Region(Length.Zero, Length.Zero, blank.Length, blank.Width)).Millimetres)
            > cut.Sum(board => loose(board.Stock) / 2.0 * size(board.Stock.Usable).Millimetres);

    private double Bound(Func<StockBoard, double[], double[]> extraOn, Func<StockBoard, double> costOf, double known)
    {
        var kerf = cut[0].Stock.Kerf;
        List<BlankKind> kinds = [.. blanks.Select(kind => new BlankKind(Units(kind.Blank.Length + kerf), Units(kind.Blank.Width + kerf), kind.Count))];
        List<BoardKind> boards = [.. stock.Select((board, index) => new BoardKind(
            Units(board.Stock.Usable.Length + kerf),
            Units(board.Stock.Usable.Width + kerf),
            byArea.ClearArea(board.Stock) * Length.PerMillimetre * Length.PerMillimetre,
            board.Count,
            costOf(board.Stock),
            extraOn(board.Stock, extra[index])))];
        var (along, across, rounds) = boards.Count switch
        {
            <= 4 => (256, 96, 60),
            <= 16 => (128, 64, 40),
            _ => (64, 48, 20),
        };
        return new PricedBound(kinds, boards, along, across).Least(known, rounds);
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
