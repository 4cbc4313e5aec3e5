using ShopDays.Logbook;
using ShopDays.Times;
using Xunit;

namespace ShopDays.Tests.Times;

public sealed class ReportCardTests
{
    private static readonly ShopDays.Work.Operation Rip = AnOperation.Named("rip");

    [Fact]
    public void A_log_of_nothing_has_no_card() => Assert.Null(ReportCard.Of(TimedLog.Learned(new([Rip]))));

    [Fact]
    public void Wider_ranges_hold_no_fewer_times()
    {
        var random = new Random(4);
        TimedWork[] log = [.. Enumerable.Range(0, 60).Select(_ => Rip.Of(1).Took(10 * Math.Exp(0.3 * MathNet.Numerics.Distributions.Normal.Sample(random, 0, 1))))];
        var card = ReportCard.Of(TimedLog.Learned(new([Rip]), log))!;

        Assert.Equal(60, card.Times);
        Assert.Equal([0.5, 0.8, 0.9], card.Coverages.Select(one => one.Share));
        Assert.True(card.Coverages[0].Inside <= card.Coverages[1].Inside && card.Coverages[1].Inside <= card.Coverages[2].Inside);
        // Five standard deviations of a binomial of 60 at 0.8.
        Assert.InRange(card.Coverages[1].Inside, 33, 60);
    }

    [Fact]
    public void Times_that_grow_from_day_to_day_show_as_a_spread_not_as_a_bias()
    {
        TimedWork[] log = [.. Enumerable.Range(0, 30).Select(at => Rip.Of(1).Took(8 + (at * 0.2)))];
        var card = ReportCard.Of(TimedLog.Learned(new([Rip]), log))!;

        Assert.InRange(card.Bias, -0.1, 0.1);
        Assert.True(card.Width > 1.2);
    }

    [Fact]
    public void A_card_of_some_of_the_log_counts_these_alone()
    {
        var plane = AnOperation.Named("plane");
        TimedWork[] log = [Rip.Of(1).Took(10), Rip.Of(1).Took(11), plane.Of(1).Took(9)];
        var card = ReportCard.Of(TimedLog.Learned(new([Rip, plane]), log), one => one.Work.Task == "plane")!;

        Assert.Equal(1, card.Times);
        Assert.Equal(double.PositiveInfinity, card.BiasError);
    }
}
