using CsCheck;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Prices;

public sealed class LargestRemainderTests
{
    [Fact]
    public void Nothing_is_lost_nothing_invented_and_nobody_is_a_whole_one_off() =>
        Gen.Select(Gen.Long[0, 100_000_000], Gen.Int[0, 1_000].Array[1, 8].Where(weights => weights.Sum() > 0)).Sample((total, weights) =>
        {
            var shares = LargestRemainder.Share(total, [.. weights.Select(weight => (decimal)weight)]);
            Assert.Equal(total, shares.Sum());
            Assert.All(shares.Zip(weights), one => Assert.True(Math.Abs(one.First - ((decimal)total * one.Second / weights.Sum())) < 1));
            Assert.All(shares.Zip(weights).Where(one => one.Second == 0), one => Assert.Equal(0, one.First));
        });

    /// <summary>The textbook's case: 100 seats for 53, 27 and 20 votes in a hundred of 21.</summary>
    [Fact]
    public void What_is_left_goes_to_the_largest_remainders() =>
        Assert.Equal([11, 6, 4], LargestRemainder.Share(21, [53, 27, 20]));

    [Fact]
    public void Weights_of_nothing_are_refused() => Assert.Throws<ArgumentException>(() => LargestRemainder.Share(5, [0, 0]));
}
