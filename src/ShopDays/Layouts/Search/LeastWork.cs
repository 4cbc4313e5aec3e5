using ShopDays.Measures;

namespace ShopDays.Layouts.Search;

/// <summary>
/// What cutting blanks out of a board costs at least, in money. What is not under blanks loses what offcuts cannot fetch.
/// All blanks of a board but one need a cut of their own; each cut makes an edge or an end of two blanks at most, and those
/// that lie at the border of the usable place need one too where the board's own edge or end falls off.
/// </summary>
/// <param name="moneyPerMinute">What a minute costs.</param>
/// <param name="judged">What a minute costs by what it counts for in what the boards say of planing.</param>
/// <param name="ripsByLength">Whether the length of rips is charged to the blanks even where edges need none.</param>
/// <param name="crosscutsByLength">Whether the length of crosscuts is charged to the blanks even where ends need none.</param>
internal sealed class LeastWork(double moneyPerMinute, double judged, bool ripsByLength, bool crosscutsByLength)
{
    /// <summary>An offcut is worth at most this share of its timber (<see cref="StockBoard.ValueOfOffcut"/>).</summary>
    private const double MostOfOffcut = 0.7;

    /// <summary>How many edges of the usable place are the board's own, so that blanks there have an edge for nothing.</summary>
    public static int OwnEdges(StockBoard board) =>
        (board.Usable.Y > Length.Zero ? 0 : 1) + (board.Usable.Top < board.Whole.Top ? 0 : 1);

    /// <summary>How many ends of the usable place are the board's own.</summary>
    public static int OwnEnds(StockBoard board) =>
        (board.Usable.X > Length.Zero ? 0 : 1) + (board.Usable.Right < board.Whole.Right ? 0 : 1);

    /// <summary>The costs of a board and of blanks on it.</summary>
    /// <param name="board">The board.</param>
    /// <param name="blanks">The blanks.</param>
    /// <param name="work">What each blank costs there beyond its cuts, as the board judges it.</param>
    public (LeastCosts ByArea, LeastCosts BySaw, CostOfCuts Cuts, BorderCost Border) On(StockBoard board, IReadOnlyList<Blank> blanks, double[] work)
    {
        var (firstEdge, firstEnd) = (Math.Min(First(board, CutKind.Rip), First(board, CutKind.Straighten)), First(board, CutKind.Crosscut));
        var (perEdge, perEnd) = (Math.Min(PerMillimetre(board, CutKind.Rip), PerMillimetre(board, CutKind.Straighten)), PerMillimetre(board, CutKind.Crosscut));
        CutKind[] border = [.. Enumerable.Repeat(CutKind.Straighten, 2 - OwnEdges(board))];
        if (border.Length == 2 && !board.StraightensBothEdges)
        {
            border[1] = CutKind.Rip;
        }

        var (edges, ends) = (border.Length, 2 - OwnEnds(board));
        var start = ((1 - MostOfOffcut) * board.Value) + border.Sum(kind => First(board, kind)) + (ends * firstEnd);
        double[] bare = [.. work.Select((cost, kind) => (double.IsInfinity(cost) ? cost : cost * judged)
            + (MostOfOffcut * board.ValuePerArea * (blanks[kind].Length * blanks[kind].Width).SquareMillimetres))];

        // Each blank is charged with half of what its two edges and ends would cost as cuts of its own.
        var (edge, end) = (ripsByLength || edges == 2 ? perEdge : 0, crosscutsByLength || ends == 2 ? perEnd : 0);
        var least = Math.Min(firstEdge, firstEnd);
        var byArea = new LeastCosts(
            start - least - ((2 - edges) / 2.0 * edge * board.Usable.Length.Millimetres) - ((2 - ends) / 2.0 * end * board.Usable.Width.Millimetres),
            [.. bare.Select((cost, kind) => cost + least + (edge * blanks[kind].Length.Millimetres) + (end * blanks[kind].Width.Millimetres))]);

        // The border is reckoned along all that is in the board, a kerf included that is not sawn.
        var (alongBorder, acrossBorder) = (border.Sum(kind => PerMillimetre(board, kind)), ends * perEnd);
        var bySaw = new LeastCosts(start - ((alongBorder + acrossBorder) * board.Kerf.Millimetres), bare);
        var cuts = new CostOfCuts(
            firstEnd, perEnd / Length.PerMillimetre, First(board, CutKind.Rip), PerMillimetre(board, CutKind.Rip) / Length.PerMillimetre);
        return (byArea, bySaw, cuts, new BorderCost(alongBorder / Length.PerMillimetre, acrossBorder / Length.PerMillimetre));
    }

    private double First(StockBoard board, CutKind kind) => moneyPerMinute * board.Minutes(kind, Length.Zero);

    private double PerMillimetre(StockBoard board, CutKind kind) =>
        (moneyPerMinute * board.Minutes(kind, Length.FromMillimetres(1m))) - First(board, kind);
}
