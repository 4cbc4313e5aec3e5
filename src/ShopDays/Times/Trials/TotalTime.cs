using ShopDays.Measures;

namespace ShopDays.Times.Trials;

/// <summary>How much is known of a sum of times: its mean and its variance.</summary>
/// <param name="MeanMinutes">The mean in minutes, above 0.</param>
/// <param name="VarianceMinutes">The variance in minutes squared, 0 or more.</param>
internal readonly record struct TotalTime(double MeanMinutes, double VarianceMinutes)
{
    /// <summary>Its 80 % range: that of the log-normal with this mean and variance, which is near a sum whose parts go together.</summary>
    /// <remarks>Source of the approximation: L. F. Fenton (1960), from memory.</remarks>
    public (WorkTime Low, WorkTime High) Range80
    {
        get
        {
            var variance = Math.Log(1 + (VarianceMinutes / (MeanMinutes * MeanMinutes)));
            var centre = Math.Log(MeanMinutes) - (variance / 2);
            var reach = TimeRange.NinetiethDeviate * Math.Sqrt(variance);
            return (WorkTime.FromMinutes(Math.Exp(centre - reach)), WorkTime.FromMinutes(Math.Exp(centre + reach)));
        }
    }

    /// <summary>How wide the 80 % range is.</summary>
    public WorkTime Width => Range80.High - Range80.Low;
}
