using CsCheck;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class WorkTimeTextTests
{
    private const string Expected = "a working time such as 45m, 1h30 or 1.5 h";

    [Theory]
    [InlineData("45m", 45)]
    [InlineData("45 min", 45)]
    [InlineData("45", 45)]
    [InlineData("0", 0)]
    [InlineData("45 Minutes", 45)]
    [InlineData("7.5 min", 7.5)]
    [InlineData("7 1/2 min", 7.5)]
    [InlineData("1h30", 90)]
    [InlineData("1h 30", 90)]
    [InlineData("1h05", 65)]
    [InlineData("1h", 60)]
    [InlineData("1.5h", 90)]
    [InlineData("1½ h", 90)]
    [InlineData("1 h 30 min", 90)]
    [InlineData("1 hr. 30 min.", 90)]
    [InlineData("2 hours 5 minutes", 125)]
    [InlineData("90 min", 90)]
    [InlineData("30 s", 0.5)]
    [InlineData("1 min 30 s", 1.5)]
    [InlineData("PT1H30M", 90)]
    [InlineData("PT1.5H", 90)]
    [InlineData("PT90M", 90)]
    [InlineData("pt45m", 45)]
    [InlineData(" PT30S ", 0.5)]
    [InlineData("10000 h", 600_000)]
    public void Hands_on_time_is_read_as_the_trade_writes_it(string text, double minutes) =>
        Assert.Equal(WorkTime.FromMinutes(minutes), Reading.Value(WorkTimeText.Read(text)));

    [Theory]
    [InlineData("", 0, "nothing is written here")]
    [InlineData("-45m", 0, "'-45m' is below zero")]
    [InlineData("soon", 0, "'soon' does not begin with a number")]
    [InlineData("45 moons", 3, "'moons' is not a unit of time")]
    [InlineData("1h90", 2, "'90' is no less than one of the hours before it")]
    [InlineData("1h 1h", 3, "'1h' does not follow hours")]
    [InlineData("30 min 1 h", 7, "'1 h' does not follow minutes")]
    [InlineData("1.5h 10 min", 5, "'10 min' follows a fraction")]
    [InlineData("5 min 3", 6, "'3' has no unit")]
    [InlineData("1:30", 1, "'1:30' reads as a time of day")]
    [InlineData("45 m!", 4, "'!' does not begin with a number")]
    [InlineData("45!", 2, "'!' is not a unit of time")]
    [InlineData("2 days", 0, "'2 days' counts days, and a day's work has no fixed length")]
    [InlineData("P2D", 1, "'2D' counts days, and a day's work has no fixed length")]
    [InlineData("P1M", 1, "'1M' counts years or months, which have no fixed length")]
    [InlineData("P", 0, "'P' has no number in it")]
    [InlineData("PT", 2, "a number is missing here")]
    [InlineData("PT30M1H", 5, "'1H' does not follow minutes")]
    [InlineData("PT1.5H10M", 6, "'10M' follows a fraction")]
    [InlineData("PT5", 2, "'5' has no unit of ISO 8601")]
    [InlineData("PT5M x", 5, "'x' is left over")]
    [InlineData("1e2 min", 0, "'1e2' has an exponent")]
    [InlineData("10000.1 h", 0, "'10000.1 h' is longer than 10,000 hours")]
    public void Nonsense_is_located_and_quoted(string text, int offset, string what) =>
        Reading.Fault(WorkTimeText.Read(text), offset, what, Expected);

    [Fact]
    public void A_comma_gets_its_cure() =>
        Reading.Fault(WorkTimeText.Read("1,5h"), 1, "'1,5h' has a comma in it", "a point before decimals: write 1.5, not 1,5");

    [Theory]
    [InlineData(0, "0 min")]
    [InlineData(45, "45 min")]
    [InlineData(59.5, "1 h")]
    [InlineData(60, "1 h")]
    [InlineData(125, "2 h 05 min")]
    [InlineData(124.5, "2 h 05 min")]
    [InlineData(124.4, "2 h 04 min")]
    [InlineData(-65, "-1 h 05 min")]
    [InlineData(-0.2, "0 min")]
    [InlineData(600_001, "10000 h 01 min")]
    [InlineData(1.7e308, "2.8E+306 h")]
    [InlineData(-6e30, "-1.0E+29 h")]
    public void Hands_on_time_is_written_to_the_minute(double minutes, string text) =>
        Assert.Equal(text, WorkTimeText.Write(WorkTime.FromMinutes(minutes)));

    [Fact]
    public void What_was_written_is_read_as_the_same_time_to_the_minute() =>
        Gen.Double[0, 100_000].Sample(
            minutes => Reading.Value(WorkTimeText.Read(WorkTimeText.Write(WorkTime.FromMinutes(minutes)))).Minutes
                == Math.Round(minutes, MidpointRounding.AwayFromZero),
            iter: 2_000);
}
