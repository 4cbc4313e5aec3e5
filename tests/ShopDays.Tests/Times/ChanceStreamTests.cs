using MathNet.Numerics.Distributions;
using ShopDays.Times;
using Xunit;

namespace ShopDays.Tests.Times;

public sealed class ChanceStreamTests
{
    private const int Many = 400_000;

    [Fact]
    public void The_strips_under_the_normal_curve_are_of_one_area_and_end_at_its_top()
    {
        // The area that goes with the paper's r, from memory; the last two digits of it are not sure.
        Assert.Equal(0.00492867323399, NormalStrips.Area, 1e-13);
        for (var strip = 1; strip < NormalStrips.Count; strip++)
        {
            var above = strip == NormalStrips.Count - 1 ? 1 : NormalStrips.Heights[strip + 1];

            // Rounding adds up over 255 strips, and the paper's r has sixteen digits: the last strip closes to one in a million.
            Assert.Equal(1, NormalStrips.Ends[strip] * (above - NormalStrips.Heights[strip]) / NormalStrips.Area, 1e-6);
        }
    }

    [Fact]
    public void Normals_are_spread_as_normals_are()
    {
        var chance = new ChanceStream(1, 0);
        var drawn = new double[Many];
        chance.FillWithNormals(drawn);
        Array.Sort(drawn);

        // The greatest distance between the shares and the curve (Kolmogorov) passes 1.95 over the root of the number once in
        // a thousand seeds; this seed is fixed.
        Assert.True(Distance(drawn, off => Normal.CDF(0, 1, off)) < 1.95 / Math.Sqrt(Many));
    }

    [Fact]
    public void Normals_go_as_far_out_as_normals_do()
    {
        var chance = new ChanceStream(2, 0);
        var drawn = new double[4_000_000];
        chance.FillWithNormals(drawn);
        foreach (var far in (double[])[2, 3, NormalStrips.Tail, 4])
        {
            foreach (var side in (int[])[-1, 1])
            {
                var expected = drawn.Length * Normal.CDF(0, 1, -far);

                // A count's standard error is at most its root; four of them.
                Assert.Equal(expected, drawn.Count(off => side * off > far), 4 * Math.Sqrt(expected));
            }
        }
    }

    [Fact]
    public void Shares_are_level()
    {
        var chance = new ChanceStream(3, 0);
        var drawn = new double[Many];
        chance.FillWithShares(drawn);
        Array.Sort(drawn);

        Assert.InRange(drawn[0], 0, 1);
        Assert.True(drawn[^1] < 1);

        // As above.
        Assert.True(Distance(drawn, share => share) < 1.95 / Math.Sqrt(Many));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(120)]
    public void Gammas_are_spread_as_gammas_are(double shape)
    {
        var chance = new ChanceStream(4, 0);
        double[] drawn = [.. Enumerable.Range(0, Many).Select(_ => chance.NextGamma(shape)).Order()];

        // As above.
        Assert.True(Distance(drawn, off => Gamma.CDF(shape, 1, off)) < 1.95 / Math.Sqrt(Many));
    }

    [Fact]
    public void Streams_of_neighbouring_trials_and_seeds_have_nothing_in_common()
    {
        var byTrial = Enumerable.Range(0, Many).Select(trial => new ChanceStream(7, trial).NextNormal()).ToArray();
        var bySeed = Enumerable.Range(0, Many).Select(seed => new ChanceStream(seed, 7).NextNormal()).ToArray();
        foreach (var row in (double[][])[byTrial, bySeed])
        {
            var sorted = row.Order().ToArray();
            Assert.True(Distance(sorted, off => Normal.CDF(0, 1, off)) < 1.95 / Math.Sqrt(Many));

            // The standard error of a correlation of nothing is one over the root of the number; four of them.
            Assert.Equal(0, MathNet.Numerics.Statistics.Correlation.Pearson(row[..^1], row[1..]), 4 / Math.Sqrt(Many));
        }
    }

    [Fact]
    public void One_seed_and_one_trial_make_one_stream()
    {
        var (one, again, other) = (new ChanceStream(5, 6), new ChanceStream(5, 6), new ChanceStream(6, 5));
        var bits = Enumerable.Range(0, 100).Select(_ => one.NextBits()).ToArray();
        Assert.Equal(bits, Enumerable.Range(0, 100).Select(_ => again.NextBits()));
        Assert.Empty(bits.Intersect(Enumerable.Range(0, 100).Select(_ => other.NextBits())));
    }

    private static double Distance(double[] sorted, Func<double, double> share) =>
        sorted.Select((off, at) => Math.Max(share(off) - ((double)at / sorted.Length), ((at + 1.0) / sorted.Length) - share(off))).Max();
}
