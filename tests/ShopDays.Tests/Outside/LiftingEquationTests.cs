using ShopDays.Measures;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "NIOSH publication 94-110, Applications Manual for the Revised Lifting Equation, rev. 2021")]
public sealed class LiftingEquationTests
{
    [Fact]
    public void A_slab_of_75_lb_held_15_in_out_has_a_recommended_weight_of_30_6_lb_and_an_index_of_2_5()
    {
        // 51 lb x 10/15 x 0.90. The manual's 51 lb and 23 kg are each rounded and differ by 0.6 %, 25 cm and 10 in by 1.6 %: 2.2 % together.
        var recommended = Lifting.RecommendedWeight(Lifting.SlabInTheArms);
        Assert.InRange(recommended.Pounds, 30.6 * 0.9775, 30.6 * 1.0225);
        Assert.Equal(2.5, Lifting.Index(Mass.FromPounds(75), Lifting.SlabInTheArms), 0.06);
    }

    [Fact]
    public void Under_ideal_conditions_the_load_constant_may_be_lifted()
    {
        var ideal = new Lift { Out = Length.FromMillimetres(250m), Grip = Grip.Good };
        // Nine digits leave room for the rounding of six products of doubles, and for nothing else.
        Assert.Equal(23, Lifting.RecommendedWeight(ideal).Kilograms, 9);
    }

    [Theory]
    // Points of the manual's tables of multipliers, from memory: exact to the two decimals printed there.
    [InlineData(500, 750, 0, 0, 0.50)] // horizontal 50 cm
    [InlineData(250, 0, 0, 0, 0.78)] // vertical 0 cm
    [InlineData(250, 1750, 0, 0, 0.70)] // vertical 175 cm
    [InlineData(250, 750, 1000, 0, 0.87)] // distance 100 cm
    [InlineData(250, 750, 0, 90, 0.71)] // twist 90 degrees
    [InlineData(250, 750, 0, 135, 0.57)] // twist 135 degrees
    public void Each_multiplier_agrees_with_its_table(int outMillimetres, int height, int travel, double twist, double multiplier)
    {
        var lift = new Lift { Out = Length.FromMillimetres((decimal)outMillimetres), Height = Length.FromMillimetres((decimal)height), Travel = Length.FromMillimetres((decimal)travel), TwistDegrees = twist, Grip = Grip.Good };
        Assert.Equal(multiplier, Lifting.RecommendedWeight(lift) / Lifting.LoadConstant, 0.0051);
    }

    [Fact]
    public void Beyond_arms_length_no_weight_is_right()
    {
        Assert.Equal(Mass.Zero, Lifting.RecommendedWeight(new Lift { Out = Length.FromMillimetres(640m) }));
    }
}
