using System.Globalization;
using ShopDays.Layouts;
using ShopDays.Measures;

namespace ShopDays.Cli.Json;

/// <summary>What a layout costs, for other programs: decimal strings that add up to the last digit.</summary>
internal static class CostJson
{
    /// <summary>The cost; null where there is neither a rate nor a price to reckon in.</summary>
    public static object? Of(LayoutCost cost) => !cost.IsMoney ? null : new
    {
        Currency = cost.Total.Currency.Code,
        Timber = Text(cost.Timber),
        Offcuts = Text(cost.Offcuts),
        Work = Text(cost.Work),
        Total = Text(cost.Total),
        Least = Text(cost.Least),
        Proven = cost.IsLeast,
        WorkOn = new { Sawing = Text(cost.Sawing), PlaningDown = Text(cost.PlaningDown), GlueEdges = Text(cost.GlueEdges) },
        Hour = Text(cost.Hour),
        cost.HourIsAssumed,
        AssumedPerBoardFoot = cost.AssumedBoardFoot is { } boardFoot ? Text(boardFoot) : null,
    };

    /// <summary>An amount with as many decimals as the currency has.</summary>
    public static string Text(Money money) =>
        money.Rounded().Amount.ToString("F" + money.Currency.MinorDigits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
