using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>
/// What a day sheet says of honing. Which tasks hone first, and the time for it, is settled by the order in which the tasks
/// are written; a plan may put two of them one after the other, and an edge that was honed for the first of them is then not
/// dull for the second. The minutes for it stay in the plan: they are few, and dull comes sooner or later.
/// </summary>
internal static class HoningInSession
{
    /// <summary>The stretches of a session, each with what it says of honing.</summary>
    /// <param name="session">One worker's, in their order.</param>
    /// <param name="shares">The share of its task that each is, above 0 up to 1.</param>
    public static IReadOnlyList<PlannedWork> In(IReadOnlyList<PlannedWork> session, IReadOnlyList<double> shares)
    {
        var used = new Dictionary<string, double>(StringComparer.Ordinal);
        return [.. session.Select((work, index) => work with { Honing = Said(work, shares[index], used) })];
    }

    // Grit, which dulls an edge sooner, is left out: the maker feels it.
    private static string Said(PlannedWork work, double share, Dictionary<string, double> used)
    {
        if (work.Task.Sharpens is { } saw)
        {
            return OfTouchUp(work, saw, used);
        }

        if (work.Task.Timing is not TaskTiming.ByOperation { Method.Edge: { } edge } timing)
        {
            return "";
        }

        var said = work.Task.Honed is { } honing ? Of(work, honing, edge, used) : "";
        if (used.TryGetValue(edge.Name, out var soFar))
        {
            used[edge.Name] = soFar + (CuttingEdge.UseBy(timing, isGritty: false) * share);
        }

        return said;
    }

    // Of two jobs in hand each touches the saw up for its own sake.
    private static string OfTouchUp(PlannedWork work, CuttingEdge saw, Dictionary<string, double> used)
    {
        if (work.IsFirstPiece && used.TryGetValue(saw.Name, out var soFar) && soFar <= saw.Life / 2)
        {
            return $"the {saw.Name} is sharp already: again only when it is dull";
        }

        used[saw.Name] = 0;
        return "";
    }

    private static string Of(PlannedWork work, Honing honing, CuttingEdge edge, Dictionary<string, double> used)
    {
        if (!work.IsFirstPiece)
        {
            return honing.OnTheWay;
        }

        if (used.TryGetValue(edge.Name, out var soFar) && (edge.IsForKeenWork ? soFar <= edge.Life / 2 : soFar < edge.Life))
        {
            return honing.Already;
        }

        used[edge.Name] = 0;
        return honing.First;
    }
}
