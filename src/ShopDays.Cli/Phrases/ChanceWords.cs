namespace ShopDays.Cli.Phrases;

/// <summary>Shares of drawn courses in words, the same wherever they are read.</summary>
internal static class ChanceWords
{
    /// <summary>A share in whole percents; never 0 or 100, since courses that were not drawn may go otherwise.</summary>
    /// <param name="share">From 0 to 1.</param>
    public static string Of(double share) => share switch
    {
        < 0.01 => "under 1 %",
        > 0.99 => "over 99 %",
        _ => FormattableString.Invariant($"{share:P0}"),
    };

    /// <summary>A share in whole numbers, <c>4 of 10</c>, or where that would be none or all of them <c>3 of 100</c>.</summary>
    /// <param name="share">From 0 to 1.</param>
    public static string OutOf(double share) => share is >= 0.095 and < 0.95
        ? $"{Rounded(10 * share)} of 10"
        : $"{Rounded(Math.Clamp(100 * share, 1, 99))} of 100";

    private static string Rounded(double number) => CountWords.Number((int)Math.Round(number, MidpointRounding.AwayFromZero));
}
