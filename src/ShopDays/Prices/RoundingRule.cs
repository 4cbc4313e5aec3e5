using ShopDays.Measures;

namespace ShopDays.Prices;

/// <summary>Which way a price is rounded.</summary>
public enum RoundingWay
{
    /// <summary>To the nearest step, halves away from zero.</summary>
    Nearest,

    /// <summary>To the nearest step, halves to the even one.</summary>
    NearestEven,

    /// <summary>Up to the next step.</summary>
    Up,
}

/// <summary>How a price is rounded before it is quoted.</summary>
/// <param name="Step">The step, a whole number of minor units above zero: 10 for tens.</param>
/// <param name="Way">Which way.</param>
public sealed record RoundingRule(Money Step, RoundingWay Way)
{
    /// <summary>To the minor unit, halves away from zero.</summary>
    public static RoundingRule ToMinorUnit(Currency currency) => new(new(currency.MinorUnit, currency), RoundingWay.Nearest);

    /// <summary>Rounds an amount.</summary>
    public Money Round(Money amount)
    {
        var steps = amount.Amount / Step.Amount;
        var whole = Way switch
        {
            RoundingWay.Nearest => decimal.Round(steps, MidpointRounding.AwayFromZero),
            RoundingWay.NearestEven => decimal.Round(steps, MidpointRounding.ToEven),
            RoundingWay.Up => decimal.Ceiling(steps),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        return amount with { Amount = whole * Step.Amount };
    }
}
