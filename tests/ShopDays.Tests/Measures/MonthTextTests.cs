using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class MonthTextTests
{
    [Theory]
    [InlineData("November to March", 1, 2, 3, 11, 12)]
    [InlineData("March, June to August", 3, 6, 7, 8)]
    [InlineData("December to January", 1, 12)]
    [InlineData("July", 7)]
    [InlineData("all months", 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12)]
    public void Months_that_follow_each_other_are_drawn_together_over_the_turn_of_the_year_too(string words, params int[] months) =>
        Assert.Equal(words, MonthText.Runs(months));
}
