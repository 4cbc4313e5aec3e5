using ShopDays.Times;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "Boys among the first 12 of 6115 families of 13 in Saxony (A. Geissler, 1889) with the fitted beta-binomial counts of the textbooks, e.g. J. K. Lindsey and P. M. E. Altham (1998); and Laplace's rule of succession: all from memory")]
public sealed class BetaBinomialTests
{
    private const int Families = 6115;

    // Printed to one decimal.
    private const double Printed = 0.05;

    private static readonly double[] Fitted = [2.3, 22.6, 104.8, 310.9, 655.7, 1036.2, 1257.9, 1182.1, 853.6, 461.9, 177.9, 43.8, 5.2];

    [Fact]
    public void The_fitted_families_are_found_again()
    {
        var atMost = BetaBinomial.AtMost(34.09558, 31.5715, 12);
        Assert.Equal(Fitted.Length, atMost.Length);
        for (var boys = 0; boys < Fitted.Length; boys++)
        {
            Assert.Equal(Fitted[boys], Families * (atMost[boys] - (boys == 0 ? 0 : atMost[boys - 1])), Printed);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(40)]
    public void Where_nothing_is_known_of_a_chance_every_count_is_alike_likely(int pieces)
    {
        // Sums of at most forty doubles below one.
        Assert.All(BetaBinomial.AtMost(1, 1, pieces).Index(), one => Assert.Equal((one.Index + 1.0) / (pieces + 1), one.Item, 1e-12));
    }
}
