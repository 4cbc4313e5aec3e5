using MathNet.Numerics.Distributions;

namespace ShopDays.Times;

/// <summary>What is left of work that has taken some time already and is not finished.</summary>
/// <remarks>
/// The whole of it is known to be longer than what was spent: its own luck is drawn from what of the normal distribution
/// lies beyond that, with the rates of the trial as they are.
/// </remarks>
internal static class TimeLeft
{
    /// <summary>The least that is left of anything not ticked off: a minute, in which at the least one sees that it is done.</summary>
    public const double LeastMinutes = 1;

    /// <summary>Beyond this the tail of the normal distribution is as good as exponential (error below 1 / deviate^2).</summary>
    private const double Far = 30;

    /// <summary>
    /// A deviate beyond a least one that is as likely, among those beyond it, as the given deviate is among all: 0 gives
    /// the median of what is beyond.
    /// </summary>
    /// <param name="deviate">A normal deviate.</param>
    /// <param name="least">The least; negative infinity for none.</param>
    public static double Beyond(double deviate, double least)
    {
        if (double.IsNegativeInfinity(least))
        {
            return deviate;
        }

        var share = Normal.CDF(0, 1, -deviate);
        return least > Far
            ? least - (Math.Log(share) / least)
            : Math.Max(least, -Normal.InvCDF(0, 1, share * Normal.CDF(0, 1, -least)));
    }

    /// <summary>Minutes left, above zero.</summary>
    /// <param name="whole">Minutes of a whole whose luck lies beyond a least one.</param>
    /// <param name="spent">Minutes spent.</param>
    /// <param name="least">The luck of those; infinite or not a number where no whole is so long.</param>
    public static double Minutes(Func<double, double> whole, double spent, double least) =>
        double.IsNaN(least) || double.IsPositiveInfinity(least)
            ? LeastMinutes
            : Math.Max(LeastMinutes, whole(least) - spent);
}
