using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class MoneyTextTests
{
    private static readonly Currency Dollars = new("USD", 2);
    private static readonly Currency Yen = new("JPY", 0);
    private static readonly Currency Dinars = new("KWD", 3);

    [Theory]
    [InlineData("48", 48)]
    [InlineData("48.50", 48.5)]
    [InlineData("0", 0)]
    [InlineData("USD 48", 48)]
    [InlineData("48 USD", 48)]
    [InlineData("48.5usd", 48.5)]
    [InlineData(" 12000.05 ", 12_000.05)]
    public void An_amount_is_read_with_and_without_its_code(string text, double amount) =>
        Assert.Equal(new Money((decimal)amount, Dollars), Reading.Value(MoneyText.Read(text, Dollars)));

    [Theory]
    [InlineData("", 0, "nothing is written here")]
    [InlineData("-48", 0, "'-48' is below zero")]
    [InlineData("48 EUR", 3, "'EUR' is not the shop's currency, USD")]
    [InlineData("eur 48", 0, "'eur' is not the shop's currency, USD")]
    [InlineData("48 USX", 3, "'USX' is not a currency's code")]
    [InlineData("USD 48 USD", 7, "'USD' is left over")]
    [InlineData("$48", 0, "'$48' has a sign that several currencies share")]
    [InlineData("USD", 3, "a number is missing here")]
    [InlineData("48 1/2", 3, "'1/2' is left over")]
    [InlineData("4e3", 0, "'4e3' has an exponent")]
    public void Nonsense_is_located_and_quoted(string text, int offset, string what) =>
        Reading.Fault(MoneyText.Read(text, Dollars), offset, what, "an amount such as 48.00 USD");

    [Fact]
    public void An_amount_finer_than_the_minor_unit_is_refused()
    {
        Reading.Fault(MoneyText.Read("USD 48.505", Dollars), 4, "'48.505' is finer than USD is paid", "at most 2 decimals, as in 48.00 USD");
        Reading.Fault(MoneyText.Read("48.5", Yen), 0, "'48.5' is finer than JPY is paid", "no decimals, as in 48 JPY");
        Assert.Equal(48.505m, Reading.Value(MoneyText.Read("48.505", Dinars)).Amount);
    }

    [Fact]
    public void A_comma_gets_its_cure() => Reading.Fault(
        MoneyText.Read("1,200", Dollars), 1, "'1,200' has a comma in it", "a point before decimals: write 1.200, not 1,200 (or 1200 when thousands are meant)");

    [Fact]
    public void Every_currency_s_own_example_can_be_read()
    {
        foreach (var code in Currencies.Codes)
        {
            var currency = Currencies.TryFind(code)!;
            Assert.Equal(new Money(48, currency), Reading.Value(MoneyText.Read(new Money(48, currency).ToString(), currency)));
        }
    }
}
