using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>
/// How good the yield could be at best. Whole boards must be cut, so the least area of boards whose clear area holds the
/// blanks is found board by board, thickest first, each thickness of part from boards that are thick enough.
/// </summary>
/// <remarks>
/// Blanks and clear places are both counted a kerf longer and wider, since two blanks always have a kerf between them.
/// Areas are counted in steps, rounded so that the bound stays a bound; it lies above the exact one by less than one
/// step a board, a hundredth of a percent of the blanks' area each.
/// </remarks>
internal sealed class LayoutBound(LayoutProblem problem, Allowances allowances)
{
    private const int Steps = 10_000;

    /// <summary>The best yield of any layout that places the parts which these boards yield; 0 when there are none.</summary>
    public double BestYield(IReadOnlyList<BoardLayout> boards)
    {
        var placed = boards
            .SelectMany(board => board.Blanks)
            .SelectMany(blank => blank.Blank.Numbers.Select(number => (blank.Blank.Part.Name, number)))
            .ToHashSet();
        var demands = problem.Wants
            .SelectMany(want => want.Numbers.Where(number => placed.Contains((want.Part.Name, number))), Needs)
            .GroupBy(need => need.Species)
            .Select(species => Covers(species.Key, [.. species]))
            .ToList();
        return demands.Count == 0 ? 0 : BestRatio(demands);
    }

    /// <summary>The least and the most area that a number takes of boards, in whichever way it is sawn.</summary>
    private Need Needs(Want want, int number)
    {
        var kerf = allowances.Kerf;
        var with = want.Ways.Select(way => Share(way, blank => ((blank.Length + kerf) * (blank.Width + kerf)).SquareMillimetres)).Min();
        var most = want.Ways.Select(way => Share(way, blank => blank.Area)).Max();
        return new Need(want.Part.Species, want.Part.Thickness, with, most);

        double Share(Way way, Func<WantedBlank, double> area) =>
            way.Blanks.Where(blank => blank.Blank.Numbers.Contains(number)).Sum(blank => area(blank) / blank.Blank.Numbers.Count);
    }

    /// <summary>For each amount of blanks that the boards of a timber may yield, the least area of boards.</summary>
    private List<(double Blanks, double Boards)> Covers(Species species, List<Need> needs)
    {
        var most = needs.Sum(need => need.Most);
        var least = needs.Sum(need => need.Least);
        var step = Math.Max(most, least) / Steps;
        var leastBoards = new double[Steps + 1];
        Array.Fill(leastBoards, double.PositiveInfinity, 1, Steps);
        foreach (var board in problem.Stock.Take(problem.OnHand).Where(board => board.Board.Species == species).OrderByDescending(board => board.Depth))
        {
            // What is too thick for this board and all that follow must have its area by now.
            var tooThick = needs.Where(need => need.Thickness > board.Depth).Sum(need => need.Least);
            Array.Fill(leastBoards, double.PositiveInfinity, 0, StepsFor(tooThick, step));
            var clear = (int)Math.Min(Steps, Math.Ceiling(ClearArea(board) / step));
            var whole = board.Whole.Area.SquareMillimetres;
            for (var covered = Steps; covered >= 0; covered--)
            {
                var after = Math.Min(Steps, covered + clear);
                leastBoards[after] = Math.Min(leastBoards[after], leastBoards[covered] + whole);
            }
        }

        var first = StepsFor(least, step);
        return [.. Enumerable.Range(first, Steps + 1 - first)
            .Where(covered => double.IsFinite(leastBoards[covered]))
            .Select(covered => (Math.Min(most, covered * step), leastBoards[covered]))];
    }

    /// <summary>How many steps an area needs at least; a hair less, so that rounding never rules out what is there.</summary>
    private static int StepsFor(double area, double step) => (int)Math.Clamp(Math.Ceiling((area / step) - 1e-6), 0, Steps);

    private double ClearArea(StockBoard board)
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

    /// <summary>
    /// The greatest ratio of blanks to boards, one cover chosen for each timber: the ratio at which the best choices just
    /// break even, found by halving.
    /// </summary>
    private static double BestRatio(List<List<(double Blanks, double Boards)>> timbers)
    {
        var (low, high) = (0.0, 1.0);
        while (high - low > 1e-9)
        {
            var ratio = (low + high) / 2;
            if (timbers.Sum(covers => covers.Max(cover => cover.Blanks - (ratio * cover.Boards))) >= 0)
            {
                low = ratio;
            }
            else
            {
                high = ratio;
            }
        }

        return high;
    }

    private readonly record struct Need(Species Species, Length Thickness, double Least, double Most);
}
