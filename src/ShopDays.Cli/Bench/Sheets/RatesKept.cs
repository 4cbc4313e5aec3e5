using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Bench.Pages;

namespace ShopDays.Cli.Bench.Sheets;

/// <summary>
/// The sheet of rates, put together once for what was worked out: judging all times takes longer than anything else on a
/// page. While one who looks puts it together, others are shown the one before.
/// </summary>
internal sealed class RatesKept
{
    private readonly Lock gate = new();
    private volatile Kept? last;

    /// <summary>The sheet.</summary>
    public RatesSheet Of(ShopAtHand shop)
    {
        var known = last;
        if (known?.Of == shop)
        {
            return known.Sheet;
        }

        if (!gate.TryEnter())
        {
            if (known is not null)
            {
                return known.Sheet;
            }

            gate.Enter();
        }

        try
        {
            known = last;
            if (known?.Of != shop)
            {
                last = known = new(shop, RatesMaker.Sheet(shop));
            }

            return known.Sheet;
        }
        finally
        {
            gate.Exit();
        }
    }

    private sealed record Kept(ShopAtHand Of, RatesSheet Sheet);
}
