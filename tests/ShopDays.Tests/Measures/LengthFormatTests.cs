using CsCheck;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class LengthFormatTests
{
    /// <summary>From nothing to the longest board anybody would carry in: 40 m, in every eighth of a micrometre.</summary>
    private static readonly Gen<Length> AnyLength = Gen.Long[0, 320_000_000].Select(Length.FromEighthMicrometres);

    private static readonly LengthFormat[] Formats =
    [
        LengthFormat.Millimetres,
        LengthFormat.Inches(2),
        LengthFormat.Inches(8),
        LengthFormat.Inches(16),
        LengthFormat.Inches(16, feet: true),
        LengthFormat.Inches(32),
        LengthFormat.Inches(32, feet: true),
        LengthFormat.Inches(64, feet: true),
    ];

    private static readonly Gen<LengthFormat> AnyFormat = Gen.Int[0, Formats.Length - 1].Select(index => Formats[index]);

    [Theory]
    [InlineData(47.5, "47 1/2\"", "3' 11 1/2\"")]
    [InlineData(114, "114\"", "9' 6\"")]
    [InlineData(108, "108\"", "9'")]
    [InlineData(36.5, "36 1/2\"", "3' 0 1/2\"")]
    [InlineData(0, "0\"", "0\"")]
    [InlineData(0.625, "5/8\"", "5/8\"")]
    [InlineData(6.25, "6 1/4\"", "6 1/4\"")]
    [InlineData(0.03125, "1/16\"", "1/16\"")]
    [InlineData(0.03, "0\"", "0\"")]
    [InlineData(11.99, "12\"", "1'")]
    [InlineData(-1.5, "-1 1/2\"", "-1 1/2\"")]
    [InlineData(-0.03125, "-1/16\"", "-1/16\"")]
    [InlineData(-0.03, "0\"", "0\"")]
    public void Inches_are_written_with_reduced_16ths_and_halves_away_from_zero(double inches, string plain, string withFeet)
    {
        var length = Length.FromInches((decimal)inches);
        Assert.Equal(plain, LengthFormat.Inches(16).Write(length));
        Assert.Equal(withFeet, LengthFormat.Inches(16, feet: true).Write(length));
    }

    [Theory]
    [InlineData(32, "3/32\"")]
    [InlineData(64, "3/32\"")]
    [InlineData(16, "1/8\"")]
    [InlineData(8, "1/8\"")]
    [InlineData(2, "0\"")]
    public void The_finest_fraction_is_the_job_s(int denominator, string text) =>
        Assert.Equal(text, LengthFormat.Inches(denominator).Write(Length.FromInches(3m / 32)));

    [Theory]
    [InlineData(1206, "1206 mm")]
    [InlineData(1206.5, "1207 mm")]
    [InlineData(1206.499, "1206 mm")]
    [InlineData(0, "0 mm")]
    [InlineData(-2.5, "-3 mm")]
    public void Millimetres_are_written_whole(double millimetres, string text) =>
        Assert.Equal(text, LengthFormat.Millimetres.Write(Length.FromMillimetres((decimal)millimetres)));

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(12)]
    [InlineData(128)]
    [InlineData(-16)]
    public void A_fraction_that_is_on_no_ruler_is_refused(int denominator) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthFormat.Inches(denominator));

    [Fact]
    public void What_rounding_lost_is_told()
    {
        var length = Length.FromInches(47.53125m);
        var format = LengthFormat.Inches(16);

        Assert.Equal("47 9/16\"", format.Write(length));
        Assert.Equal(Length.FromInches(-1m / 32), format.Loses(length));
        Assert.False(format.IsExact(length));
        Assert.True(LengthFormat.Inches(32).IsExact(length));
    }

    [Fact]
    public void What_was_written_is_read_as_the_same_length_to_the_fraction() =>
        Gen.Select(AnyLength, AnyFormat).Sample(
            (length, format) => LengthText.Read(format.Write(length), LengthUnit.Metre) is { IsRead: true } read && read.Value == format.Rounded(length),
            iter: 5_000);

    [Fact]
    public void A_printed_length_never_loses_more_than_half_a_step() =>
        Gen.Select(AnyLength, AnyFormat).Sample(
            (length, format) => 2 * format.Loses(length).Abs() <= format.Step && format.Rounded(length) + format.Loses(length) == length,
            iter: 5_000);

    [Fact]
    public void A_length_that_was_read_from_64ths_is_printed_in_64ths_without_loss() =>
        Gen.Int[0, 64 * 1_000].Sample(
            count => LengthFormat.Inches(64).IsExact(Reading.Value(LengthText.Read($"{count / 64} {count % 64}/64\"", LengthUnit.Metre))),
            iter: 2_000);

    [Fact]
    public void Rounding_twice_is_rounding_once() =>
        Gen.Select(AnyLength, AnyFormat).Sample((length, format) => format.IsExact(format.Rounded(length)), iter: 2_000);
}
