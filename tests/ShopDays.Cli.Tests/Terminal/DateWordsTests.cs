using NodaTime;
using NodaTime.Text;
using ShopDays.Cli.Phrases;
using Xunit;

namespace ShopDays.Cli.Tests.Terminal;

public sealed class DateWordsTests
{
    private static readonly DateTimeZone London = DateTimeZoneProviders.Tzdb["Europe/London"];

    [Theory]
    [InlineData("2027-10-31T00:10:00Z", "01:10")]
    [InlineData("2027-10-31T01:10:00Z", "01:10 (second time)")]
    [InlineData("2027-10-31T02:10:00Z", "02:10")]
    [InlineData("2027-10-30T00:10:00Z", "01:10")]
    public void A_time_that_the_clock_shows_again_is_marked(string instant, string said)
    {
        var time = InstantPattern.ExtendedIso.Parse(instant).Value.InZone(London);
        Assert.Equal(said, DateWords.At(time));
        Assert.EndsWith(said, DateWords.Of(time), StringComparison.Ordinal);
    }
}
