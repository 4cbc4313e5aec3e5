using ShopDays.Layouts.Search;

namespace ShopDays.Layouts;

/// <summary>
/// Lays parts out on boards: everything placed if that can be, matched parts together if that can be, then the least
/// money for timber used (useful offcuts counted back), sawing, planing down and glue edges.
/// </summary>
public static class LayoutSearch
{
    /// <summary>Lays parts out on boards.</summary>
    /// <exception cref="InvalidOperationException">The layout found breaks a rule of <see cref="LayoutCheck"/>: a bug.</exception>
    public static Layout LayOut(LayoutRequest request)
    {
        var layout = LayOutOnce(request);
        if (request.Preference == LayoutPreference.AsPriced)
        {
            return layout;
        }

        // Chance may lead the leaning search astray: what comes of none must not serve the preference better.
        var asPriced = LayOutOnce(request with { Preference = LayoutPreference.AsPriced });
        return Judged(asPriced).CompareTo(Judged(layout)) < 0 ? asPriced : layout;

        (double LeftOut, int NotHonoured, double Cost) Judged(Layout one) => (
            one.Unplaced.Sum(part => part.Part.Volume.CubicMillimetres),
            one.NotHonoured.Count,
            (double)(one.Cost.Timber - one.Cost.Offcuts).Amount + (request.Worth.WeightOfWork * (double)one.Cost.Work.Amount));
    }

    private static Layout LayOutOnce(LayoutRequest request)
    {
        request = request with { Worth = request.Worth };
        List<Demand> demands = [.. request.Parts.Select(part => Demand.For(part, request.Sawn))];
        var shortOfStock = new ShortOfStock(request, demands);
        var found = shortOfStock.Better(Arrange(request, demands));
        var layout = new LayoutWriter(found.Problem, found.Arrangement, request).Write(found.Wanted);
        layout = layout with { Unplaced = shortOfStock.WithHelp(layout.Unplaced, found) };
        var faults = LayoutCheck.Faults(request.Boards, request.Parts, request.Allowances, layout, request.Sawn);
        return faults.Count == 0
            ? layout
            : throw new InvalidOperationException("the layout breaks a rule: " + string.Join("; ", faults));
    }

    /// <summary>
    /// Finds an arrangement. Panels that a board is wide enough for are one piece; those which find no room so are tried
    /// again in strips.
    /// </summary>
    internal static (LayoutProblem Problem, Arrangement Arrangement) Arrange(
        LayoutRequest request, IReadOnlyList<Demand> demands, Predicate<Arrangement>? enough = null)
    {
        var strips = PanelStrips.Usual();
        while (true)
        {
            var problem = new LayoutProblem(request, demands, strips);
            var arrangement = new ArrangementSearch(problem, new Random(request.Seed)).Find(request.Effort, enough);
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
