using ShopDays.Measures;

namespace ShopDays.Prices;

/// <summary>How a shop makes its prices.</summary>
public sealed record PricingTerms
{
    /// <summary>What an hour has to earn.</summary>
    public required ShopRate Rate { get; init; }

    /// <summary>The profit, as a share of the price.</summary>
    public Margin Margin { get; init; }

    /// <summary>The same as a share of the cost, where the shop says it so; null where it says the margin.</summary>
    public Markup? Markup { get; init; }

    /// <summary>How a price is rounded; null for the minor unit.</summary>
    public RoundingRule? Rounding { get; init; }

    /// <summary>Tax on the price.</summary>
    public TaxRule Tax { get; init; } = new(Percent.Zero);

    /// <summary>Glue, abrasives, finish and the like.</summary>
    public ConsumablesRule Consumables { get; init; } = new ConsumablesRule.Amount(null);

    /// <summary>What a kilometre or a mile of paid travel costs; null where the shop does not say.</summary>
    public PricePer? Travel { get; init; }

    /// <summary>How many boards more are bought of each species, should one fail; 0 or more.</summary>
    public int SpareBoards { get; init; }

    /// <summary>When which share of the total is paid; shares of 1 in all, at least one.</summary>
    public IReadOnlyList<StageShare> Stages { get; init; } = StageShare.Usual;
}

/// <summary>How glue, abrasives, finish and the like are reckoned.</summary>
public abstract record ConsumablesRule
{
    private ConsumablesRule()
    {
    }

    /// <summary>As an amount by the job; null for nothing.</summary>
    public sealed record Amount(Money? Price) : ConsumablesRule;

    /// <summary>As a share of the price before tax; 1 to 2 % is usual (common practice, no source).</summary>
    public sealed record OfPrice(Percent Share) : ConsumablesRule;
}

/// <summary>Tax on what is quoted. What is taxed how the law of the place says; an accountant knows.</summary>
/// <param name="Rate">On the piece, and on all that has no rate of its own.</param>
public sealed record TaxRule(Percent Rate)
{
    /// <summary>On delivery and placing, where the law taxes them otherwise; null where it does not.</summary>
    public Percent? OnDelivery { get; init; }

    /// <summary>Whether prices are quoted with the tax in them, as to a private buyer in many places.</summary>
    public bool IsIncluded { get; init; }
}

/// <summary>When a stage is paid.</summary>
public enum StagePoint
{
    /// <summary>When the piece is ordered: it covers the stock and makes the order firm.</summary>
    Order,

    /// <summary>At the dry fit, before glue: the client may still come and look.</summary>
    DryFit,

    /// <summary>Before the first coat.</summary>
    Finish,

    /// <summary>When it is delivered.</summary>
    Delivery,
}

/// <summary>A share of the total that is paid at a point.</summary>
/// <param name="On">When.</param>
/// <param name="Share">Above 0 and at most 1.</param>
public sealed record StageShare(StagePoint On, decimal Share)
{
    /// <summary>30 to 50 % on order, a stage at something that can be seen, the rest on delivery (common practice, no source).</summary>
    public static IReadOnlyList<StageShare> Usual { get; } = [new(StagePoint.Order, 0.4m), new(StagePoint.DryFit, 0.3m), new(StagePoint.Delivery, 0.3m)];
}
