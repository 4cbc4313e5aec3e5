using ShopDays.Measures;

namespace ShopDays.Prices;

/// <summary>Profit as a share of the price. It is no <see cref="Markup"/>: 15 % of the price are 17.65 % of the cost.</summary>
public readonly record struct Margin
{
    private Margin(decimal share) => Share = share;

    /// <summary>No profit.</summary>
    public static Margin None => default;

    /// <summary>The share of the price, 0 or more and less than 1.</summary>
    public decimal Share { get; }

    /// <summary>The same profit as a share of the cost: m / (1 - m).</summary>
    public Markup AsMarkup => Markup.Of(Share / (1 - Share));

    /// <summary>Makes one.</summary>
    /// <param name="share">The share of the price, 0 or more and less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is below zero, or leaves nothing of the price.</exception>
    public static Margin Of(decimal share) => share is >= 0 and < 1
        ? new(share)
        : throw new ArgumentOutOfRangeException(nameof(share), share, "a margin is a share of the price, from 0 to less than 1");

    /// <summary>Makes one from a percentage.</summary>
    /// <inheritdoc cref="Of(decimal)"/>
    public static Margin Of(Percent percent) => Of((decimal)percent.Value / 100);

    /// <summary>The price that leaves this margin over a cost, not rounded: cost / (1 - m).</summary>
    public Money PriceOf(Money cost) => cost with { Amount = cost.Amount / (1 - Share) };
}

/// <summary>Profit as a share of the cost. It is no <see cref="Margin"/>: 15 % on the cost leave 13 % of the price.</summary>
public readonly record struct Markup
{
    private Markup(decimal share) => Share = share;

    /// <summary>The share of the cost, 0 or more.</summary>
    public decimal Share { get; }

    /// <summary>The same profit as a share of the price: u / (1 + u).</summary>
    public Margin AsMargin => Margin.Of(Share / (1 + Share));

    /// <summary>Makes one.</summary>
    /// <param name="share">The share of the cost, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is below zero.</exception>
    public static Markup Of(decimal share) => share >= 0
        ? new(share)
        : throw new ArgumentOutOfRangeException(nameof(share), share, "a markup is a share of the cost, 0 or more");

    /// <summary>Makes one from a percentage.</summary>
    /// <inheritdoc cref="Of(decimal)"/>
    public static Markup Of(Percent percent) => Of((decimal)percent.Value / 100);

    /// <summary>The price with this markup on a cost, not rounded: cost x (1 + u).</summary>
    public Money PriceOf(Money cost) => cost * (1 + Share);
}
