using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "National Institute of Standards and Technology, Statistical Reference Datasets (StRD), linear least squares regression: certified values in the files")]
public sealed class CertifiedRegressionTests
{
    // The least digits over all coefficients, over their standard deviations, and of the residual standard deviation, about one
    // below what plain doubles gave when this was written: other processors round in another order. Filip and the
    // Wampler sets are polynomials of degree 10 and 5 with terms so alike that a double's sixteen digits shrink to these.
    [Theory]
    [InlineData("Norris", 11, 12, 12)]
    [InlineData("Pontius", 11, 12, 12)]
    [InlineData("NoInt1", 13, 13, 13)]
    [InlineData("NoInt2", 13, 13, 13)]
    [InlineData("Filip", 7, 7, 8)]
    [InlineData("Longley", 11, 12, 12)]
    [InlineData("Wampler1", 8, 8, 8)]
    [InlineData("Wampler2", 12, 13, 13)]
    [InlineData("Wampler3", 8, 12, 13)]
    [InlineData("Wampler4", 7, 12, 13)]
    [InlineData("Wampler5", 5, 12, 13)]
    public void With_a_flat_prior_what_is_learned_is_the_certified_regression(string name, double coefficients, double deviations, double residual)
    {
        var certified = CertifiedRegression.Read(name);
        var (found, spread, scale) = certified.Solve();

        var a = found.Zip(certified.Coefficients, CertifiedRegression.DigitsOf).Min();
        var b = spread.Zip(certified.Deviations, CertifiedRegression.DigitsOf).Min();
        var c = CertifiedRegression.DigitsOf(scale, certified.ResidualDeviation);
        Assert.True(a >= coefficients && b >= deviations && c >= residual, FormattableString.Invariant($"{name}: {a:0.0}, {b:0.0} and {c:0.0} digits"));
    }
}
