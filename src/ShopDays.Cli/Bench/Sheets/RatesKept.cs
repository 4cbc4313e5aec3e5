using NodaTime;
using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Bench.Pages;
using ShopDays.Cli.Commands;

namespace ShopDays.Cli.Bench.Sheets;

/// <summary>
/// The sheet of rates, put together once for what was learned, behind all else: judging all times of a long log takes longer
/// than anything else on a page. Until it is there, the one before is shown.
/// </summary>
internal sealed class RatesKept(ShopKeeper keeper)
{
    private readonly Lock gate = new();
    private volatile Kept? last;
    private Task<Kept>? underWay;

    /// <summary>The sheet; waited for where there was none yet.</summary>
    /// <param name="shop">The shop, worked out.</param>
    /// <param name="given">Ends the waiting.</param>
    /// <returns>The sheet, and the moment that it is of.</returns>
    public async Task<(RatesSheet Sheet, Instant At)> Of(ShopAtHand shop, CancellationToken given)
    {
        if (last is { } known && known.Of == shop.Rates)
        {
            return (known.Sheet, shop.At);
        }

        Task<Kept> making;
        lock (gate)
        {
            if (underWay is not { IsCompleted: false })
            {
                underWay = keeper.Behind(() => last = new(shop.Rates, shop.At, RatesMaker.Sheet(shop)));
            }

            making = underWay;
        }

        var kept = last ?? await making.WaitAsync(given);
        return (kept.Sheet, kept.At);
    }

    private sealed record Kept(LearnedRates Of, Instant At, RatesSheet Sheet);
}
