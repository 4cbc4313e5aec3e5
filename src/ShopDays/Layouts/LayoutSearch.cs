using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>
/// Lays parts out on boards: everything placed if that can be, matched parts together if that can be, then the least
/// money for timber used (useful offcuts counted back), sawing, planing down and glue edges.
/// </summary>
public static class LayoutSearch
{
    /// <summary>Lays the parts of a job out on its boards.</summary>
    /// <param name="job">The job; of it the boards, the parts and the allowances count.</param>
    /// <param name="rates">What sawing costs in the shop.</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="seed">One seed gives one answer.</param>
    /// <exception cref="InvalidOperationException">The layout found breaks a rule of <see cref="LayoutCheck"/>: a bug.</exception>
    public static Layout LayOut(Job job, SawingRates rates, LayoutEffort effort, int seed) =>
        LayOut(job.Boards, job.Parts, job.Allowances, rates, effort, seed);

    /// <summary>Lays parts out on boards.</summary>
    /// <param name="boards">The boards on hand; each name is there once.</param>
    /// <param name="parts">The parts, spares among their numbers; each name is there once.</param>
    /// <param name="allowances">What is left on blanks and what the saw takes.</param>
    /// <param name="rates">What sawing costs in the shop.</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="seed">One seed gives one answer.</param>
    /// <exception cref="InvalidOperationException">The layout found breaks a rule of <see cref="LayoutCheck"/>: a bug.</exception>
    public static Layout LayOut(
        IReadOnlyList<Board> boards, IReadOnlyList<Part> parts, Allowances allowances, SawingRates rates, LayoutEffort effort, int seed)
    {
        List<Demand> demands = [.. parts.Select(Demand.For)];
        var found = new ShortOfStock(boards, demands, allowances, rates, effort, seed).Better(Arrange(boards, demands, allowances, rates, effort, seed));
        var layout = new LayoutWriter(found.Problem, found.Arrangement, allowances, rates).Write(found.Wanted);
        var faults = LayoutCheck.Faults(boards, parts, allowances, layout);
        return faults.Count == 0
            ? layout
            : throw new InvalidOperationException("the layout breaks a rule: " + string.Join("; ", faults));
    }

    /// <summary>
    /// Finds an arrangement. Panels that a board is wide enough for are one piece; those which find no room so are tried
    /// again in strips.
    /// </summary>
    internal static (LayoutProblem Problem, Arrangement Arrangement) Arrange(
        IReadOnlyList<Board> boards,
        IReadOnlyList<Demand> demands,
        Allowances allowances,
        SawingRates rates,
        LayoutEffort effort,
        int seed,
        Predicate<Arrangement>? enough = null)
    {
        var strips = PanelStrips.Usual();
        while (true)
        {
            var problem = new LayoutProblem(boards, demands, allowances, rates, strips);
            var arrangement = new ArrangementSearch(problem, new Random(seed)).Find(effort, enough);
            var whole = arrangement.Left
                .Where(blank => blank.Blank.Part.IsPanel)
                .SelectMany(blank => blank.Blank.Numbers.Select(number => (blank.Blank.Part.Name, number)))
                .Where(one => strips.Let(one.Name, one.number))
                .ToList();
            if (whole.Count == 0)
            {
                return (problem, arrangement);
            }
        }
    }
}
