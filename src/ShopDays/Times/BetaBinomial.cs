namespace ShopDays.Times;

/// <summary>How many of some pieces something happens to, when its chance itself is uncertain: beta-distributed.</summary>
/// <remarks>J. G. Skellam, "A probability distribution derived from the binomial distribution...", 1948, from memory.</remarks>
internal static class BetaBinomial
{
    /// <summary>Beyond this nothing is added up any more.</summary>
    private const double AsGoodAsOne = 1 - 1e-12;

    /// <summary>The chances of no more than 0, 1, 2 and so on, up to where that is as good as certain.</summary>
    /// <param name="alpha">First parameter of the beta distribution, 0 or more; with 0 it never happens.</param>
    /// <param name="beta">Its second, above 0.</param>
    /// <param name="pieces">How many pieces, 0 or more.</param>
    public static double[] AtMost(double alpha, double beta, int pieces)
    {
        var chance = 1.0;
        for (var piece = 0; piece < pieces; piece++)
        {
            chance *= (beta + piece) / (alpha + beta + piece);
        }

        var sums = new List<double> { chance };
        for (var count = 0; count < pieces && sums[^1] < AsGoodAsOne; count++)
        {
            chance *= (pieces - count) * (alpha + count) / ((count + 1) * (beta + pieces - count - 1));
            sums.Add(sums[^1] + chance);
        }

        return [.. sums];
    }
}
