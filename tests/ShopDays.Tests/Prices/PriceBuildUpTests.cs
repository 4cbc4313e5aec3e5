using CsCheck;
using ShopDays.Measures;
using ShopDays.Prices;
using Xunit;

namespace ShopDays.Tests.Prices;

public sealed class PriceBuildUpTests
{
    [Fact]
    public void Every_amount_can_be_paid_in_coins() => AnyPrice.All.Sample(price =>
    {
        Money[] all =
        [
            .. price.Lines.Select(line => line.Amount),
            price.Reckoned,
            .. price.Quoted.Lines.SelectMany(line => (Money[])[line.Amount, line.Tax]),
            .. price.Quoted.Payments.SelectMany(payment => (Money[])[payment.ToPay, payment.OfTax]),
        ];
        Assert.All(all, amount => Assert.Equal(amount.Rounded(), amount));
        Assert.All(all, amount => Assert.True(amount.Amount >= 0));
    });

    [Fact]
    public void Lines_add_up_to_the_total_as_they_are_printed() => AnyPrice.All.Sample(price =>
    {
        var quoted = price.Quoted;
        Assert.Equal(price.Lines.Sum(line => line.Amount.Amount), price.CostWithContingency.Amount);
        Assert.Equal(quoted.Lines.Sum(line => line.Amount.Amount) + (quoted.TaxIsIncluded ? 0 : quoted.Lines.Sum(line => line.Tax.Amount)), quoted.Total.Amount);
        Assert.Equal(quoted.BeforeTax.Amount + quoted.Tax.Amount, quoted.Total.Amount);
        Assert.Equal(price.CostWithContingency.Amount + price.Profit.Amount, quoted.BeforeTax.Amount);
    });

    [Fact]
    public void Payments_add_up_to_the_total_and_their_taxes_to_the_tax() => AnyPrice.All.Sample(price =>
    {
        var quoted = price.Quoted;
        Assert.Equal(quoted.Total.Amount, quoted.Payments.Sum(payment => payment.ToPay.Amount));
        Assert.Equal(quoted.Tax.Amount, quoted.Payments.Sum(payment => payment.OfTax.Amount));
        Assert.All(quoted.Payments, payment => Assert.True(
            Math.Abs(payment.ToPay.Amount - (quoted.Total.Amount * payment.Stage.Share)) <= 2 * quoted.Total.Currency.MinorUnit, "a payment is its share, to a coin for what is kept and one for the tax"));
    });

    [Fact]
    public void The_reckoned_price_leaves_the_margin_to_the_coin() => AnyPrice.All.Sample(price =>
        Assert.True(Math.Abs((price.Reckoned.Amount * (1 - price.Terms.Margin.Share)) - price.CostWithContingency.Amount) <= price.Reckoned.Currency.MinorUnit / 2));

    [Fact]
    public void Consumables_by_the_price_are_their_share_of_the_price() => AnyPrice.All.Where(price => price.Terms.Consumables is ConsumablesRule.OfPrice).Sample(price =>
    {
        var share = (decimal)((ConsumablesRule.OfPrice)price.Terms.Consumables).Share.Value / 100;
        var consumables = price.Lines.OfType<CostLine.Consumables>().Single().Amount.Amount;
        Assert.True(Math.Abs(consumables - (share * price.Reckoned.Amount)) <= price.Reckoned.Currency.MinorUnit, "to the coin that rounding twice may cost");
    });

    [Fact]
    public void A_price_that_is_given_is_quoted_as_it_is() => AnyPrice.All.Where(price => price.IsGiven).Sample(price =>
        Assert.Equal(price.Quoted.Price.Amount, decimal.Floor(price.Quoted.Price.Amount)));

    [Fact]
    public void A_quoted_price_is_a_whole_number_of_the_shops_steps() => AnyPrice.All.Where(price => !price.IsGiven && price.Terms.Rounding is not null).Sample(price =>
    {
        Assert.Equal(0, price.Quoted.Price.Amount % price.Terms.Rounding!.Step.Amount);
        Assert.True(price.Terms.Rounding.Way != RoundingWay.Up || price.Quoted.BeforeTax.Amount >= price.Reckoned.Amount - price.Reckoned.Currency.MinorUnit, "rounding up gives nothing away");
    });

    [Fact]
    public void Margin_and_markup_are_the_same_profit_seen_from_two_sides() => Gen.Select(Gen.Int[0, 9_900], Gen.Int[0, 10_000_000]).Sample((basis, cost) =>
    {
        var margin = Margin.Of(basis / 10_000m);
        var money = new Money(cost / 100m, new("USD", 2));
        Assert.Equal(margin.Share, decimal.Round(margin.AsMarkup.AsMargin.Share, 20));
        Assert.Equal(margin.PriceOf(money).Rounded(), margin.AsMarkup.PriceOf(money).Rounded());
    });

    [Fact]
    public void Overhead_by_the_hour_is_added_to_an_hour_that_is_given()
    {
        var pounds = new Currency("GBP", 2);
        var rate = ShopRate.Given(new(34, pounds), [new("overhead", new(3_120, pounds))], WorkTime.FromHours(960));
        Assert.Equal((34m, 37.25m, 35_760m), (rate.OwnHour.Amount, rate.PerHour.Amount, rate.ToEarn!.Amount));
    }
}
