using CsCheck;
using NodaTime;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class WaitTextTests
{
    private const string Expected = "a wait such as 45 min, 12h, 3d or 1w";

    [Theory]
    [InlineData("3d", 72)]
    [InlineData("2 days", 48)]
    [InlineData("12h", 12)]
    [InlineData("1w", 168)]
    [InlineData("1 week 2 days", 216)]
    [InlineData("1 d 6 h", 30)]
    [InlineData("1 d 30 min", 24.5)]
    [InlineData("1h30", 1.5)]
    [InlineData("90 min", 1.5)]
    [InlineData("1/2 d", 12)]
    [InlineData("0", 0)]
    [InlineData("P3D", 72)]
    [InlineData("P1W", 168)]
    [InlineData("PT12H", 12)]
    [InlineData("P1DT6H", 30)]
    [InlineData("3650 d", 87_600)]
    public void A_wait_is_read_as_the_trade_writes_it(string text, double hours) =>
        Assert.Equal(Duration.FromHours(hours), Reading.Value(WaitText.Read(text)));

    [Theory]
    [InlineData("5", 0, "'5' has no unit")]
    [InlineData("1 d 30", 4, "'30' has no unit")]
    [InlineData("-3d", 0, "'-3d' is below zero")]
    [InlineData("1w 8d", 3, "'8d' is no less than one of the weeks before it")]
    [InlineData("2 months", 2, "'months' is not a unit of time")]
    [InlineData("P2M", 1, "'2M' counts years or months, which have no fixed length")]
    [InlineData("P1Y", 1, "'1Y' counts years or months, which have no fixed length")]
    [InlineData("P1H", 1, "'1H' has no unit of ISO 8601")]
    [InlineData("PT3D", 2, "'3D' has no unit of ISO 8601")]
    [InlineData("3650.5 d", 0, "'3650.5 d' is longer than ten years")]
    [InlineData("", 0, "nothing is written here")]
    public void Nonsense_is_located_and_quoted(string text, int offset, string what) =>
        Reading.Fault(WaitText.Read(text), offset, what, Expected);

    [Theory]
    [InlineData(0, "0 min")]
    [InlineData(45, "45 min")]
    [InlineData(720, "12 h")]
    [InlineData(1_800, "1 d 6 h")]
    [InlineData(4_320, "3 d")]
    [InlineData(1_441, "1 d 1 min")]
    [InlineData(90.5, "1 h 31 min")]
    [InlineData(-90, "-1 h 30 min")]
    public void A_wait_is_written_without_parts_that_are_nought(double minutes, string text) =>
        Assert.Equal(text, WaitText.Write(Duration.FromMinutes(minutes)));

    [Fact]
    public void What_was_written_is_read_as_the_same_wait_to_the_minute() =>
        Gen.Int[0, 3_650 * 1_440].Sample(
            minutes => Reading.Value(WaitText.Read(WaitText.Write(Duration.FromMinutes(minutes)))) == Duration.FromMinutes(minutes),
            iter: 2_000);
}
