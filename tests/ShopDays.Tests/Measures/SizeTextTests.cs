using CsCheck;
using ShopDays.Measures;
using Xunit;
using Size = ShopDays.Measures.Size;

namespace ShopDays.Tests.Measures;

public sealed class SizeTextTests
{
    private const string Expected = "length x width x thickness, such as 42\" x 17\" x 7/8\"";

    [Theory]
    [InlineData("8' x 9 1/2\" x 5/4", 96, 9.5, 1.25)]
    [InlineData("42\" x 17\" x 7/8\"", 42, 17, 0.875)]
    [InlineData("42 x 17 x 7/8", 42, 17, 0.875)]
    [InlineData("42x17x7/8", 42, 17, 0.875)]
    [InlineData("42\"X17\"X7/8\"", 42, 17, 0.875)]
    [InlineData("42 × 17 × ⅞", 42, 17, 0.875)]
    [InlineData("42 in by 17 in by 7/8 in", 42, 17, 0.875)]
    [InlineData("3ftx17inx1in", 36, 17, 1)]
    [InlineData("3ft by17in BY 1in", 36, 17, 1)]
    [InlineData("8' 6\" x 1' 2 1/2\" x 8/4", 102, 14.5, 2)]
    [InlineData("254 mm x 25.4 mm x 2.54 cm", 10, 1, 1)]
    public void A_size_is_read_as_the_trade_writes_it(string text, double length, double width, double thickness)
    {
        var size = Reading.Value(SizeText.Read(text, LengthUnit.Inch, roughThickness: true));
        Assert.Equal(new Size(Length.FromInches((decimal)length), Length.FromInches((decimal)width), Length.FromInches((decimal)thickness)), size);
    }

    [Fact]
    public void A_unit_does_not_reach_back_to_the_numbers_before_it()
    {
        var size = Reading.Value(SizeText.Read("1206 x 240 x 2 cm", LengthUnit.Millimetre, roughThickness: false));
        Assert.Equal(new Size(Length.FromMillimetres(1206m), Length.FromMillimetres(240m), Length.FromMillimetres(20m)), size);
    }

    [Fact]
    public void Quarters_are_for_rough_stock_only()
    {
        var rough = Reading.Value(SizeText.Read("2400 x 5/4 x 5/4", LengthUnit.Millimetre, roughThickness: true));
        Assert.Equal(Length.FromMillimetres(1.25m), rough.Width);
        Assert.Equal(Length.FromInches(1.25m), rough.Thickness);

        var finished = Reading.Value(SizeText.Read("2400 x 240 x 5/4", LengthUnit.Millimetre, roughThickness: false));
        Assert.Equal(Length.FromMillimetres(1.25m), finished.Thickness);
    }

    [Theory]
    [InlineData("", 0, "nothing is written here", Expected)]
    [InlineData("42\"", 3, "'42\"' has no width", Expected)]
    [InlineData("42\" x 17\"", 9, "'42\" x 17\"' has no thickness", Expected)]
    [InlineData("42 x 17 x 1 x 2", 13, "'2' follows the thickness", Expected)]
    [InlineData("42 x  x 1", 6, "the width is missing", Expected)]
    [InlineData("42 x 17 x ", 10, "the thickness is missing", Expected)]
    [InlineData("x 17 x 1", 0, "the length is missing", Expected)]
    [InlineData("42 x 0\" x 1", 5, "the width '0\"' is zero", "a size above zero, such as 42\" x 17\" x 7/8\"")]
    [InlineData("42 x -3 x 1", 5, "'-3' is below zero", "a length such as 47 1/2\", 3' 11 1/2\" or 1206 mm")]
    [InlineData("42 x 17,5 x 1", 7, "'17,5' has a comma in it", "a point before decimals: write 17.5, not 17,5")]
    [InlineData("42 x 17 inx x 1", 12, "the thickness is missing", Expected)]
    [InlineData("42 x 17 x 1 boxes", 12, "'boxes' is not a unit of length", "in, ft, mm, cm or m, such as 47 1/2 in")]
    public void A_fault_is_located_in_the_whole_text(string text, int offset, string what, string expected) =>
        Reading.Fault(SizeText.Read(text, LengthUnit.Inch, roughThickness: false), offset, what, expected);

    [Fact]
    public void A_size_without_a_body_cannot_be_made()
    {
        var inch = Length.FromInches(1m);
        Assert.Throws<ArgumentOutOfRangeException>(() => new Size(Length.Zero, inch, inch));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Size(inch, -inch, inch));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Size(inch, inch, Length.Zero));
    }

    [Fact]
    public void What_was_written_is_read_as_the_same_size()
    {
        var sixteenths = Gen.Int[1, 2_000].Select(count => count * Length.FromInches(1m / 16));
        Gen.Select(sixteenths, sixteenths, sixteenths, Gen.Bool).Sample((length, width, thickness, feet) =>
        {
            Size size = new(length, width, thickness);
            return Reading.Value(SizeText.Read(SizeText.Write(size, LengthFormat.Inches(16, feet)), LengthUnit.Metre, roughThickness: true)) == size;
        });
    }
}
