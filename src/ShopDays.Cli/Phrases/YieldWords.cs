using System.Globalization;
using ShopDays.Layouts;

namespace ShopDays.Cli.Phrases;

/// <summary>The yield of a layout beside the best that any layout of its blanks could have.</summary>
internal static class YieldWords
{
    /// <summary><c>yield 71 %, no layout of these blanks could exceed 84 %</c>; <c>proven</c> when the two agree.</summary>
    public static string Of(Layout layout)
    {
        if (layout.HasBestYield)
        {
            return $"yield {Share(layout.Yield, "P0")}, proven to be the best of any layout of these blanks";
        }

        // Tenths where whole percents would seem to agree.
        var digits = Share(layout.Yield, "P0") == Share(layout.BestPossibleYield, "P0") ? "P1" : "P0";
        return $"yield {Share(layout.Yield, digits)}, no layout of these blanks could exceed {Share(layout.BestPossibleYield, digits)}";
    }

    private static string Share(double share, string digits) => share.ToString(digits, CultureInfo.InvariantCulture);
}
