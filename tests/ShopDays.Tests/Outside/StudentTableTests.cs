using MathNet.Numerics.Distributions;
using ShopDays.Measures;
using ShopDays.Tests.Times;
using ShopDays.Times;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "Table of the percentage points of Student's t as printed in handbooks of statistics, three decimals, from memory; normal and gamma of the library MathNet.Numerics")]
public sealed class StudentTableTests
{
    [Theory]
    [InlineData(1, 3.078, 6.314, 12.706)]
    [InlineData(2, 1.886, 2.920, 4.303)]
    [InlineData(5, 1.476, 2.015, 2.571)]
    [InlineData(10, 1.372, 1.812, 2.228)]
    [InlineData(20, 1.325, 1.725, 2.086)]
    [InlineData(30, 1.310, 1.697, 2.042)]
    [InlineData(120, 1.289, 1.658, 1.980)]
    public void Ranges_of_a_time_reach_as_far_as_the_printed_table_says(double degrees, double ninety, double ninetyFive, double ninetySevenAndAHalf)
    {
        var belief = new TimeBelief(Math.Log(60), 0.1, degrees);
        foreach (var (share, printed) in ((double, double)[])[(0.90, ninety), (0.95, ninetyFive), (0.975, ninetySevenAndAHalf)])
        {
            // Half a unit of the third decimal, and the rounding of a time to its own smallest unit.
            Assert.Equal(printed, Math.Log(belief.At(share).Minutes / 60) / 0.1, 0.000501);
            Assert.Equal(-printed, Math.Log(belief.At(1 - share).Minutes / 60) / 0.1, 0.000501);
        }
    }

    [Fact]
    public void A_time_below_a_limit_is_as_likely_as_normals_mixed_over_a_gamma_say()
    {
        var rip = AnOperation.Named("rip");
        var model = TimedLog.Learned(new([rip]), [.. Enumerable.Range(0, 6).Select(at => rip.Of(1).Took(9 + (2 * at)))]);
        var (row, terms) = model.Whiten(rip.Of(2));
        var believed = model.BeliefOf(rip.Of(2)) with { Luck = null };
        foreach (var minutes in (double[])[8, 15, 20, 30, 45, 90])
        {
            var off = Math.Log(minutes) - row.Offset - terms.Location;
            var mixed = OverGamma(model.NoiseShape, model.NoiseScale, precision =>
                Normal.CDF(0, 1, off * Math.Sqrt(precision / ((row.Noise * row.Noise) + terms.Variance))));

            // The sum below is good to about ten digits; the library's Student to as many.
            Assert.Equal(mixed, believed.ShareBelow(WorkTime.FromMinutes(minutes)), 8);
        }
    }

    /// <summary>The mean of a function over a gamma, by the trapezium rule over ln: it dies out at both ends, so the rule converges fast.</summary>
    private static double OverGamma(double shape, double rate, Func<double, double> function)
    {
        const int Steps = 4_000;
        const double Reach = 12;
        var sum = 0.0;
        for (var step = 0; step <= Steps; step++)
        {
            var figure = shape / rate * Math.Exp(Reach * ((2.0 * step / Steps) - 1));
            sum += Gamma.PDF(shape, rate, figure) * figure * function(figure);
        }

        return sum * 2 * Reach / Steps;
    }
}
