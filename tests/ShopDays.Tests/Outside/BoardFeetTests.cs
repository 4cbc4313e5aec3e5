using ShopDays.Measures;
using ShopDays.Tests.Measures;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "common practice, no source")]
public sealed class BoardFeetTests
{
    /// <summary>Feet x inches x inches of thickness over 12, as it is reckoned at a timber yard and written with three figures.</summary>
    [Theory]
    [InlineData("8 ft x 9 1/2 in x 5/4", 7.92, 0.005)]
    [InlineData("10 ft x 16 in x 2 in", 26.7, 0.05)]
    [InlineData("6' x 8\" x 4/4", 4.00, 0.005)]
    [InlineData("12' x 6\" x 8/4", 12.0, 0.05)]
    public void A_board_holds_as_many_board_feet_as_the_yard_reckons(string text, double boardFeet, double halfOfTheLastFigure)
    {
        var size = Reading.Value(SizeText.Read(text, LengthUnit.Inch, roughThickness: true));
        Assert.InRange(size.Volume.BoardFeet, boardFeet - halfOfTheLastFigure, boardFeet + halfOfTheLastFigure);
    }
}
