using CsCheck;
using NodaTime;
using ShopDays.Choices;
using ShopDays.Measures;
using ShopDays.Times;
using Xunit;

namespace ShopDays.Tests.Choices;

/// <summary>Where the hours of two ways of doing a job differ.</summary>
public sealed class HoursOtherwiseTests
{
    private static readonly string[] Names = ["rip", "crosscut", "resaw", "fit the vice"];

    private static readonly Gen<JobEstimate> Any = Gen.Select(Gen.Select(Gen.Int[0, 3], Gen.Bool, Gen.Int[0, 90]).Array[0, 6], Gen.Int[-1, 30])
        .Select((rows, again) => Estimate([.. rows.Select(row => (Names[row.Item1], row.Item2 ? "hand" : "band saw", row.Item3))], again));

    [Fact]
    public void The_differences_of_all_operations_add_up_to_the_difference_of_the_averages() => Gen.Select(Any, Any).Sample((one, other) =>
        Assert.Equal(MeanOf(other) - MeanOf(one), HoursOtherwise.Between(one, other).Sum(difference => difference.By.Minutes), 1e-4));

    [Fact]
    public void The_greatest_comes_first_and_none_is_there_twice() => Gen.Select(Any, Any).Sample((one, other) =>
    {
        var differences = HoursOtherwise.Between(one, other);
        Assert.Equal(differences.OrderByDescending(difference => Math.Abs(difference.By.Minutes)).Select(difference => difference.By), differences.Select(difference => difference.By));
        Assert.Equal(differences.Count, differences.Select(difference => difference.Operation ?? "").Distinct().Count());
    });

    [Fact]
    public void A_way_differs_from_itself_in_nothing() => Any.Sample(one => Assert.Empty(HoursOtherwise.Between(one, one)));

    [Fact]
    public void A_method_in_the_place_of_another_is_named()
    {
        var difference = Assert.Single(HoursOtherwise.Between(Estimate([("rip", "hand", 60)], -1), Estimate([("rip", "band saw", 15)], -1)));
        Assert.Equal(("rip", -45.0), (difference.Operation, difference.By.Minutes));
        Assert.Equal(["hand"], difference.Methods);
        Assert.Equal(["band saw"], difference.OtherMethods);
    }

    private static double MeanOf(JobEstimate estimate) => estimate.Operations.Sum(one => one.Time.Mean.Minutes) + (estimate.Spoiling?.Mean.Minutes ?? 0);

    private static JobEstimate Estimate((string Operation, string Method, int Minutes)[] rows, int again) => new()
    {
        HandsOn = Exactly(0),
        Heavy = Exactly(0),
        Spoiling = again < 0 ? null : new(1, 0.5, WorkTime.FromMinutes(again), WorkTime.Zero),
        Operations = [.. rows.Select(row => new OperationTime(row.Operation, row.Method, 1, "ft", 1, Exactly(row.Minutes)))],
        Tasks = rows.Length,
        Waits = Duration.Zero,
        Seed = 1,
        Draws = 1,
    };

    private static TimeRange Exactly(double minutes)
    {
        var time = WorkTime.FromMinutes(minutes);
        return new(time, time, time, time, time);
    }
}
