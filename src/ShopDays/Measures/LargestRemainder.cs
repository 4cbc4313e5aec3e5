namespace ShopDays.Measures;

/// <summary>
/// Shares a whole number of things out by weights, so that nothing is lost and nothing invented: each gets the whole part of
/// its share, and what is left goes one by one to the largest remainders (the method of largest remainders, as seats are
/// shared out by votes).
/// </summary>
public static class LargestRemainder
{
    /// <summary>The shares; their sum is the total.</summary>
    /// <param name="total">How many there are, 0 or more.</param>
    /// <param name="weights">At least one, none below zero and one above it. Of equal remainders the first weight goes first.</param>
    /// <exception cref="ArgumentException">The weights are none, all zero, or one is below zero.</exception>
    public static IReadOnlyList<long> Share(long total, IReadOnlyList<decimal> weights)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(total);
        var sum = weights.Sum();
        if (sum <= 0 || weights.Any(weight => weight < 0))
        {
            throw new ArgumentException("weights are zero or more, and one of them is more", nameof(weights));
        }

        decimal[] exact = [.. weights.Select(weight => total * (weight / sum))];
        long[] shares = [.. exact.Select(share => (long)decimal.Floor(share))];

        // Division leaves an error in the last figure: a share may lack one unit or have one too many.
        var left = total - shares.Sum();
        foreach (var place in Enumerable.Range(0, weights.Count).Where(place => weights[place] > 0).OrderByDescending(place => exact[place] - shares[place]))
        {
            if (left <= 0)
            {
                break;
            }

            shares[place]++;
            left--;
        }

        return shares;
    }
}
