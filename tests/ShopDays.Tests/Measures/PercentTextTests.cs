using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class PercentTextTests
{
    [Theory]
    [InlineData("15%", 15)]
    [InlineData("11 %", 11)]
    [InlineData("7.5 percent", 7.5)]
    [InlineData("7 1/2 per cent", 7.5)]
    [InlineData("15", 15)]
    [InlineData("0.15", 0.15)]
    [InlineData("0%", 0)]
    [InlineData("1000%", 1_000)]
    public void A_percentage_is_read_with_and_without_its_sign(string text, double percent) =>
        Assert.Equal(Percent.FromPercent(percent), Reading.Value(PercentText.Read(text)));

    [Theory]
    [InlineData("-1%", 0, "'-1%' is below zero")]
    [InlineData("15 ‰", 3, "'‰' is left over")]
    [InlineData("15 of 100", 3, "'of 100' is not a percent sign")]
    [InlineData("15% net", 4, "'net' is left over")]
    [InlineData("1001%", 0, "'1001%' is more than 1000%")]
    [InlineData("none", 0, "'none' does not begin with a number")]
    public void Nonsense_is_located_and_quoted(string text, int offset, string what) =>
        Reading.Fault(PercentText.Read(text), offset, what, "a percentage such as 15% or 7.5%");

    [Fact]
    public void A_percentage_is_a_share_of_a_hundred()
    {
        Assert.Equal(0.15, Percent.FromPercent(15).Share);
        Assert.Equal("7.5%", Percent.FromPercent(7.5).ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => Percent.FromPercent(double.NaN));
    }
}
