using ShopDays.Measures;
using ShopDays.Prices;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "ISO 4217, table A.1, minor units of 0, 2 and 3 decimals (from memory)")]
public sealed class MinorUnitRoundingTests
{
    [Theory]
    [InlineData("JPY", "1234.5", "1235", "1,235 JPY")]
    [InlineData("KRW", "1234.4999", "1234", "1,234 KRW")]
    [InlineData("USD", "1234.565", "1234.57", "1,234.57 USD")]
    [InlineData("EUR", "1234.5649", "1234.56", "1,234.56 EUR")]
    [InlineData("KWD", "1234.5675", "1234.568", "1,234.568 KWD")]
    [InlineData("TND", "1234.56749", "1234.567", "1,234.567 TND")]
    public void An_amount_is_rounded_to_what_can_be_paid_halves_away_from_zero(string code, string amount, string paid, string printed)
    {
        var money = new Money(Read(amount), Currencies.TryFind(code)!);
        Assert.Equal((Read(paid), printed), (money.Rounded().Amount, money.ToString()));
    }

    [Theory]
    [InlineData("JPY", "1000", "334 333 333")]
    [InlineData("USD", "10", "3.34 3.33 3.33")]
    [InlineData("KWD", "1", "0.334 0.333 0.333")]
    public void Three_equal_stages_of_what_three_does_not_divide_lose_no_coin(string code, string total, string shares)
    {
        var currency = Currencies.TryFind(code)!;
        Assert.Equal(shares.Split(' ').Select(Read), new Money(Read(total), currency).SharedOut([1, 1, 1]).Select(share => share.Amount));
    }

    [Theory]
    [InlineData("JPY", 10, 12_345, 12_350, 12_340)]
    [InlineData("USD", 5, 12.5, 15, 10)]
    [InlineData("KWD", 0.5, 1.75, 2, 2)]
    public void Halves_go_away_from_zero_unless_the_shop_wants_them_even(string code, double step, double amount, double away, double even)
    {
        var currency = Currencies.TryFind(code)!;
        Money Of(double figure) => new((decimal)figure, currency);
        Assert.Equal((Of(away), Of(even)), (new RoundingRule(Of(step), RoundingWay.Nearest).Round(Of(amount)), new RoundingRule(Of(step), RoundingWay.NearestEven).Round(Of(amount))));
    }

    private static decimal Read(string figure) => decimal.Parse(figure, System.Globalization.CultureInfo.InvariantCulture);
}
