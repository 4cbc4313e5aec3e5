using ShopDays.Cli.Phrases;
using Xunit;

namespace ShopDays.Cli.Tests.Terminal;

public sealed class ChanceWordsTests
{
    [Theory]
    [InlineData(0, "under 1 %")]
    [InlineData(0.0099, "under 1 %")]
    [InlineData(0.01, "1 %")]
    [InlineData(0.854, "85 %")]
    [InlineData(0.99, "99 %")]
    [InlineData(0.991, "over 99 %")]
    [InlineData(1, "over 99 %")]
    public void No_share_of_drawn_courses_is_said_to_be_none_or_all(double share, string words) => Assert.Equal(words, ChanceWords.Of(share));

    [Theory]
    [InlineData(0.001, "1 of 100")]
    [InlineData(0.08, "8 of 100")]
    [InlineData(0.095, "1 of 10")]
    [InlineData(0.54, "5 of 10")]
    [InlineData(0.949, "9 of 10")]
    [InlineData(0.96, "96 of 100")]
    [InlineData(1, "99 of 100")]
    public void So_many_of_ten_or_of_a_hundred_are_never_none_nor_all(double share, string words) => Assert.Equal(words, ChanceWords.OutOf(share));
}
