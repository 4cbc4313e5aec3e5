namespace ShopDays.Plans;

/// <summary>
/// What the drawn times of all orders have in common in each trial: one maker is slow at all of them or at none. It makes
/// any task's time go with any order's finish, and so hides which tasks of another order really hold it up.
/// </summary>
internal sealed class SharedPace
{
    /// <summary>
    /// The least partial correlation that is taken for an effect. That of unrelated times lies within 0.07 of zero in 2000
    /// trials (three standard errors); like operations have more in common than the pace, so twice that is asked for.
    /// </summary>
    private const double LeastEffect = 0.15;

    private readonly double[] pace;

    /// <summary>Works it out: the mean of the logarithms of all times.</summary>
    /// <param name="request">The orders.</param>
    /// <param name="trials">The trials that count.</param>
    public SharedPace(PlanRequest request, int[] trials) =>
        pace = [.. trials.Select(trial => request.Orders.SelectMany(order => order.Draws.Minutes[trial]).Select(minutes => Math.Log(Math.Max(minutes, 1))).DefaultIfEmpty().Average())];

    /// <summary>Whether a task's times still go with a finish when the pace is taken out of both, or are the pace themselves.</summary>
    public bool StillMoves(double[] times, double[] finishes)
    {
        var (withFinish, withPace, finishWithPace) = (Correlation(times, finishes), Correlation(times, pace), Correlation(finishes, pace));
        var rest = (1 - (withPace * withPace)) * (1 - (finishWithPace * finishWithPace));

        // Nothing is left of times that all are one task's, but rounding.
        return rest < 1e-9 || (withFinish - (withPace * finishWithPace)) / Math.Sqrt(rest) >= LeastEffect;
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
