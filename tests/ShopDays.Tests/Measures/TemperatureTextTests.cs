using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class TemperatureTextTests
{
    [Theory]
    [InlineData("14 C", 14.0)]
    [InlineData("14", 14.0)]
    [InlineData("-3 °C", -3.0)]
    [InlineData("50 F", 10.0)]
    [InlineData("212F", null)]
    [InlineData("14 K", null)]
    [InlineData("warm", null)]
    [InlineData("14 C and more", null)]
    public void A_temperature_is_read_in_either_scale_or_refused(string text, double? celsius)
    {
        var read = TemperatureText.Read(text);
        Assert.Equal(celsius is not null, read.IsRead);
        if (celsius is { } expected)
        {
            // Nine digits leave room for the rounding of one conversion in doubles, and for nothing else.
            Assert.Equal(expected, read.Value.Celsius, 9);
        }
    }
}
