using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Prices;
using ShopDays.Tests.Layouts;
using Xunit;

namespace ShopDays.Tests.Outside;

/// <summary>A price worked by hand, line by line, to the cent.</summary>
[Trait("Source", "worked example of a commission's price, figures invented; method common practice, no source")]
public sealed class WorkedPriceTests
{
    private static readonly Currency Dollars = new("USD", 2);

    private static ShopRate Rate => ShopRate.BuiltUp(
        Of(45_000),
        Percent.FromPercent(15),
        [new("rent", Of(6_000)), new("insurance", Of(1_200)), new("tools", Of(1_500)), new("power and heat", Of(900)), new("vehicle", Of(1_800)), new("bookkeeping", Of(1_100))],
        WorkTime.FromHours(1_100));

    [Fact]
    public void The_rate_is_what_an_hour_somebody_pays_for_has_to_earn()
    {
        Assert.Equal(Of(64_250), Rate.ToEarn);
        Assert.Equal(Of(6_750), Rate.PerYear[1].PerYear);
        Assert.Equal(Of(58.41m), Rate.PerHour);
    }

    [Fact]
    public void Every_line_of_the_price_is_right_to_the_cent()
    {
        var price = Worked();
        Assert.Equal([3_621.42m, 482.22m, 96m, 45m, 700.92m], [price.Lines[0].Amount.Amount, price.Lines[1].Amount.Amount + price.Lines[2].Amount.Amount, .. price.Lines.Skip(3).Select(line => line.Amount.Amount)]);
        Assert.Equal(Of(4_244.64m), price.Cost);
        Assert.Equal(Of(700.92m), price.Contingency);
        Assert.Equal(Of(4_945.56m), price.CostWithContingency);
        Assert.Equal(Of(5_818.31m), price.Reckoned);
    }

    [Fact]
    public void The_quoted_price_its_tax_and_its_stages_are_right_to_the_cent()
    {
        var quoted = Worked().Quoted;
        Assert.Equal((Of(5_820), Of(363.75m), Of(6_183.75m)), (quoted.Price, quoted.Tax, quoted.Total));
        Assert.Equal([2_328m, 1_746m, 1_746m], quoted.Payments.Select(payment => payment.BeforeTax.Amount));
        Assert.Equal(6_183.75m, quoted.Payments.Sum(payment => payment.ToPay.Amount));
    }

    [Fact]
    public void What_is_left_and_where_it_breaks_even_are_right()
    {
        var price = Worked();
        Assert.Equal(874.44m, price.Profit.Amount);
        Assert.Equal(15.02m, decimal.Round(price.MarginLeft!.Value * 100, 2));
        var risk = new PriceRisk([62 * 60.0], Rate.PerHour, price.Outlay);
        Assert.Equal(88.97, risk.BreakEven(price.Quoted.BeforeTax)!.Value.Hours, 0.005);
    }

    [Fact]
    public void A_margin_of_15_percent_is_a_markup_of_17_65_and_a_markup_of_15_leaves_13()
    {
        Assert.Equal(17.65m, decimal.Round(Margin.Of(0.15m).AsMarkup.Share * 100, 2));
        Assert.Equal(13.0m, decimal.Round(Markup.Of(0.15m).AsMargin.Share * 100, 1));
    }

    private static PriceBuildUp Worked()
    {
        var terms = new PricingTerms
        {
            Rate = Rate,
            Margin = Margin.Of(0.15m),
            Rounding = new(Of(10), RoundingWay.Nearest),
            Tax = new(Percent.FromPercent(6.25)),
            Consumables = new ConsumablesRule.Amount(Of(45)),
        };
        var bought = Volume.FromCubicMillimetres(51.3 * 144 * 25.4 * 25.4 * 25.4);
        var timber = new TimberBill
        {
            Lines = [new(Timber.Oak, 6, bought, bought * (38 / 51.3), Of(357.20m), Of(125.02m))],
            Total = Of(51.3m * 9.40m),
            Spares = [],
            AssumedBoardFoot = null,
        };
        return PriceBuildUp.Of(terms, [new(LabourKind.Other, 62 * 60)], 74 * 60, timber, AJobWith(new() { Hardware = [new("hardware", 1, Of(96))] }));
    }

    private static Job AJobWith(Commission commission) => new() { Name = "Hall table", Start = new(2027, 3, 1), Commission = commission };

    private static Money Of(decimal amount) => new(amount, Dollars);
}
