using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Tests.Measures;
using ShopDays.Tests.Work;
using ShopDays.Work.Materials;
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

    /// <summary>What is paid for: thickness as rough, and never less than an inch.</summary>
    [Theory]
    [InlineData("8 ft x 9 1/2 in x 5/4", 7.92, 0.005)]
    [InlineData("10 ft x 16 in x 2 in", 26.7, 0.05)]
    [InlineData("8 ft x 6 in x 3/4", 4.00, 0.005)]
    [InlineData("8 ft x 6 in x 4/4", 4.00, 0.005)]
    public void A_yard_counts_thin_boards_as_an_inch_thick(string text, double boardFeet, double halfOfTheLastFigure)
    {
        var size = Reading.Value(SizeText.Read(text, LengthUnit.Inch, roughThickness: true));
        Assert.InRange(YardMeasure.Of(size.Length, size.Width, size.Thickness, byBoardFeet: true).BoardFeet, boardFeet - halfOfTheLastFigure, boardFeet + halfOfTheLastFigure);
    }

    /// <summary>A finished part is reckoned as it is: 42 x 17 x 7/8 in holds 4.34 board feet.</summary>
    [Fact]
    public void A_finished_part_holds_what_it_holds() => Assert.InRange((Length.FromInches(42m) * Length.FromInches(17m) * Length.FromInches(0.875m)).BoardFeet, 4.335, 4.345);

    /// <summary>For 38 board feet of white oak that stay in the piece a yard list says 51.3, with 35 % for waste: hardwood takes 30 to 50 %, softwood 20 to 30 %, slabs with live edges 60 to 100 %.</summary>
    [Fact]
    public void The_waste_of_the_trade_goes_on_what_stays_in_the_piece()
    {
        var oak = WasteFactor.Of(AJob.Oak, BoardEdges.RoughSawn);
        Assert.InRange(51.3, 38 * (1 + oak.Low), 38 * (1 + oak.High));
        Assert.Equal((0.30, 0.50), (oak.Low, oak.High));
        Assert.Equal(new WasteFactor(0.20, 0.30), WasteFactor.Of(AJob.Pine, BoardEdges.Straight));
        Assert.Equal(new WasteFactor(0.60, 1.00), WasteFactor.Of(AJob.Oak, BoardEdges.Live));
    }
}
