using ShopDays.Measures;

namespace ShopDays.Layouts.Search;

/// <summary>Fills an uncut board as valuably as it can be filled with blanks that have no place.</summary>
internal sealed class ValuableFill(LayoutProblem problem, Arrangement arrangement, Random random)
{
    /// <summary>How many pairs of fillings are tried.</summary>
    private const int Most = 600;

    /// <summary>How far chance may raise or lower what a kind of blank is worth, so that not always the same come first.</summary>
    private const double Whim = 0.4;

    /// <summary>Fills it; nothing is done when nothing is worth its cuts, or when flaws are in the way.</summary>
    /// <param name="board">The board.</param>
    /// <param name="press">How many times its timber a blank counts for, so that it is worth the cuts that free it.</param>
    public void Fill(int board, double press)
    {
        var stock = problem.Stock[board];
        if (arrangement.Cuttings[board] is not null || stock.Flaws.Count > 0 || stock.Usable.IsEmpty)
        {
            return;
        }

        var kinds = arrangement.Left
            .Where(blank => double.IsFinite(blank.CostOn(board)))
            .GroupBy(blank => (blank.Length, blank.Width, Cost: blank.CostOn(board)))
            .Select(kind => new Stack<WantedBlank>(kind))
            .ToList();
        var kerf = (int)stock.Kerf.EighthMicrometres;
        var (length, width) = ((int)stock.Usable.Length.EighthMicrometres + kerf, (int)stock.Usable.Width.EighthMicrometres + kerf);
        List<Candidate> candidates = [.. kinds.Select(kind => CandidateOf(kind, board, stock, kerf, press))];
        if (candidates.Count == 0 || new BoardFill(length, width, candidates, CostOf(stock), detail: 32).Find(Most, 0, hope: 0.95).Filling is not { } filling)
        {
            return;
        }

        var root = new Piece(stock.Usable);
        Cut(root, filling, kinds, stock);
        var cutting = new BoardCutting(stock, root);
        arrangement.Replace(board, cutting);
        arrangement.Placed([.. cutting.Blanks.Select(placed => placed.Blank)]);
    }

    /// <summary>Trims a piece to the size of a filling and cuts that out of it.</summary>
    private void Cut(Piece piece, Filling filling, List<Stack<WantedBlank>> kinds, StockBoard stock)
    {
        var place = new Region(
            piece.Region.X, piece.Region.Y, Length.FromEighthMicrometres(filling.Length) - stock.Kerf, Length.FromEighthMicrometres(filling.Width) - stock.Kerf);
        var trimmed = piece.Carve(place, stock.Kerf, CarvingCost.Of(stock, piece.Region, place, problem.MoneyPerMinute).CrosscutFirst);
        switch (filling)
        {
            case Filling.Single single:
                trimmed.Blank = kinds[single.Kind].Pop();
                break;
            case Filling.EndToEnd ends:
                trimmed.Crosscut(place.X + Length.FromEighthMicrometres(ends.Near.Length) - stock.Kerf, stock.Kerf);
                Cut(trimmed.Near!, ends.Near, kinds, stock);
                Cut(trimmed.Far!, ends.Far, kinds, stock);
                break;
            case Filling.SideBySide sides:
                trimmed.Rip(place.Y + Length.FromEighthMicrometres(sides.Near.Width) - stock.Kerf, stock.Kerf);
                Cut(trimmed.Near!, sides.Near, kinds, stock);
                Cut(trimmed.Far!, sides.Far, kinds, stock);
                break;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private Candidate CandidateOf(Stack<WantedBlank> kind, int board, StockBoard stock, int kerf, double press)
    {
        var blank = kind.Peek();
        var value = (blank.Area * stock.ValuePerArea * (press + (Whim * (random.NextDouble() - 0.5)))) - blank.CostOn(board);
        return new Candidate((int)blank.Length.EighthMicrometres + kerf, (int)blank.Width.EighthMicrometres + kerf, value, kind.Count);
    }

    private CostOfCuts CostOf(StockBoard stock)
    {
        var none = Length.Zero;
        var metre = Length.FromMillimetres(1000m);
        var crosscut = stock.Minutes(CutKind.Crosscut, none);
        var rip = stock.Minutes(CutKind.Rip, none);
        return new CostOfCuts(
            crosscut * problem.MoneyPerMinute,
            (stock.Minutes(CutKind.Crosscut, metre) - crosscut) * problem.MoneyPerMinute / metre.EighthMicrometres,
            rip * problem.MoneyPerMinute,
            (stock.Minutes(CutKind.Rip, metre) - rip) * problem.MoneyPerMinute / metre.EighthMicrometres);
    }
}
