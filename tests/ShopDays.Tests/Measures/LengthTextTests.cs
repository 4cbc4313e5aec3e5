using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class LengthTextTests
{
    private const string Expected = "a length such as 47 1/2\", 3' 11 1/2\" or 1206 mm";

    [Theory]
    [InlineData("47 1/2\"", 47.5)]
    [InlineData("47-1/2 in", 47.5)]
    [InlineData("47-1/2\"", 47.5)]
    [InlineData("47 1/2 inches", 47.5)]
    [InlineData("47½\"", 47.5)]
    [InlineData("47 ½ in.", 47.5)]
    [InlineData("47-½″", 47.5)]
    [InlineData("47 1⁄2”", 47.5)]
    [InlineData("47.5\"", 47.5)]
    [InlineData("47.5 IN", 47.5)]
    [InlineData("47.5''", 47.5)]
    [InlineData("47.5’’", 47.5)]
    [InlineData("  47.5\"  ", 47.5)]
    [InlineData("3' 11 1/2\"", 47.5)]
    [InlineData("3'-11.5\"", 47.5)]
    [InlineData("3' - 11 1/2\"", 47.5)]
    [InlineData("3'11½\"", 47.5)]
    [InlineData("3′ 11½″", 47.5)]
    [InlineData("3’ 11 1/2”", 47.5)]
    [InlineData("3 ft 11 1/2 in", 47.5)]
    [InlineData("3ft11.5in", 47.5)]
    [InlineData("3 ft. 11 1/2 in.", 47.5)]
    [InlineData("3 feet 11 1/2", 47.5)]
    [InlineData("3' 0 1/2\"", 36.5)]
    [InlineData("3' 1/2\"", 36.5)]
    [InlineData("9' 6\"", 114)]
    [InlineData("9'", 108)]
    [InlineData("9 1/2'", 114)]
    [InlineData("9.5 ft", 114)]
    [InlineData("1 foot", 12)]
    [InlineData("0\"", 0)]
    [InlineData("0", 0)]
    [InlineData(".5\"", 0.5)]
    [InlineData("5/4\"", 1.25)]
    [InlineData("24/4\"", 6)]
    [InlineData("5/8\"", 0.625)]
    [InlineData("¼\"", 0.25)]
    [InlineData("¾\"", 0.75)]
    [InlineData("⅛\"", 0.125)]
    [InlineData("⅜\"", 0.375)]
    [InlineData("⅝\"", 0.625)]
    [InlineData("⅞\"", 0.875)]
    [InlineData("5/8", 0.625)]
    [InlineData("5/4", 1.25)]
    [InlineData("47", 47)]
    [InlineData("25.4 mm", 1)]
    [InlineData("2.54 cm", 1)]
    public void A_length_is_read_as_the_trade_writes_it(string text, double inches) =>
        Assert.Equal(Length.FromInches((decimal)inches), Reading.Value(LengthText.Read(text, LengthUnit.Inch)));

    [Theory]
    [InlineData("1206 mm", 1206)]
    [InlineData("1206mm", 1206)]
    [InlineData("1206 Millimetres", 1206)]
    [InlineData("120.6 cm", 1206)]
    [InlineData("1.2 m", 1200)]
    [InlineData("1.206 meters", 1206)]
    [InlineData("1206", 1206)]
    [InlineData("12 1/2", 12.5)]
    [InlineData("5/4", 1.25)]
    [InlineData("10\"", 254)]
    [InlineData("1'", 304.8)]
    [InlineData("1000 m", 1_000_000)]
    public void A_bare_number_takes_the_unit_of_the_file(string text, double millimetres) =>
        Assert.Equal(Length.FromMillimetres((decimal)millimetres), Reading.Value(LengthText.Read(text, LengthUnit.Millimetre)));

    [Theory]
    [InlineData(LengthUnit.Centimetre, 30)]
    [InlineData(LengthUnit.Metre, 3_000)]
    [InlineData(LengthUnit.Foot, 914.4)]
    public void Every_unit_may_be_the_bare_one(LengthUnit bareUnit, double millimetres) =>
        Assert.Equal(Length.FromMillimetres((decimal)millimetres), Reading.Value(LengthText.Read("3", bareUnit)));

    [Theory]
    [InlineData("4/4", 1)]
    [InlineData("5/4", 1.25)]
    [InlineData("6/4", 1.5)]
    [InlineData("8/4", 2)]
    [InlineData("12/4", 3)]
    [InlineData(" 16/4 ", 4)]
    [InlineData("5/4\"", 1.25)]
    [InlineData("1 1/4 in", 1.25)]
    public void A_rough_thickness_over_four_is_quarters_of_an_inch_even_in_a_metric_shop(string text, double inches) =>
        Assert.Equal(Length.FromInches((decimal)inches), Reading.Value(LengthText.ReadRoughThickness(text, LengthUnit.Millimetre)));

    [Theory]
    [InlineData("32", 32)]
    [InlineData("5/8", 0.625)]
    [InlineData("1 1/4", 1.25)]
    [InlineData("5/4 mm", 1.25)]
    public void Any_other_rough_thickness_is_read_as_a_length(string text, double millimetres) =>
        Assert.Equal(Length.FromMillimetres((decimal)millimetres), Reading.Value(LengthText.ReadRoughThickness(text, LengthUnit.Millimetre)));

    [Theory]
    [InlineData("", 0, "nothing is written here")]
    [InlineData("   ", 3, "nothing is written here")]
    [InlineData("-3\"", 0, "'-3\"' is below zero")]
    [InlineData(" −3\"", 1, "'−3\"' is below zero")]
    [InlineData("a plank", 0, "'a plank' does not begin with a number")]
    [InlineData("NaN", 0, "'NaN' does not begin with a number")]
    [InlineData("∞", 0, "'∞' does not begin with a number")]
    [InlineData("+3\"", 0, "'+3\"' does not begin with a number")]
    [InlineData("٣\"", 0, "'٣\"' does not begin with a number")]
    [InlineData("1e3 mm", 0, "'1e3' has an exponent")]
    [InlineData("1.5E-3 m", 0, "'1.5E-3' has an exponent")]
    [InlineData("1.2.3 mm", 3, "'1.2.3' has a point too many")]
    [InlineData("3. mm", 1, "'3.' has a point too many")]
    [InlineData("1 m 20 cm", 4, "'20 cm' is left over")]
    [InlineData("47.5 1/2\"", 5, "'1/2\"' is left over")]
    [InlineData("47 - 1/2\"", 3, "'- 1/2\"' is left over")]
    [InlineData("47\" long", 4, "'long' is left over")]
    [InlineData("3 11 1/2", 2, "'11 1/2' is left over")]
    [InlineData("1/2/3\"", 3, "'/3\"' is left over")]
    [InlineData("3.5' 2\"", 5, "'2\"' follows feet that are not whole")]
    [InlineData("3 1/2' 2\"", 7, "'2\"' follows feet that are not whole")]
    [InlineData("3' x", 3, "'x' does not begin with a number")]
    [InlineData("3'-", 3, "a number is missing here")]
    [InlineData("3' -\u20112\"", 4, "'\u20112\"' does not begin with a number")]
    [InlineData("1/0\"", 0, "'1/0' is a fraction over zero")]
    [InlineData("1/12345\"", 0, "'1/12345' is a fraction with too many digits")]
    [InlineData("1000.1 m", 0, "'1000.1 m' is longer than a kilometre")]
    [InlineData("4000 ft", 0, "'4000 ft' is longer than a kilometre")]
    [InlineData("9999999999 mm", 0, "'9999999999' is too large a number")]
    [InlineData("99999999999999999999999999999999999999999 mm", 0, "'999999999999999999999999999999999999999…' is too large a number")]
    public void Nonsense_is_located_and_quoted(string text, int offset, string what) =>
        Reading.Fault(LengthText.Read(text, LengthUnit.Inch), offset, what, Expected);

    [Theory]
    [InlineData("47,5\"", 2, "'47,5\"' has a comma in it", "a point before decimals: write 47.5, not 47,5")]
    [InlineData("1,206 mm", 1, "'1,206' has a comma in it", "a point before decimals: write 1.206, not 1,206 (or 1206 when thousands are meant)")]
    [InlineData("47 furlongs", 3, "'furlongs' is not a unit of length", "in, ft, mm, cm or m, such as 47 1/2 in")]
    [InlineData("47 inchs", 3, "'inchs' is not a unit of length", "in, ft, mm, cm or m, such as 47 1/2 in; nearest: inch")]
    [InlineData("471/2\"", 0, "'471/2' is large for a fraction alone", "a space or a hyphen after the whole number, such as 47 1/2")]
    [InlineData("47 3/2\"", 3, "'3/2' is no less than one", "a fraction below one after a whole number, such as 47 1/2")]
    [InlineData("3' 14\"", 3, "'14\"' is a foot or more beside feet", "inches from 0 to below 12, such as 3' 11 1/2\"")]
    public void A_common_slip_gets_its_cure(string text, int offset, string what, string expected) =>
        Reading.Fault(LengthText.Read(text, LengthUnit.Inch), offset, what, expected);

    [Fact]
    public void After_feet_only_inches_can_follow() =>
        Reading.Fault(LengthText.Read("3' 40 mm", LengthUnit.Inch), 5, "'mm' follows feet, where only inches can", Expected);

    [Fact]
    public void Every_64th_of_an_inch_is_read_exactly()
    {
        for (var count = 1; count < 64; count++)
        {
            var read = Reading.Value(LengthText.Read($"7 {count}/64\"", LengthUnit.Millimetre));
            Assert.Equal((7 * 203_200L) + (count * 3_175L), read.EighthMicrometres);
        }
    }

    [Fact]
    public void Every_micrometre_is_read_exactly() =>
        Assert.Equal(1_206_001L * 8, Reading.Value(LengthText.Read("1206.001 mm", LengthUnit.Inch)).EighthMicrometres);
}
