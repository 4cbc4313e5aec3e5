namespace ShopDays.Times;

/// <summary>Like pieces go faster one after the other.</summary>
/// <remarks>
/// Wright's rule: the n-th piece takes the first one's time times n to the power log2(learning rate)
/// (T. P. Wright, 1936, from memory). The gain stops at 0.7 of the first, and the catalogue's times are those of
/// about the third piece (common practice, no source).
/// </remarks>
public static class Batch
{
    /// <summary>No later piece is quicker than this share of the first.</summary>
    public const double LeastShare = 0.7;

    /// <summary>The piece whose time the catalogue gives.</summary>
    public const int CentralPiece = 3;

    /// <summary>Time of the n-th piece over that of the first.</summary>
    /// <param name="piece">Which piece, from 1.</param>
    /// <param name="learningRate">Time when the pieces have doubled, as a share, above 0 up to 1.</param>
    public static double ShareOfFirst(int piece, double learningRate) =>
        Math.Max(LeastShare, Math.Pow(piece, Math.Log2(learningRate)));

    /// <summary>Mean time of the first so many pieces over the catalogue's time.</summary>
    /// <param name="pieces">How many, at least 1.</param>
    /// <param name="learningRate">Time when the pieces have doubled, as a share, above 0 up to 1.</param>
    public static double MeanFactor(int pieces, double learningRate)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pieces, 1);
        var sum = 0.0;
        for (var piece = 1; piece <= pieces; piece++)
        {
            sum += ShareOfFirst(piece, learningRate);
        }

        return sum / pieces / ShareOfFirst(CentralPiece, learningRate);
    }
}
