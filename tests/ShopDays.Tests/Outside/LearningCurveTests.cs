using ShopDays.Times;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "T. P. Wright, Factors Affecting the Cost of Airplanes, J. Aeronautical Sciences 3 (1936): the rule and its unit factors, from memory")]
public sealed class LearningCurveTests
{
    // Unit factors of a 90 % curve, printed to two decimals: hence half a unit of the second decimal.
    [Theory]
    [InlineData(1, 1.00)]
    [InlineData(2, 0.90)]
    [InlineData(4, 0.81)]
    [InlineData(8, 0.73)]
    public void The_nth_piece_of_a_ninety_per_cent_curve_takes_its_published_share(int piece, double share) =>
        Assert.Equal(share, Batch.ShareOfFirst(piece, 0.90), 0.005);

    [Theory]
    [InlineData(2, 0.95)]
    [InlineData(4, 0.89)]
    [InlineData(8, 0.82)]
    public void The_mean_of_a_batch_takes_its_published_share_of_the_first(int pieces, double share) =>
        Assert.Equal(share, Batch.MeanFactor(pieces, 0.90) / Batch.MeanFactor(1, 0.90), 0.005);

    // Nine digits leave room for the rounding of a few operations on doubles, and for nothing else; so below.
    [Fact]
    public void The_gain_stops_at_seven_tenths_of_the_first() => Assert.Equal(0.7, Batch.ShareOfFirst(1_000, 0.90), 9);

    // Common practice, no source: a single hand joint takes about 1.2 times the catalogue's time; the rule gives 1.174.
    [Fact]
    public void A_single_joint_takes_about_a_fifth_longer_than_the_catalogue_says() =>
        Assert.Equal(1.2, Batch.MeanFactor(1, 0.90), 0.03);

    [Fact]
    public void A_machine_that_gains_nothing_takes_the_same_for_each() => Assert.Equal(1, Batch.MeanFactor(40, 1), 12);
}
