using ShopDays.Cli.Phrases;
using ShopDays.Times;
using Xunit;

namespace ShopDays.Cli.Tests.Terminal;

public sealed class ReportWordsTests
{
    // The ends of what chance allows are those of the exact binomial at 2.5 % on either side: of 40 at 80 %, 27 to 37. From 31
    // of 40 on, ranges that hold but three in five are ruled out by the same chance. Of 10,000 chance allows no 79 %, but such
    // ranges are as good as any.
    [Theory]
    [InlineData(40, 33, "Of 40 timed tasks 33 fell inside their 80 % range (expected 32): the ranges can be trusted.")]
    [InlineData(40, 27, "Of 40 timed tasks 27 fell inside their 80 % range (expected 32): no more off than chance explains, but too few yet to vouch for the ranges.")]
    [InlineData(40, 26, "Of 40 timed tasks 26 fell inside their 80 % range (expected 32): the ranges are too narrow. Until more is logged, promise by the 90 % figures.")]
    [InlineData(40, 37, "Of 40 timed tasks 37 fell inside their 80 % range (expected 32): the ranges can be trusted.")]
    [InlineData(40, 38, "Of 40 timed tasks 38 fell inside their 80 % range (expected 32): the ranges are wider than they need be. A promise by them is on the safe side.")]
    [InlineData(7, 2, "Of 7 timed tasks 2 fell inside their 80 % range (expected 6): too few to judge by yet; from 10 on the ranges are judged.")]
    [InlineData(1, 1, "Of 1 timed task 1 fell inside its 80 % range (expected 1): too few to judge by yet; from 10 on the ranges are judged.")]
    [InlineData(10, 4, "Of 10 timed tasks 4 fell inside their 80 % range (expected 8): the ranges are too narrow. Until more is logged, promise by the 90 % figures.")]
    [InlineData(40, 30, "Of 40 timed tasks 30 fell inside their 80 % range (expected 32): no more off than chance explains, but too few yet to vouch for the ranges.")]
    [InlineData(40, 31, "Of 40 timed tasks 31 fell inside their 80 % range (expected 32): the ranges can be trusted.")]
    [InlineData(10, 5, "Of 10 timed tasks 5 fell inside their 80 % range (expected 8): no more off than chance explains, but too few yet to vouch for the ranges.")]
    [InlineData(10000, 7900, "Of 10000 timed tasks 7900 fell inside their 80 % range (expected 8000): the ranges can be trusted.")]
    [InlineData(10000, 7600, "Of 10000 timed tasks 7600 fell inside their 80 % range (expected 8000): the ranges are too narrow. Until more is logged, promise by the 90 % figures.")]
    [InlineData(10, 10, "Of 10 timed tasks 10 fell inside their 80 % range (expected 8): the ranges can be trusted.")]
    public void The_verdict_allows_for_chance_and_is_silent_on_a_few(int times, int inside, string said) =>
        Assert.Equal(said, ReportWords.Coverage(Card(times, inside)));

    [Theory]
    [InlineData(0.04, 0.01, "You take 4 % longer than expected, on average.")]
    [InlineData(-0.04, 0.01, "You take 4 % less than expected, on average.")]
    [InlineData(0.04, 0.03, "You lean neither way: on average work takes what is expected, within 11 %.")]
    [InlineData(0.3, 0.6, "Whether you take longer or less than expected, 40 times cannot tell.")]
    [InlineData(0.001, 0.0001, "You lean neither way: on average work takes what is expected, within 1 %.")]
    public void A_leaning_is_told_only_where_chance_does_not_explain_it(double bias, double error, string said) =>
        Assert.Contains(said, ReportWords.Of(Card(40, 33) with { Bias = bias, BiasError = error }, 3));

    [Fact]
    public void One_time_tells_no_leaning() =>
        Assert.Contains("Whether you take longer or less than expected, one time cannot tell.", ReportWords.Of(Card(1, 1) with { Bias = 0.5, BiasError = double.PositiveInfinity }, 3));

    [Fact]
    public void Two_times_that_lie_close_together_by_chance_tell_no_leaning() =>
        Assert.Contains("Whether you take longer or less than expected, 2 times cannot tell.", ReportWords.Of(Card(2, 2) with { Bias = 0.2, BiasError = 0.001 }, 3));

    [Fact]
    public void The_other_ranges_are_told_with_what_chance_does_not_explain()
    {
        var said = ReportWords.Of(Card(40, 33) with { Coverages = [new(0.5, 9), new(0.8, 33), new(0.9, 36)] }, 3);

        Assert.Contains("Inside their 50 % range 9 (expected 20), fewer than chance explains, inside their 90 % range 36 (expected 36).", said);
    }

    [Fact]
    public void How_narrow_the_ranges_are_is_told_beside_the_tables() =>
        Assert.Contains("The upper end of a usual 80 % range is 2.0 times its lower end; by the tables alone it would be 3.1 times.", ReportWords.Of(Card(40, 33), 3.1));

    private static ReportCard Card(int times, int inside80) => new()
    {
        Times = times,
        Coverages = [new(0.5, times / 2), new(0.8, inside80), new(0.9, (int)(0.9 * times))],
        Bias = 0,
        BiasError = 0.05,
        Width = 2,
        LogScore = 0,
    };
}
