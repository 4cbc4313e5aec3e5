namespace ShopDays.Plans;

/// <summary>
/// The pace of each trial, as an order's own tasks tell it. One maker is slow at all orders or at none, which makes any
/// task's time go with any order's finish; what still goes with it when this pace is taken out holds the order up.
/// </summary>
internal sealed class SharedPace
{
    /// <summary>
    /// The least partial correlation that is taken for an effect. That of unrelated times lies within 0.07 of zero in 2000
    /// trials (three standard errors); like operations have more in common than the pace, so twice that is asked for.
    /// </summary>
    private const double LeastEffect = 0.15;

    private readonly double[] pace;

    /// <summary>Works it out: the mean of the logarithms of the order's times.</summary>
    /// <param name="own">The order.</param>
    /// <param name="trials">The trials that count.</param>
    public SharedPace(OrderInHand own, int[] trials) =>
        pace = [.. trials.Select(trial => own.Draws.Minutes[trial].Select(minutes => Math.Log(Math.Max(minutes, 1))).DefaultIfEmpty().Average())];

    /// <summary>Whether times of a task of another order still go with a finish when the pace is taken out of both.</summary>
    public bool StillMoves(double[] times, double[] finishes)
    {
        var (withFinish, withPace, finishWithPace) = (Correlation(times, finishes), Correlation(times, pace), Correlation(finishes, pace));
        var rest = (1 - (withPace * withPace)) * (1 - (finishWithPace * finishWithPace));

        // Nothing but rounding is left of times that are all pace.
        return rest > 1e-9 && (withFinish - (withPace * finishWithPace)) / Math.Sqrt(rest) >= LeastEffect;
    }

    /// <summary>The mean product of what two rows of figures are off their means.</summary>
    public static double Covariance(double[] ones, double[] others)
    {
        var (mean, othersMean) = (ones.Average(), others.Average());
        return ones.Zip(others, (one, other) => (one - mean) * (other - othersMean)).Sum() / ones.Length;
    }

    private static double Correlation(double[] ones, double[] others)
    {
        var spread = Covariance(ones, ones) * Covariance(others, others);
        return spread <= 0 ? 0 : Covariance(ones, others) / Math.Sqrt(spread);
    }
}
