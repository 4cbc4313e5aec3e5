using CsCheck;
using ShopDays.Times;
using Xunit;

namespace ShopDays.Tests.Times;

public sealed class TimeRangeTests
{
    [Fact]
    public void Quantiles_stand_in_order_and_inside_the_sample() => Gen.Double[0.1, 1_000].Array[1, 200].Sample(sample =>
    {
        var (least, most) = (sample.Min(), sample.Max());
        var range = TimeRange.OfSample([.. sample]);
        Assert.True(least <= range.P10.Minutes);
        Assert.True(range.P10 <= range.P50 && range.P50 <= range.P80 && range.P80 <= range.P90);
        Assert.True(range.P90.Minutes <= most);
        Assert.InRange(range.Mean.Minutes, least - 1e-9, most + 1e-9);
    });

    [Fact]
    public void One_draw_is_all_of_its_range()
    {
        var range = TimeRange.OfSample([42]);

        Assert.Equal((42, 42), (range.P10.Minutes, range.P90.Minutes));
    }

    [Fact]
    public void A_quantile_between_two_values_lies_between_them_in_proportion()
    {
        // Nine digits leave room for the rounding of a few operations on doubles, and for nothing else; so below.
        Assert.Equal(9, TimeRange.OfSample([0, 10]).P90.Minutes, 9);
    }

    [Fact]
    public void An_empty_sample_has_no_range() => Assert.Throws<ArgumentException>(() => TimeRange.OfSample([]));
}
