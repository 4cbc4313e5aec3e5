using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "FPL Report 2086 (1957) for sugar maple; the rules of a year an inch, of 1.5 as the power of thickness, and of 14 days under a roof for each 3 points: common practice, no source")]
public sealed class AirDryingTests
{
    private static readonly LocalDate Spring = new(2026, 4, 1);

    /// <summary>11 C and 70 %, a temperate stack: timber comes to 13 %.</summary>
    private static readonly Climate Outdoors = new(Temperature.FromCelsius(11), Percent.FromPercent(70));

    [Fact]
    public void Sugar_maple_of_an_inch_is_at_twenty_percent_after_40_to_205_days_and_90_on_average()
    {
        Assert.Equal(90, DaysToTwenty("sugar maple", DryingPace.Usual));
        Assert.Equal(20, Course("sugar maple", 1).SinceStacked(Spring, Spring.PlusDays(90))!.Value.Percent, 6);
        Assert.InRange(DaysToTwenty("sugar maple", DryingPace.Quick), 40, 205);
        Assert.InRange(DaysToTwenty("sugar maple", DryingPace.Slow), 40, 205);
    }

    [Fact]
    public void A_year_for_an_inch_of_oak_lies_between_what_is_likely_and_the_slowest() =>
        Assert.InRange(365, DaysToReady(DryingPace.Usual), DaysToReady(DryingPace.Slow));

    [Fact]
    public void Two_inches_take_nearly_three_times_as_long_as_one()
    {
        var (one, two) = (Course("white oak", 1).ReadySinceStacked(Spring)!.Value, Course("white oak", 2).ReadySinceStacked(Spring)!.Value);

        Assert.InRange(Period.DaysBetween(Spring, two) / (double)Period.DaysBetween(Spring, one), 2.75, 2.9);
    }

    [Fact]
    public void Under_a_roof_three_points_take_fourteen_days_an_inch_and_a_week_to_six_weeks()
    {
        var (air, read) = (Outdoors.Equilibrium.Percent, Spring);
        Assert.Equal(14, Days(DryingPace.Usual));
        Assert.Equal(7, Days(DryingPace.Quick));
        Assert.Equal(42, Days(DryingPace.Slow));

        int Days(DryingPace pace) => Period.DaysBetween(read, Course("black cherry", 1, pace).ReadyFrom(MoistureContent.FromPercent(air + 3 - 1e-9), read)!.Value);
    }

    private static int DaysToReady(DryingPace pace) => Period.DaysBetween(Spring, Course("white oak", 1, pace).ReadySinceStacked(Spring)!.Value);

    private static int DaysToTwenty(string species, DryingPace pace) =>
        Enumerable.Range(1, 1000).First(day => Course(species, 1, pace).SinceStacked(Spring, Spring.PlusDays(day)) is not null);

    private static DryingCourse Course(string species, double inches, DryingPace pace = DryingPace.Usual) =>
        new(BuiltIn.Species.TryFind(species, out var found) ? found : throw new ArgumentException(species, nameof(species)), Length.FromInches(inches), _ => Outdoors.Equilibrium, BuiltIn.Waits, pace);
}
