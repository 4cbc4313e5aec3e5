using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class PricePerTests
{
    private static readonly Currency Dollars = new("USD", 2);

    [Theory]
    [InlineData("48 per hour", 48, PriceUnit.Hour)]
    [InlineData("USD 48/h", 48, PriceUnit.Hour)]
    [InlineData("350 per month", 350, PriceUnit.Month)]
    [InlineData("9.40 per board-foot", 9.4, PriceUnit.BoardFoot)]
    [InlineData("9.40 USD per board foot", 9.4, PriceUnit.BoardFoot)]
    [InlineData("9.40/bf", 9.4, PriceUnit.BoardFoot)]
    [InlineData("310 per m3", 310, PriceUnit.CubicMetre)]
    [InlineData("310 / m³", 310, PriceUnit.CubicMetre)]
    [InlineData("25 each", 25, PriceUnit.Each)]
    [InlineData("25 per piece", 25, PriceUnit.Each)]
    [InlineData("25 USD Each", 25, PriceUnit.Each)]
    public void A_price_says_what_it_is_for(string text, double amount, PriceUnit unit) =>
        Assert.Equal(new PricePer(new Money((decimal)amount, Dollars), unit), Reading.Value(PricePer.Read(text, Dollars)));

    [Theory]
    [InlineData("48", 2, "'48' does not say what it is for", "a price and its unit, such as 48.00 USD per hour")]
    [InlineData("48 per huor", 7, "'huor' is not a unit of price", "per hour, month, year, board-foot, m3, km or mile, or each, such as 25 each; nearest: hour")]
    [InlineData("48 hour", 3, "'hour' is not a unit of price", "per hour, month, year, board-foot, m3, km or mile, or each, such as 25 each; nearest: hour")]
    [InlineData("48 per", 6, "'48 per' does not say what it is for", "a price and its unit, such as 48.00 USD per hour")]
    [InlineData("48 per fortnight", 7, "'fortnight' is not a unit of price", "per hour, month, year, board-foot, m3, km or mile, or each, such as 25 each")]
    [InlineData("48 EUR per hour", 3, "'EUR' is not the shop's currency, USD", "a price and its unit, such as 48.00 USD per hour")]
    [InlineData("9.405/bf", 0, "'9.405' is finer than USD is paid", "at most 2 decimals, as in 48.00 USD")]
    [InlineData("-9/bf", 0, "'-9/bf' is below zero", "a price and its unit, such as 48.00 USD per hour")]
    public void Nonsense_is_located_and_quoted(string text, int offset, string what, string expected) =>
        Reading.Fault(PricePer.Read(text, Dollars), offset, what, expected);

    [Theory]
    [InlineData(PriceUnit.Hour)]
    [InlineData(PriceUnit.Month)]
    [InlineData(PriceUnit.BoardFoot)]
    [InlineData(PriceUnit.CubicMetre)]
    [InlineData(PriceUnit.Each)]
    public void What_is_printed_is_read_again(PriceUnit unit)
    {
        PricePer price = new(new Money(9.4m, Dollars), unit);
        Assert.Equal(price, Reading.Value(PricePer.Read(price.ToString(), Dollars)));
    }
}
