using ShopDays.Cli.Files;
using ShopDays.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Outside;

/// <summary>
/// What the planes take off in a minute, against the times of a face by its standard: one square foot, 1/8 in deep, is 18
/// cubic inches; the scrub plane takes 14 of them, the jack 3, the try plane 1. Turning, straightedge, winding sticks and
/// clearing shavings take up to as much again, the more the truer the face. These figures were in view when the catalogue
/// was made: the check shows that the model meets them, not that each rate is right.
/// </summary>
[Trait("Source", "Common practice, no source: strokes a minute, their length, the shaving's width and depth of scrub, jack and try plane; the products are computed here")]
public sealed class PlanedFacesTests
{
    private const double Scrubbing = 14 / (24 * 18 * 0.75 * 0.020);
    private const double Jacking = 3 / (20 * 30 * 1.25 * 0.008);
    private const double Trying = 1 / (18 * 36 * 2.0 * 0.003);

    [Fact]
    public void The_planes_themselves_take_some_three_minutes_for_a_square_foot()
    {
        Assert.Equal(2.2, Scrubbing, 0.05);
        Assert.Equal(0.5, Jacking, 0.05);
        Assert.Equal(0.3, Trying, 0.05);
    }

    [Theory]
    [InlineData("scrub a face", Scrubbing)]
    [InlineData("jack a face", Scrubbing + Jacking)]
    [InlineData("flatten face one", Scrubbing + Jacking + Trying)]
    [InlineData("gauge and thickness face two", Scrubbing + Jacking + Trying)]
    public void A_face_takes_its_planes_own_minutes_and_at_the_most_as_much_again(string operation, double planes) =>
        Assert.InRange(BuiltIn.Operations[operation].Methods[0].MinutesPerUnit, planes, planes * 2);

    [Fact]
    public void What_goes_beside_the_strokes_grows_with_the_truth_of_the_face()
    {
        double[] beside =
        [
            Rate("scrub a face") - Scrubbing,
            Rate("jack a face") - Scrubbing - Jacking,
            Rate("flatten face one") - Scrubbing - Jacking - Trying,
        ];
        Assert.Equal(beside.Order(), beside);

        static double Rate(string operation) => BuiltIn.Operations[operation].Methods[0].MinutesPerUnit;
    }

    [Theory]
    [InlineData(0.015625)]
    [InlineData(0.0625)]
    [InlineData(0.125)]
    [InlineData(0.5)]
    [InlineData(1.5)]
    public void A_rougher_face_never_takes_longer_however_much_comes_off(double depth)
    {
        var rates = RateModel.FromPrior(BuiltIn.Operations);
        Assert.True(At("scrub a face") < At("jack a face"));
        Assert.True(At("jack a face") < At("flatten face one"));
        Assert.True(At("jack a face") < At("gauge and thickness face two"));

        double At(string name) => rates.BeliefOf(new TaskTiming.ByOperation
        {
            Operation = BuiltIn.Operations[name],
            Method = BuiltIn.Operations[name].Methods[0],
            Quantity = 4,
            Setups = 1,
            Covariates = new Dictionary<Covariate, double> { [Covariate.Depth] = depth, [Covariate.Hardness] = 1000 },
        }).Median.Minutes;
    }
}
