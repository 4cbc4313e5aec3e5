using System.Numerics;

namespace ShopDays.Layouts.Search;

/// <summary>In which steps lengths or widths are counted: fewer make short work, and every size is rounded down to them.</summary>
internal static class CutSteps
{
    /// <summary>How many steps are weighed against each other.</summary>
    private const int Choices = 150;

    /// <summary>The step that all sizes are multiples of, if that makes few enough steps; else the least that does.</summary>
    /// <param name="whole">What is divided into steps.</param>
    /// <param name="sizes">The sizes that are rounded.</param>
    /// <param name="most">How many steps there may be; more when a size is smaller than that.</param>
    public static int For(int whole, IReadOnlyList<int> sizes, int most)
    {
        var (common, least) = (0, whole);
        foreach (var size in sizes)
        {
            common = (int)BigInteger.GreatestCommonDivisor(common, size);
            least = Math.Min(least, size);
        }

        // A step above the least size would make that size nothing.
        return common == 0 ? Math.Max(1, whole) : Math.Max(common, (int)Math.Min(least, (whole + (long)most - 1) / most));
    }

    /// <summary>
    /// A step up to twice as long, if less is lost of the sizes by rounding down to it: one that goes into one of them a
    /// whole number of times.
    /// </summary>
    public static int Fitting(int whole, IReadOnlyList<int> sizes, int most)
    {
        var plain = For(whole, sizes, most);
        if (sizes.All(size => size % plain == 0))
        {
            return plain;
        }

        var longest = Math.Min(2L * plain, sizes.Min());
        var fitting =
            from size in sizes.Distinct()
            from times in Enumerable.Range(1, size / plain)
            let step = size / times
            where step >= plain && step <= longest
            select step;
        return fitting.Distinct().Take(Choices).Append(plain).MinBy(step => sizes.Sum(size => size % step / (double)size));
    }
}
