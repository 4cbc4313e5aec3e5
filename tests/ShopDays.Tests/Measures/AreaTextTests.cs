using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class AreaTextTests
{
    private const string Expected = "an area such as 40 sq ft or 3.7 m2";

    [Theory]
    [InlineData("40 sq ft")]
    [InlineData("40 Sq. Ft.")]
    [InlineData("40sqft")]
    [InlineData("40 ft2")]
    [InlineData("40 ft²")]
    [InlineData("40 square feet")]
    public void Square_feet_are_read(string text) => Assert.Equal(Area.FromSquareFeet(40), Reading.Value(AreaText.Read(text)));

    [Theory]
    [InlineData("3.75 m2")]
    [InlineData("3.75m²")]
    [InlineData("3 3/4 sq m")]
    [InlineData("3.75 square metres")]
    public void Square_metres_are_read(string text) => Assert.Equal(Area.FromSquareMetres(3.75), Reading.Value(AreaText.Read(text)));

    [Theory]
    [InlineData("40", 2, "'40' has no unit")]
    [InlineData("40 ft", 3, "'ft' is not a unit of area")]
    [InlineData("40 m2 of it", 3, "'m2 of it' is not a unit of area")]
    [InlineData("-2 m2", 0, "'-2 m2' is below zero")]
    [InlineData("10001 m2", 0, "'10001 m2' is more than a hectare")]
    [InlineData("room", 0, "'room' does not begin with a number")]
    public void Nonsense_is_located_and_quoted(string text, int offset, string what) => Reading.Fault(AreaText.Read(text), offset, what, Expected);

    [Theory]
    [InlineData(3.7137, "3.71 m2", "40 sq ft", "3.72 m2", "40 sq ft")]
    [InlineData(3.7, "3.7 m2", "39.8 sq ft", "3.7 m2", "39.9 sq ft")]
    [InlineData(0, "0 m2", "0 sq ft", "0 m2", "0 sq ft")]
    [InlineData(1234.5, "1,234.5 m2", "13,288 sq ft", "1,234.5 m2", "13,288.1 sq ft")]
    public void An_area_is_written_to_the_nearest_step_or_to_one_that_is_enough(double squareMetres, string metres, string feet, string enoughMetres, string enoughFeet)
    {
        var area = Area.FromSquareMetres(squareMetres);
        Assert.Equal((metres, feet), (AreaText.Write(area, feet: false), AreaText.Write(area, feet: true)));
        Assert.Equal((enoughMetres, enoughFeet), (AreaText.WriteEnough(area, feet: false), AreaText.WriteEnough(area, feet: true)));
    }
}
