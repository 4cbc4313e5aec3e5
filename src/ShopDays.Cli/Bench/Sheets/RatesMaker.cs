using System.Text;
using Microsoft.AspNetCore.Components;
using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Bench.Pages;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Paper.Svg;
using ShopDays.Cli.Phrases;
using ShopDays.Work;

namespace ShopDays.Cli.Bench.Sheets;

/// <summary>Puts into words what the log has taught.</summary>
internal static class RatesMaker
{
    private const int MostAsked = 12;
    private const int MostDrawn = 300;

    /// <summary>The sheet.</summary>
    /// <param name="shop">The shop, worked out.</param>
    public static RatesSheet Sheet(ShopAtHand shop)
    {
        var named = shop.Shop.Operations.Names.ToHashSet(StringComparer.Ordinal);
        var told = RatesNow.Of(shop.Shop, shop.Rates, shop.At.InZone(shop.Shop.Zone).Date, new Dictionary<Covariate, double>(), named, showAll: false);
        return new(
            told.Sentences,
            new(
                "Rates",
                [new("operation", false), new("tables"), new("now"), new("80 % range"), new("times")],
                [
                    .. told.Rates.Select(rate =>
                    {
                        var reading = told.ReadingOf(rate);
                        var at = told.AtOf(rate);
                        return (string[])[ToldRates.NameOf(rate) + (at.Length == 0 ? "" : $" ({at})"), reading.Write(rate.Prior), reading.Write(rate.Learned), $"{reading.WriteRange(rate.Learned)} {reading.Unit}", CountWords.Number(rate.Entries) + (rate.HeldOut == 0 ? "" : $" + {CountWords.Number(rate.HeldOut)}")];
                    }),
                ]),
            told.Rates.Count == 0 ? "" : ToldRates.SmallPrint,
            told.Card is null ? null : new MarkupString(Encoding.UTF8.GetString(RateDrawings.Expected(told, MostDrawn))),
            [.. told.Odd.Take(MostAsked).Select(one => new Link(FormattableString.Invariant($"/log/{one.Judged.Work.Entries[0].Number}"), $"{char.ToUpperInvariant(one.Told[0])}{one.Told[1..]}."))],
            told.NotLearnedFrom);
    }
}
