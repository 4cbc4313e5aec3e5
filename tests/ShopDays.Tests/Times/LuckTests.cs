using CsCheck;
using MathNet.Numerics.Distributions;
using ShopDays.Logbook;
using ShopDays.Times;
using Xunit;

namespace ShopDays.Tests.Times;

public sealed class LuckTests
{
    private const double Degrees = 12;

    private static readonly Gen<(double Off, double Weight)[]> Like =
        Gen.Select(Gen.Double[-4, 4], Gen.Double[0.01, 1], (off, weight) => (off, weight)).Array[0, 40];

    [Fact]
    public void Without_like_times_luck_is_spread_as_believed() => Gen.Double[0.01, 0.99].Sample(share =>
    {
        var spread = new LuckSpread([], Degrees);

        Assert.Equal(StudentT.InvCDF(0, 1, Degrees, share), spread.At(share), 9);
        Assert.Equal(0, spread.ShareOfLog);
    });

    [Fact]
    public void The_off_of_a_share_is_the_least_that_has_so_much_at_or_below_it() => Gen.Select(Like, Gen.Double[0.01, 0.99]).Sample((like, share) =>
    {
        var spread = new LuckSpread(like, Degrees);
        var off = spread.At(share);

        // Quantiles of a Student are found by trial to about ten digits.
        Assert.True(spread.ShareBelow(off + 1e-7) >= share - 1e-7);
        Assert.True(spread.ShareBelow(off - 1e-7) <= share + 1e-7);
    });

    [Fact]
    public void A_greater_share_never_lies_lower() => Gen.Select(Like, Gen.Double[0.01, 0.98], Gen.Double[0.001, 0.01]).Sample((like, share, more) =>
    {
        var spread = new LuckSpread(like, Degrees);

        Assert.True(spread.At(share + more) >= spread.At(share));
    });

    [Fact]
    public void Past_times_are_drawn_as_often_as_they_count()
    {
        var spread = new LuckSpread([(-1, 1), (0.5, 3), (2, 6)], Degrees);
        var drawn = Enumerable.Range(0, 1000).Select(at => spread.OfLog((at + 0.5) / 1000)).ToList();

        Assert.Equal((100, 300, 600), (drawn.Count(off => off == -1), drawn.Count(off => off == 0.5), drawn.Count(off => off == 2)));
    }

    [Fact]
    public void Steady_days_narrow_the_range_of_like_work_and_bad_days_widen_its_upper_end()
    {
        var rip = AnOperation.Named("rip");
        TimedWork[] steady = [.. Enumerable.Range(0, 60).Select(at => rip.Of(1).Took(at % 2 == 0 ? 9.9 : 10.1))];
        TimedWork[] bad = [.. Enumerable.Range(0, 60).Select(at => rip.Of(1).Took(at % 10 == 0 ? 20 : 9.9, kept: true))];
        var (calm, rough) = (TimedLog.Learned(new([rip]), steady).BeliefOf(rip.Of(1)), TimedLog.Learned(new([rip]), bad).BeliefOf(rip.Of(1)));

        Assert.True(calm.At(0.9) / calm.At(0.1) < 1.4);
        Assert.True(rough.At(0.95) / rough.At(0.5) > 1.5, "one day in ten takes twice as long");
        Assert.True(rough.At(0.5) / rough.At(0.05) < 1.5, "and none takes half");
    }

    [Fact]
    public void Drawn_times_are_spread_as_the_belief_says()
    {
        var rip = AnOperation.Named("rip");
        TimedWork[] log = [.. Enumerable.Range(0, 80).Select(at => rip.Of(1).Took(at % 8 == 0 ? 17 : 9 + (at % 5 * 0.4), kept: true))];
        var learned = TimedLog.Learned(new([rip]), log);
        var belief = learned.BeliefOf(rip.Of(1));
        var drawn = learned.Draw(AnOperation.Tasks(rip.Of(1)), 20_000, seed: 3).Minutes.Select(trial => trial[0]).Order().ToList();

        foreach (var share in (double[])[0.2, 0.5, 0.8])
        {
            // The draws take the log's luck and the doubt of the rate apart, the belief together: they differ by some per cent.
            Assert.Equal(1, drawn[(int)(share * drawn.Count)] / belief.At(share).Minutes, 0.06);
        }
    }
}
