using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>
/// How good any layout of the same blanks on the same boards could be: in yield and in money. Proven: by area, and by prices
/// of the blanks at which the boards earn no more than they cost (<see cref="PricedBound"/>), whichever says more.
/// </summary>
internal sealed class LayoutBound
{
    /// <summary>Sums in another order differ by less: a layout that reaches the bound must not seem to pass it.</summary>
    private const double Hair = 1 + 1e-12;

    private readonly LayoutProblem problem;
    private readonly AreaBound byArea;
    private readonly IReadOnlyList<TimberShare> timbers;
    private readonly int joints;

    /// <param name="problem">The boards and what work is worth on them.</param>
    /// <param name="allowances">The allowances.</param>
    /// <param name="boards">The boards of a layout, as they are cut.</param>
    public LayoutBound(LayoutProblem problem, Allowances allowances, IReadOnlyList<BoardLayout> boards)
    {
        this.problem = problem;
        byArea = new AreaBound(problem, allowances);
        timbers = [.. boards.GroupBy(board => board.Board.Species).Select(timber => new TimberShare(problem, byArea, timber.Key, [.. timber]))];
        joints = JointsOf(boards.SelectMany(board => board.Blanks).Select(placed => placed.Blank));
    }

    /// <summary>The joints of the panels that blanks are strips of, each panel's once, whichever of its strips are there.</summary>
    public static int JointsOf(IEnumerable<Blank> blanks) => blanks
        .Where(blank => blank.Strips > 1)
        .SelectMany(blank => blank.Numbers, (blank, number) => (blank.Part.Name, Number: number, blank.Strips))
        .DistinctBy(panel => (panel.Name, panel.Number))
        .Sum(panel => panel.Strips - 1);

    /// <summary>The best yield of any layout of the blanks which these boards yield; 0 when there are none.</summary>
    public double BestYield()
    {
        var blanks = timbers.Sum(timber => timber.Blanks.Sum(blank => (blank.Length * blank.Width).SquareMillimetres));
        return blanks == 0 ? 0 : Math.Min(1, Hair * blanks / timbers.Sum(LeastArea));
    }

    /// <summary>
    /// The least that any layout of the blanks costs: timber less offcuts, sawing, planing down, resawing and glue edges, in
    /// money, before anything is rounded.
    /// </summary>
    /// <param name="moneyPerMinute">What a minute of work costs.</param>
    public double LeastMoney(double moneyPerMinute) =>
        timbers.Sum(timber => timber.LeastMoney(moneyPerMinute)) + (joints * LayoutProblem.MinutesPerJoint * moneyPerMinute);

    /// <summary>The least area of whole boards of a timber, in square millimetres.</summary>
    private double LeastArea(TimberShare timber)
    {
        var known = timber.AreaCut;
        var least = byArea.LeastBoards(timber.Species, timber.Blanks);
        return least >= known * (1 - 1e-9) ? least : Math.Max(least, timber.WholeBoards(timber.LeastArea()));
    }
}
