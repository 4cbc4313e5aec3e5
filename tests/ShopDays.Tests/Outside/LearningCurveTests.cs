using ShopDays.Times;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "T. P. Wright, Factors Affecting the Cost of Airplanes, J. Aeronautical Sciences 3 (1936), and tables of unit and total factors in textbooks of production, e.g. Heizer and Render, Operations Management, module on learning curves: all from memory")]
public sealed class LearningCurveTests
{
    // Printed to four decimals: hence half a unit of the fourth. Below 0.7 of the first our rule gains nothing more.
    private const double UnitPrinted = 0.00005;

    // Totals are printed to three decimals.
    private const double TotalPrinted = 0.0005;

    [Theory]
    [InlineData(0.80, 2, 0.8000)]
    [InlineData(0.80, 3, 0.7021)]
    [InlineData(0.85, 2, 0.8500)]
    [InlineData(0.85, 3, 0.7729)]
    [InlineData(0.85, 4, 0.7225)]
    [InlineData(0.90, 1, 1.0000)]
    [InlineData(0.90, 2, 0.9000)]
    [InlineData(0.90, 3, 0.8462)]
    [InlineData(0.90, 4, 0.8100)]
    [InlineData(0.90, 5, 0.7830)]
    [InlineData(0.90, 8, 0.7290)]
    [InlineData(0.90, 10, 0.7047)]
    [InlineData(0.95, 2, 0.9500)]
    [InlineData(0.95, 4, 0.9025)]
    [InlineData(0.95, 8, 0.8574)]
    [InlineData(0.95, 10, 0.8433)]
    [InlineData(0.95, 16, 0.8145)]
    [InlineData(0.95, 20, 0.8012)]
    [InlineData(0.95, 32, 0.7738)]
    public void The_nth_piece_takes_its_published_share_of_the_first(double rate, int piece, double share) =>
        Assert.Equal(share, Batch.ShareOfFirst(piece, rate), UnitPrinted);

    [Theory]
    [InlineData(0.80, 2, 1.800)]
    [InlineData(0.80, 3, 2.502)]
    [InlineData(0.85, 2, 1.850)]
    [InlineData(0.85, 3, 2.623)]
    [InlineData(0.85, 4, 3.345)]
    [InlineData(0.90, 2, 1.900)]
    [InlineData(0.90, 3, 2.746)]
    [InlineData(0.90, 4, 3.556)]
    [InlineData(0.90, 5, 4.339)]
    [InlineData(0.90, 8, 6.574)]
    [InlineData(0.90, 10, 7.994)]
    public void A_batch_takes_its_published_total_in_times_of_the_first(double rate, int pieces, double total) =>
        Assert.Equal(total, pieces * Batch.MeanFactor(pieces, rate) / Batch.MeanFactor(1, rate), TotalPrinted);

    // The second and the fourth piece of any curve: the definition of the rule, to the rounding of a few operations on doubles.
    [Theory]
    [InlineData(0.85)]
    [InlineData(0.90)]
    [InlineData(0.95)]
    [InlineData(0.98)]
    public void Twice_as_many_pieces_take_the_learning_rate_each_time(double rate)
    {
        Assert.Equal(rate, Batch.ShareOfFirst(2, rate), 12);
        Assert.Equal(rate * rate, Batch.ShareOfFirst(4, rate), 12);
    }

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
