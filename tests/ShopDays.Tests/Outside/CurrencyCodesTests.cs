using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "ISO 4217, table A.1 (from memory)")]
public sealed class CurrencyCodesTests
{
    [Theory]
    [InlineData("USD", 2)]
    [InlineData("EUR", 2)]
    [InlineData("GBP", 2)]
    [InlineData("CHF", 2)]
    [InlineData("HUF", 2)]
    [InlineData("JPY", 0)]
    [InlineData("KRW", 0)]
    [InlineData("ISK", 0)]
    [InlineData("CLP", 0)]
    [InlineData("XOF", 0)]
    [InlineData("KWD", 3)]
    [InlineData("BHD", 3)]
    [InlineData("TND", 3)]
    public void A_currency_has_the_minor_unit_of_the_standard(string code, int minorDigits) =>
        Assert.Equal(new Currency(code, minorDigits), Currencies.TryFind(code));

    [Theory]
    [InlineData("DEM")]
    [InlineData("HRK")]
    [InlineData("XAU")]
    [InlineData("XXX")]
    [InlineData("US")]
    [InlineData("")]
    public void A_withdrawn_code_or_one_nobody_pays_in_is_not_found(string code) => Assert.Null(Currencies.TryFind(code));

    [Fact]
    public void A_code_is_found_whatever_its_case() => Assert.Equal("EUR", Currencies.TryFind("eur")?.Code);

    [Fact]
    public void Every_code_is_three_capital_letters_and_stands_once()
    {
        Assert.All(Currencies.Codes, code => Assert.True(code.Length == 3 && code.All(char.IsAsciiLetterUpper), code));
        Assert.Equal(Currencies.Codes.Distinct().Order(StringComparer.Ordinal), Currencies.Codes);
    }
}
