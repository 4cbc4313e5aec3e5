using MathNet.Numerics.Distributions;
using ShopDays.Measures;

namespace ShopDays.Times;

/// <summary>
/// What is believed of a time: its logarithm has a Student distribution, which leans to the shop's own luck the more of it
/// has been logged.
/// </summary>
/// <param name="Location">Centre of ln(minutes).</param>
/// <param name="Scale">Scale of ln(minutes), above 0.</param>
/// <param name="Degrees">Degrees of freedom, above 0.</param>
public sealed record TimeBelief(double Location, double Scale, double Degrees)
{
    /// <summary>How luck is spread around the centre, in scales; null where luck is no part of it.</summary>
    internal LuckSpread? Luck { get; init; }

    /// <summary>The time that is as likely passed as not.</summary>
    public WorkTime Median => At(0.5);

    /// <summary>Its range. The mean is that of the log-normal with the same centre and spread: the average of e to a Student has no bound.</summary>
    public TimeRange Range => new(At(0.1), Median, At(0.8), At(0.9), WorkTime.FromMinutes(Math.Exp(Location + (Scale * Scale / 2))));

    /// <summary>The time that is not passed with a chance of that share.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    public WorkTime At(double share) =>
        WorkTime.FromMinutes(Math.Exp(Location + (Scale * (Luck?.At(share) ?? StudentT.InvCDF(0, 1, Degrees, share)))));

    /// <summary>The chance of that time or a shorter one, 0 to 1.</summary>
    public double ShareBelow(WorkTime time) => Luck?.ShareBelow(OffOf(time)) ?? StudentT.CDF(0, 1, Degrees, OffOf(time));

    /// <summary>ln of the density of ln(minutes) at a time.</summary>
    public double LogDensity(WorkTime time) => (Luck?.LogDensity(OffOf(time)) ?? StudentT.PDFLn(0, 1, Degrees, OffOf(time))) - Math.Log(Scale);

    /// <summary>How far ln of a time is off the centre, in scales.</summary>
    internal double OffOf(WorkTime time) => (Math.Log(time.Minutes) - Location) / Scale;
}
