using CsCheck;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class NearestNameTests
{
    [Theory]
    [InlineData("sunrize-sunset", "none|sunrise-sunset|civil-twilight", "sunrise-sunset")]
    [InlineData("wite oak", "white oak|red oak|elm", "white oak")]
    [InlineData("WHITE OAK", "red oak|white oak", "white oak")]
    [InlineData("widht", "length|width|thickness", "width")]
    [InlineData("board foot", "board-foot|m3", "board-foot")]
    [InlineData("thick", "length|width|thickness", "thickness")]
    [InlineData("maple", "hard maple|soft maple|ash", "hard maple")]
    [InlineData("white oak board", "white oak|elm", "white oak")]
    [InlineData("inchs", "inches|inch", "inch")]
    [InlineData("cat", "bat|rat|hat", "bat")]
    public void The_nearest_name_is_found(string typed, string valid, string nearest)
    {
        Assert.Equal(nearest, NearestName.To(typed, valid.Split('|')));
        Assert.Equal(nearest, NearestName.To(typed, valid.Split('|').Reverse()));
    }

    [Theory]
    [InlineData("walnut", "ash|elm|white oak")]
    [InlineData("in", "ft")]
    [InlineData("ash", "elm")]
    [InlineData("oa", "white oak")]
    [InlineData("", "ash|elm")]
    [InlineData("   ", "ash|elm")]
    [InlineData("ash", "")]
    public void Nothing_near_is_no_name(string typed, string valid) => Assert.Null(NearestName.To(typed, valid.Split('|')));

    [Fact]
    public void A_valid_name_is_its_own_nearest() =>
        Gen.String[Gen.Char.AlphaNumeric, 1, 12].Array[1, 6].Sample(names => names.All(name =>
            string.Equals(NearestName.To(name, names), name, StringComparison.OrdinalIgnoreCase)));

    [Fact]
    public void The_order_of_the_names_does_not_matter() =>
        Gen.Select(Gen.String[Gen.Char['a', 'd'], 1, 8], Gen.String[Gen.Char['a', 'd'], 1, 8].Array[0, 6])
            .Sample((typed, names) => NearestName.To(typed, names) == NearestName.To(typed, names.Reverse()));
}
