using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "NIST Special Publication 811, 2008 edition, appendix B.8 (factors from memory)")]
public sealed class ConversionFactorsTests
{
    /// <summary>Inexact factors are printed to seven digits there, so half a unit of the seventh is allowed.</summary>
    private const double SevenDigits = 5e-7;

    [Fact]
    public void An_inch_is_25_4_mm_exactly() => Assert.Equal(Length.FromMillimetres(25.4m), Reading("1 in"));

    [Fact]
    public void A_foot_is_0_3048_m_exactly() => Assert.Equal(Length.FromMillimetres(304.8m), Reading("1 ft"));

    // Exact in the source; equal doubles, since both are one literal.
    [Fact]
    public void A_pound_is_0_45359237_kg_exactly() => Assert.Equal(0.45359237, Mass.FromPounds(1).Kilograms);

    [Fact]
    public void A_square_foot_is_0_09290304_m2()
    {
        var area = Reading("1 ft") * Reading("1 ft");

        // Exact in the source; areas are doubles, good to about 1e-16, and 1e-14 leaves room for three roundings.
        Assert.InRange(area.SquareMillimetres / 92_903.04, 1 - 1e-14, 1 + 1e-14);
        Assert.InRange(area.SquareFeet, 1 - 1e-14, 1 + 1e-14);
    }

    [Theory]
    [InlineData("1 ft", "1 ft", "1 ft", 2.831685e-2)]
    [InlineData("1 in", "1 in", "1 in", 1.638706e-5)]
    [InlineData("12 in", "12 in", "1 in", 2.359737e-3)]
    public void A_volume_of_timber_in_cubic_metres_is_as_published(string length, string width, string thickness, double cubicMetres)
    {
        var volume = Reading(length) * Reading(width) * Reading(thickness);
        Assert.InRange(volume.CubicMetres / cubicMetres, 1 - SevenDigits, 1 + SevenDigits);
    }

    [Fact]
    public void A_board_foot_is_a_foot_square_and_an_inch_thick() =>
        Assert.Equal(1.0, (Reading("1 ft") * Reading("1 ft") * Reading("1 in")).BoardFeet, 12);

    private static Length Reading(string text) => Measures.Reading.Value(LengthText.Read(text, LengthUnit.Millimetre));
}
