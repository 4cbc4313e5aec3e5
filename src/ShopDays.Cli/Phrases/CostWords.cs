using ShopDays.Layouts;
using ShopDays.Measures;

namespace ShopDays.Cli.Phrases;

/// <summary>What a layout costs, in words.</summary>
internal static class CostWords
{
    private const decimal BoardFeetPerCubicMetre = 423.776m;

    /// <summary>The parts of the cost as they are added up, the total last; empty where there is no money to reckon in.</summary>
    public static IEnumerable<(string Name, Money Amount)> Lines(LayoutCost cost)
    {
        if (!cost.IsMoney)
        {
            yield break;
        }

        yield return ("timber, the boards that are cut", cost.Timber);
        yield return ("less offcuts worth keeping", cost.Offcuts * -1);
        yield return ("sawing", cost.Sawing);
        yield return ("planing down what is too thick", cost.PlaningDown);
        yield return ("glue edges of panels", cost.GlueEdges);
        yield return ("in all", cost.Total);
    }

    /// <summary>How far the cost is from the least that any layout of the same blanks could have; null where no cost is told.</summary>
    public static string? Bound(LayoutCost cost) => (cost.IsMoney, cost.IsLeast) switch
    {
        (false, _) => null,
        (_, true) => "Proven: no layout of these blanks could cost less.",
        _ => $"No layout of these blanks could cost less than {cost.Least}.",
    };

    /// <summary>What was assumed where the shop or the job does not say it; empty where both say all.</summary>
    public static IEnumerable<string> Assumptions(LayoutCost cost, LengthFormat format)
    {
        if (!cost.IsMoney)
        {
            yield return "Neither a rate nor a price is given, so no cost is told; for comparing layouts an hour of work counts as much as ten board feet of timber.";
            yield break;
        }

        if (cost.AssumedBoardFoot is { } boardFoot)
        {
            yield return $"Timber without a price is reckoned at {ByVolume(boardFoot, format)}.";
        }

        if (cost.HourIsAssumed)
        {
            yield return $"The shop gives no rate; an hour is reckoned at {cost.Hour}, what ten board feet of the stock cost.";
        }
    }

    /// <summary>That the layout leans to one side; null when it does not.</summary>
    public static string? Leaning(LayoutPreference preference) => preference switch
    {
        LayoutPreference.AsPriced => null,
        LayoutPreference.Timber => "Laid out to spare timber rather than sawing; the figures are at full price.",
        LayoutPreference.Sawing => "Laid out to spare sawing rather than timber; the figures are at full price.",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string ByVolume(Money boardFoot, LengthFormat format) => format == LengthFormat.Millimetres
        ? $"{boardFoot * BoardFeetPerCubicMetre} a cubic metre"
        : $"{boardFoot} a board foot";
}
