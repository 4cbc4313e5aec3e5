using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Prices;

/// <summary>A line of what a job costs its maker, rounded to the minor unit. Rounded before it is added, so that lines as printed add up.</summary>
public abstract record CostLine
{
    private CostLine(Money amount) => Amount = amount;

    /// <summary>The amount, 0 or more.</summary>
    public Money Amount { get; }

    /// <summary>Whether it is hours of the maker, and not money that goes out.</summary>
    public bool IsTime => this is Labour or Slack;

    /// <summary>Whether it is for what may go wrong, and not for what is expected.</summary>
    public bool IsContingency => this is Slack or Spare;

    /// <summary>Hours of a kind at the shop's rate.</summary>
    public sealed record Labour(LabourShare Share, Money Price) : CostLine(Price);

    /// <summary>Timber that stays in the piece.</summary>
    public sealed record TimberUsed(TimberLine Line) : CostLine(Line.Used);

    /// <summary>Timber that is sawn and planed away or left over.</summary>
    public sealed record TimberLost(TimberLine Line) : CostLine(Line.Lost);

    /// <summary>A fitting.</summary>
    public sealed record Hardware(BoughtItem Item) : CostLine(Item.Price);

    /// <summary>Glue, abrasives, finish and the like.</summary>
    /// <param name="OfPrice">The share of the price that it is reckoned as; null for a fixed amount.</param>
    /// <param name="Price">The amount.</param>
    public sealed record Consumables(Percent? OfPrice, Money Price) : CostLine(Price);

    /// <summary>Work that others do.</summary>
    public sealed record Outside(OutsideWork Work) : CostLine(Work.Price);

    /// <summary>Travel.</summary>
    /// <param name="Way">The paid way and what it costs by its unit; null for an amount that is given.</param>
    /// <param name="Price">The amount.</param>
    public sealed record Travel(PaidWay? Way, Money Price) : CostLine(Price);

    /// <summary>Hours for bad luck: those that four courses in five keep, less those that are as likely as not.</summary>
    public sealed record Slack(long Minutes, Money Price) : CostLine(Price);

    /// <summary>A board more, should one fail.</summary>
    public sealed record Spare(SpareBoard Board) : CostLine(Board.Price);
}

/// <summary>A way that the client pays.</summary>
/// <param name="Kilometres">How far, above 0.</param>
/// <param name="Each">What a kilometre or a mile costs.</param>
public sealed record PaidWay(double Kilometres, PricePer Each)
{
    private const double KilometresPerMile = 1.609344;

    /// <summary>How far in the unit of the price.</summary>
    public double Distance => Each.Unit == PriceUnit.Mile ? Kilometres / KilometresPerMile : Kilometres;

    /// <summary>What it costs, rounded to the minor unit; the distance counts to its tenth, as it is printed.</summary>
    public Money Price => (Each.Amount * decimal.Round((decimal)Distance, 1, MidpointRounding.AwayFromZero)).Rounded();
}
