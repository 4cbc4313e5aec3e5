using ShopDays.Measures;

namespace ShopDays.Times;

/// <summary>How long something may take: quantiles of the hands-on time, smallest first.</summary>
/// <param name="P10">One time in ten it is quicker.</param>
/// <param name="P50">As likely more as less.</param>
/// <param name="P80">Four times in five it is not slower: what may be promised.</param>
/// <param name="P90">Nine times in ten it is not slower: bad luck.</param>
/// <param name="Mean">The average.</param>
public readonly record struct TimeRange(WorkTime P10, WorkTime P50, WorkTime P80, WorkTime P90, WorkTime Mean)
{
    /// <summary>The normal deviate that nine in ten do not exceed: so many standard deviations an 80 % range reaches to either side.</summary>
    internal const double NinetiethDeviate = 1.2815515655446004;

    /// <summary>The range of a sample. Quantiles lie between neighbouring values in proportion.</summary>
    /// <param name="minutes">The sample in minutes, in any order; it is sorted in place.</param>
    /// <exception cref="ArgumentException">The sample is empty.</exception>
    public static TimeRange OfSample(double[] minutes)
    {
        if (minutes.Length == 0)
        {
            throw new ArgumentException("a range needs at least one draw", nameof(minutes));
        }

        var mean = minutes.Average();
        Array.Sort(minutes);
        return new(At(minutes, 0.1), At(minutes, 0.5), At(minutes, 0.8), At(minutes, 0.9), WorkTime.FromMinutes(mean));
    }

    private static WorkTime At(double[] sorted, double share)
    {
        var place = share * (sorted.Length - 1);
        var below = (int)Math.Floor(place);
        var above = Math.Min(below + 1, sorted.Length - 1);
        return WorkTime.FromMinutes(sorted[below] + ((sorted[above] - sorted[below]) * (place - below)));
    }
}
