using ShopDays.Tests.Times;
using ShopDays.Times;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Outside;

/// <summary>Two ways of doing a job that share their chance differ by less luck than two that do not.</summary>
[Trait("Source", "A. M. Law, Simulation Modeling and Analysis, 5th edition, 2015, section 11.2: with common random numbers the variance of a difference is the sum of both variances less twice their covariance; from memory")]
public sealed class CommonCoursesTests
{
    private const int Courses = 4_000;

    private static readonly Operation Rip = AnOperation.Named("rip");
    private static readonly Operation Saw = AnOperation.Named("saw a curve", minutes: 2, low: 1, high: 4);
    private static readonly Operation Plane = AnOperation.Named("plane", group: PaceGroup.Planing);
    private static readonly RateModel Model = RateModel.FromPrior(new([Rip, Saw, Plane]));

    private static readonly IReadOnlyList<ShopTask> AsIs = AnOperation.Tasks(Rip.Of(6), Plane.Of(8), Plane.Of(3), Plane.Of(5));

    // One task less, and the first by another operation.
    private static readonly IReadOnlyList<ShopTask> Otherwise = AnOperation.Tasks(Saw.Of(6), Plane.Of(8), Plane.Of(3));

    [Fact]
    public void The_variance_of_the_difference_is_both_variances_less_twice_their_covariance()
    {
        var (one, other) = (Sums(Model.Draw(AsIs, Courses, 1)), Sums(Model.DrawOtherwise(AsIs, Otherwise, Courses, 1)));
        var difference = one.Zip(other, (first, second) => second - first).ToArray();
        var (mean, otherMean) = (one.Average(), other.Average());
        var covariance = one.Zip(other, (first, second) => (first - mean) * (second - otherMean)).Sum() / Courses;
        Assert.Equal(1, (Variance(one) + Variance(other) - (2 * covariance)) / Variance(difference), 1e-9);
        Assert.True(covariance > 0);
    }

    [Fact]
    public void The_difference_varies_by_less_than_half_of_what_it_does_with_chances_of_their_own()
    {
        var one = Sums(Model.Draw(AsIs, Courses, 1));
        var shared = Sums(Model.DrawOtherwise(AsIs, Otherwise, Courses, 1));
        var apart = Sums(Model.Draw(Otherwise, Courses, 2));
        Assert.True(Spread(one, shared) < 0.5 * Spread(one, apart), $"{Spread(one, shared)} against {Spread(one, apart)}");

        static double Spread(double[] one, double[] other) => Variance([.. one.Zip(other, (first, second) => second - first)]);
    }

    [Fact]
    public void The_other_way_is_spread_as_if_it_were_drawn_alone()
    {
        double[] shared = [.. Sums(Model.DrawOtherwise(AsIs, Otherwise, Courses, 1)).Order()];
        double[] alone = [.. Sums(Model.Draw(Otherwise, Courses, 3)).Order()];

        // Two samples of 4,000 differ in a share by a standard error of 0.011 at the most; four of them.
        Assert.All((double[])[0.1, 0.5, 0.9], share => Assert.Equal(share, alone.Count(one => one <= shared[(int)(share * Courses)]) / (double)Courses, 0.045));
    }

    private static double[] Sums(TimeDraws draws) => [.. draws.Minutes.Select(trial => trial.Sum())];

    private static double Variance(double[] sample) => MeanOfSquares(sample, sample.Average());

    private static double MeanOfSquares(double[] sample, double from) => sample.Sum(one => (one - from) * (one - from)) / sample.Length;
}
