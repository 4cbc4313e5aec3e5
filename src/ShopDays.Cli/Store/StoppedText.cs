using System.Globalization;

namespace ShopDays.Cli.Store;

/// <summary>What can be kept as the place where a maker stopped: a few lines of a day sheet, on which nothing drives a printer or a terminal.</summary>
internal static class StoppedText
{
    /// <summary>Letters at the most: what the two lines on a day sheet hold in a small hand, and some more.</summary>
    public const int Longest = 240;

    /// <summary>What is wrong with a text; null for nothing.</summary>
    public static string? Complaint(string text) => text switch
    {
        { Length: > Longest } => FormattableString.Invariant($"a note of {text.Length} letters is too long; expected {Longest} at most"),
        _ when text.Any(IsNoLetter) => "a sign in it is no letter, figure or mark; expected text on one line",
        _ => null,
    };

    private static bool IsNoLetter(char sign) => char.GetUnicodeCategory(sign) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;
}
