using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Store;

/// <summary>How large the figures of an entry may be, all ends included: what lies beyond is a slip of the pen.</summary>
internal static class EntryLimits
{
    /// <summary>Most of a trade's unit in one entry: a million dovetails, or feet of cut, are more than a life's work.</summary>
    public const double MostOfAUnit = 1_000_000;

    /// <summary>Most setups.</summary>
    public const double MostSetups = 10_000;

    /// <summary>Most like pieces in a run or a batch.</summary>
    public const int MostPieces = 10_000;

    /// <summary>Most that wild grain and the like make of a time.</summary>
    public const double LargestFactor = 1_000;

    /// <summary>Hardest timber, in lbf; the hardest that is listed anywhere has about half of it.</summary>
    public const double Hardest = 10_000;

    /// <summary>A year that a maker cannot have worked in is a slip.</summary>
    public static readonly LocalDate FirstDate = new(1900, 1, 1);

    /// <summary>The longest time, in minutes.</summary>
    public static double LongestMinutes => WorkTimeText.Longest.Minutes;

    /// <summary>The most of a property: inches, lbf for hardness.</summary>
    public static double Most(Covariate covariate) => covariate switch
    {
        Covariate.Hardness => Hardest,
        Covariate.Thickness => LengthValues.Thickest.Inches,
        _ => LengthValues.Longest.Inches,
    };

    /// <summary>What a property is counted in.</summary>
    public static string UnitOf(Covariate covariate) => covariate == Covariate.Hardness ? "lbf" : "in";
}
