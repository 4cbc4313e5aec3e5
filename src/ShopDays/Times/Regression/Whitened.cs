namespace ShopDays.Times.Regression;

/// <summary>
/// A row in terms that are independent: given s, it is normal around its location, and its deviation is s times the sum of
/// these figures, each times a standard normal of its own. Two rows share the normals of the common terms and, in one
/// block, those of the block.
/// </summary>
/// <param name="Block">The block.</param>
/// <param name="Own">The figures of the block's own normals.</param>
/// <param name="Common">The figures of the common normals.</param>
/// <param name="Location">Its centre.</param>
internal sealed record Whitened(int Block, double[] Own, double[] Common, double Location)
{
    /// <summary>Variance where s is 1.</summary>
    public double Variance => Along(Own, Own) + Along(Common, Common);

    /// <summary>Covariance with another row where s is 1.</summary>
    public double CovarianceWith(Whitened other) =>
        Along(Common, other.Common) + (Block == other.Block ? Along(Own, other.Own) : 0);

    /// <summary>The sum of products.</summary>
    public static double Along(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        var sum = 0.0;
        for (var at = 0; at < left.Length; at++)
        {
            sum += left[at] * right[at];
        }

        return sum;
    }
}
