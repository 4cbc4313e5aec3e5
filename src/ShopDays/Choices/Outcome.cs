using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Prices;
using ShopDays.Times;

namespace ShopDays.Choices;

/// <summary>What one way of doing a job comes to.</summary>
public sealed record Outcome
{
    /// <summary>The work in the shop's sessions.</summary>
    public required Plan Plan { get; init; }

    /// <summary>When it may be finished.</summary>
    public required FinishForecast Forecast { get; init; }

    /// <summary>What of the finish is for what may be spoiled; null where nothing may be.</summary>
    public SpoilingForecast? Spoiling { get; init; }

    /// <summary>The hours.</summary>
    public required JobEstimate Estimate { get; init; }

    /// <summary>The timber.</summary>
    public required TimberBill Timber { get; init; }

    /// <summary>The money; null where the shop does not say what an hour has to earn.</summary>
    public PricedOutcome? Money { get; init; }

    /// <summary>Days on which somebody beside the first worker is called in.</summary>
    public int CalledIn => Plan.Visits.Select(visit => visit.Date).Distinct().Count();

    /// <summary>Boards that are cut.</summary>
    public int Boards => Timber.Lines.Sum(line => line.Boards);

    /// <summary>The volume of these boards.</summary>
    public Volume Bought => Timber.Lines.Aggregate(Volume.Zero, (sum, line) => sum + line.Bought);

    /// <summary>What of it is not in the piece.</summary>
    public Volume Lost => Timber.Lines.Aggregate(Volume.Zero, (sum, line) => sum + line.Bought - line.InThePiece);
}

/// <summary>The money of one way of doing a job.</summary>
/// <param name="Price">What the price is made of.</param>
/// <param name="Least">The least price before tax for the risk that the maker would take: the same risk for every way.</param>
public sealed record PricedOutcome(PriceBuildUp Price, Money Least)
{
    /// <summary>What it costs, with what may go wrong.</summary>
    public Money Cost => Price.CostWithContingency;
}
