using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>
/// How few boards could do at best by area. Whole boards must be cut, so the least area of boards whose clear area holds the
/// same blanks is found board by board, thickest first, each thickness of blank from boards that are thick enough.
/// </summary>
/// <remarks>
/// The blanks are those of the layout, as they are sawn out: a blank that is resawn counts once, as it does in
/// <see cref="Layout.Yield"/>, and needs a board for all of its parts. Blanks and clear places are both counted a kerf longer
/// and wider, since two blanks always have a kerf between them. Areas are counted in steps, rounded so that the bound stays
/// a bound; it lies above the exact one by less than one step a board, a hundredth of a percent of the blanks' area each.
/// </remarks>
internal sealed class AreaBound(LayoutProblem problem, Allowances allowances)
{
    private const int Steps = 10_000;

    /// <summary>The least area of boards of a timber that holds the blanks.</summary>
    public double LeastBoards(Species species, IReadOnlyList<Blank> blanks)
    {
        var needs = blanks.Select(blank => (
            Depth: blank.DepthNeeded(allowances),
            Area: ((blank.Length + allowances.Kerf) * (blank.Width + allowances.Kerf)).SquareMillimetres)).ToList();
        var step = needs.Sum(need => need.Area) / Steps;
        var leastBoards = new double[Steps + 1];
        Array.Fill(leastBoards, double.PositiveInfinity, 1, Steps);
        foreach (var board in problem.Stock.Take(problem.OnHand).Where(board => board.Board.Species == species).OrderByDescending(board => board.Depth))
        {
            // What is too thick for this board and all that follow must have its area by now.
            var tooThick = needs.Where(need => need.Depth > board.Depth).Sum(need => need.Area);
            Array.Fill(leastBoards, double.PositiveInfinity, 0, StepsFor(tooThick, step));
            var clear = (int)Math.Min(Steps, Math.Ceiling(ClearArea(board) / step));
            var whole = board.Whole.Area.SquareMillimetres;
            for (var covered = Steps; covered >= 0; covered--)
            {
                var after = Math.Min(Steps, covered + clear);
                leastBoards[after] = Math.Min(leastBoards[after], leastBoards[covered] + whole);
            }
        }

        return leastBoards[Steps];
    }

    /// <summary>How many steps an area needs at least; a hair less, so that rounding never rules out what is there.</summary>
    private static int StepsFor(double area, double step) => (int)Math.Clamp(Math.Ceiling((area / step) - 1e-6), 0, Steps);

    /// <summary>The clear area of a board with a kerf more each way, so that blanks with their kerfs are never more, in square millimetres.</summary>
    public double ClearArea(StockBoard board)
    {
        var kerf = allowances.Kerf;
        var usable = board.Usable;
        if (usable.IsEmpty)
        {
            return 0;
        }

        // A kerf may run into a flaw, so a flaw counts a kerf less; flaws that overlap are not counted twice.
        var apart = new List<Region>();
        foreach (var flaw in board.Flaws.Select(usable.Common).OrderByDescending(flaw => flaw.Area.SquareMillimetres))
        {
            if (!apart.Exists(flaw.Overlaps))
            {
                apart.Add(flaw);
            }
        }

        var lost = apart.Where(flaw => flaw.Length > kerf && flaw.Width > kerf).Sum(flaw => ((flaw.Length - kerf) * (flaw.Width - kerf)).SquareMillimetres);
        return ((usable.Length + kerf) * (usable.Width + kerf)).SquareMillimetres - lost;
    }
}
