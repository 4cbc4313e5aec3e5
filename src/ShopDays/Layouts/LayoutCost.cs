using ShopDays.Measures;

namespace ShopDays.Layouts;

/// <summary>
/// What a layout costs, in its parts. Each part is rounded to the currency's minor unit, halves away from zero, before
/// anything is added, so that the parts add up to the total to the last digit. The figures are the same whatever the
/// maker would rather spend: a preference changes what is looked for, not what it costs.
/// </summary>
public sealed record LayoutCost
{
    /// <summary>The whole value of the boards that are cut.</summary>
    public required Money Timber { get; init; }

    /// <summary>
    /// What the offcuts are worth that are large enough to keep: three to seven tenths of their timber's value, more the larger
    /// they are (common practice, no source). To be taken off.
    /// </summary>
    public required Money Offcuts { get; init; }

    /// <summary>The time at the saw at the shop's rate.</summary>
    public required Money Sawing { get; init; }

    /// <summary>Planing down what is thicker than its part, and the faces that resawing leaves, at the shop's rate.</summary>
    public required Money PlaningDown { get; init; }

    /// <summary>The glue edges of panels, 20 min each (common practice, no source), at the shop's rate.</summary>
    public required Money GlueEdges { get; init; }

    /// <summary>The least that any layout of the same blanks on the same boards costs, a proven bound; rounded down to the minor unit.</summary>
    public required Money Least { get; init; }

    /// <summary>What an hour of work is reckoned at.</summary>
    public required Money Hour { get; init; }

    /// <summary>Whether the shop says nothing of its rate, so that an hour is reckoned at the price of ten board feet of the stock.</summary>
    public required bool HourIsAssumed { get; init; }

    /// <summary>What a board foot is reckoned at on the boards that bear no price; null when all boards that are cut bear one.</summary>
    public required Money? AssumedBoardFoot { get; init; }

    /// <summary>The hours that the layout decides, at the shop's rate.</summary>
    public Money Work => Sawing + PlaningDown + GlueEdges;

    /// <summary>Timber less offcuts plus work.</summary>
    public Money Total => Timber - Offcuts + Work;

    /// <summary>
    /// Whether no layout of the same blanks can cost less, but for the rounding of the five parts: half a minor unit each, and a
    /// whole one that the bound may have lost.
    /// </summary>
    public bool IsLeast => (Total - Least).Amount <= 3.5m * Total.Currency.MinorUnit;

    /// <summary>
    /// Whether these are sums of money at all: there is a rate, or a price on a board. Without either they only weigh timber and
    /// work against each other.
    /// </summary>
    public bool IsMoney => !HourIsAssumed || Hour.Currency != Search.Worth.NoCurrency;
}
