using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "Wood Handbook (2010), chapter 4: the worked value of eq. 4-5 and the table of equilibrium moisture, the table's rows from memory")]
public sealed class EquilibriumMoistureTests
{
    /// <summary>The handbook prints one decimal; the worked example, 140 F and 55 %, gives 8.4.</summary>
    [Fact]
    public void The_worked_example_comes_out() => Assert.Equal(8.4, At(140, 55), 0.05);

    /// <summary>The table beside it prints 8.0 there: the formula departs from the tables by up to 0.9 points.</summary>
    [Theory]
    [InlineData(30, 30, 6.3)]
    [InlineData(30, 50, 9.5)]
    [InlineData(30, 80, 16.5)]
    [InlineData(50, 40, 7.9)]
    [InlineData(50, 70, 13.4)]
    [InlineData(60, 60, 11.1)]
    [InlineData(70, 25, 5.3)]
    [InlineData(70, 30, 6.2)]
    [InlineData(70, 50, 9.2)]
    [InlineData(70, 60, 11.1)]
    [InlineData(70, 84, 17.6)]
    [InlineData(70, 90, 20.5)]
    [InlineData(80, 50, 9.1)]
    [InlineData(80, 70, 12.9)]
    [InlineData(90, 40, 7.4)]
    [InlineData(90, 80, 15.4)]
    public void The_table_is_met_to_a_tenth_of_a_point_and_its_rounding(double fahrenheit, double humidity, double percent) =>
        Assert.Equal(percent, At(fahrenheit, humidity), 0.15);

    [Fact]
    public void Dry_air_dries_timber_out() => Assert.Equal(0, At(70, 0), 9);

    private static double At(double fahrenheit, double humidity) =>
        new Climate(Temperature.FromFahrenheit(fahrenheit), Percent.FromPercent(humidity)).Equilibrium.Percent;
}
