using ShopDays.Measures;
using ShopDays.Prices;

namespace ShopDays.Cli.Files;

/// <summary>What the shop charges, and what its quotes say.</summary>
internal sealed record ShopMoney
{
    /// <summary>Days for which a quote holds where the shop does not say (common practice, no source).</summary>
    public const int UsualDays = 30;

    /// <summary>How it makes its prices.</summary>
    public required PricingTerms Terms { get; init; }

    /// <summary>Days for which a quote holds.</summary>
    public int ValidDays { get; init; } = UsualDays;

    /// <summary>What stands under its quotes, from a file of the maker's own; empty for nothing.</summary>
    public IReadOnlyList<string> SmallPrint { get; init; } = [];

    /// <summary>What an hour counts for where layouts are compared.</summary>
    public Money Hour => Terms.Rate.OwnHour;
}
