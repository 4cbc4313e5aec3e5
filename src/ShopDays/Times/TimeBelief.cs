using MathNet.Numerics.Distributions;
using ShopDays.Measures;

namespace ShopDays.Times;

/// <summary>What is believed of a time: its logarithm has a Student distribution.</summary>
/// <param name="Location">Centre of ln(minutes).</param>
/// <param name="Scale">Scale of ln(minutes), above 0.</param>
/// <param name="Degrees">Degrees of freedom, above 0.</param>
public readonly record struct TimeBelief(double Location, double Scale, double Degrees)
{
    /// <summary>The time that is as likely passed as not.</summary>
    public WorkTime Median => WorkTime.FromMinutes(Math.Exp(Location));

    /// <summary>
    /// Its range in closed form. The average of e to a Student has no bound, so the mean given is that of the log-normal with
    /// the same centre and spread.
    /// </summary>
    public TimeRange Range => new(At(0.1), Median, At(0.8), At(0.9), WorkTime.FromMinutes(Math.Exp(Location + (Scale * Scale / 2))));

    /// <summary>The time that is not passed with a chance of that share.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    public WorkTime At(double share) => WorkTime.FromMinutes(Math.Exp(StudentT.InvCDF(Location, Scale, Degrees, share)));

    /// <summary>The chance of a shorter time, 0 to 1.</summary>
    public double ShareBelow(WorkTime time) => StudentT.CDF(Location, Scale, Degrees, Math.Log(time.Minutes));

    /// <summary>ln of the density of ln(minutes) at a time.</summary>
    public double LogDensity(WorkTime time) => StudentT.PDFLn(Location, Scale, Degrees, Math.Log(time.Minutes));
}
