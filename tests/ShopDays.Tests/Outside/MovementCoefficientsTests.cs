using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "Wood Handbook (2010), chapter 13, change of dimension: coefficients of single species and a worked panel, from memory")]
public sealed class MovementCoefficientsTests
{
    /// <summary>A 17 in panel of plain-sawn white oak from 11 % to 7 %: 17 x 4 x 10.5 / 3000.</summary>
    [Fact]
    public void A_panel_of_white_oak_shrinks_by_a_quarter_of_an_inch_from_eleven_to_seven_percent() =>
        Assert.Equal(0.238, Inches("white oak", BoardSawing.Plain, 17, 11, 7), 0.0005);

    /// <summary>The coefficients are per inch and point; the simple rule from total shrinkage lies within 7 % of them.</summary>
    [Theory]
    [InlineData("black cherry", 0.00126, 0.00248)]
    [InlineData("black walnut", 0.00190, 0.00274)]
    [InlineData("northern red oak", 0.00137, 0.00299)]
    [InlineData("sugar maple", 0.00165, 0.00353)]
    [InlineData("white oak", 0.00180, 0.00365)]
    public void A_point_moves_an_inch_as_the_coefficients_have_it(string species, double radial, double tangential)
    {
        Assert.InRange(Inches(species, BoardSawing.Quarter, 1, 10, 9), 0.93 * radial, 1.07 * radial);
        Assert.InRange(Inches(species, BoardSawing.Plain, 1, 10, 9), 0.93 * tangential, 1.07 * tangential);
    }

    private static double Inches(string species, BoardSawing sawing, double width, double from, double to) =>
        Movement.Change(BuiltIn.Species.TryFind(species, out var found) ? found : throw new ArgumentException(species, nameof(species)), sawing, Length.FromInches(width), MoistureContent.FromPercent(from), MoistureContent.FromPercent(to)).Inches;
}
