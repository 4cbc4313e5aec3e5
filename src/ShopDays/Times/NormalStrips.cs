using MathNet.Numerics.Distributions;

namespace ShopDays.Times;

/// <summary>
/// The normal curve exp(-x^2/2) from its middle to the right, covered by level strips of the same area: a place taken at
/// random in a strip taken at random lies under the curve nearly always, and then its distance from the middle is normal.
/// </summary>
/// <remarks>
/// G. Marsaglia and W. W. Tsang, "The ziggurat method for generating random variables", Journal of Statistical Software 5(8),
/// 2000, with 256 strips.
/// </remarks>
internal static class NormalStrips
{
    /// <summary>How many strips there are.</summary>
    public const int Count = 256;

    /// <summary>Where the tail begins, which goes with the lowest strip: the paper's r.</summary>
    public const double Tail = 3.6541528853610088;

    /// <summary>
    /// The right end of each strip, from the lowest; one more, 0, above the last. The lowest is as long as a strip of its height
    /// would be that had the tail's area in it.
    /// </summary>
    public static readonly double[] Ends = EndsOfEqualStrips();

    /// <summary>The curve's height at each end: that of a strip's lower edge.</summary>
    public static readonly double[] Heights = [.. Ends.Select(HeightAt)];

    /// <summary>The area of a strip.</summary>
    public static double Area => (Tail * HeightAt(Tail)) + (Math.Sqrt(2 * Math.PI) * Normal.CDF(0, 1, -Tail));

    private static double[] EndsOfEqualStrips()
    {
        var ends = new double[Count + 1];
        ends[0] = Area / HeightAt(Tail);
        ends[1] = Tail;
        for (var strip = 2; strip < Count; strip++)
        {
            ends[strip] = Math.Sqrt(-2 * Math.Log((Area / ends[strip - 1]) + HeightAt(ends[strip - 1])));
        }

        return ends;
    }

    private static double HeightAt(double distance) => Math.Exp(-distance * distance / 2);
}
