using NodaTime;
using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Terminal;

/// <summary>When the trials of a plan are finished, as bars of letters.</summary>
internal static class FinishSketch
{
    /// <summary>Bars at the most: what a maker takes in at one look.</summary>
    public const int Most = 14;

    private const int Longest = 36;

    // The date, the share and the white between.
    private const int Beside = 31;
    private const char Full = '█';
    private const char Half = '▌';

    /// <summary>Its lines: bars as long as the dates and the marks beside them let them be.</summary>
    /// <param name="bars">The bars, at least one.</param>
    /// <param name="width">Columns to use.</param>
    public static IEnumerable<string> Lines(IReadOnlyList<FinishBar> bars, int width)
    {
        var longest = Math.Clamp(width - Beside - bars.Max(bar => string.Join(", ", bar.Marks).Length), 4, Longest);
        var tallest = bars.Max(bar => bar.Trials);
        foreach (var bar in bars)
        {
            var halves = tallest == 0 ? 0 : (int)Math.Round(2.0 * longest * bar.Trials / tallest, MidpointRounding.AwayFromZero);
            // One trial is something, however many there are elsewhere.
            halves = bar.Trials > 0 ? Math.Max(1, halves) : 0;
            var drawn = new string(Full, halves / 2) + (halves % 2 == 0 ? "" : Half.ToString());
            yield return FormattableString.Invariant($"  {DateWords.Of(bar.First),-15}  {drawn.PadRight(longest)} {ShareOf(bar),9}  {string.Join(", ", bar.Marks)}").TrimEnd();
        }
    }

    private static string ShareOf(FinishBar bar) => bar.Trials == 0 ? "" : ChanceWords.Of(bar.Share);

    /// <summary>What stands above them.</summary>
    public static string Title(IReadOnlyList<FinishBar> bars, int trials)
    {
        var weeks = (Period.DaysBetween(bars[0].First, bars[0].Last) + 1) / 7;
        var by = weeks switch
        {
            0 => "",
            1 => ", by weeks from Monday on",
            _ => $", by {CountWords.Of(weeks, "week")} from a Monday on",
        };
        return $"When {CountWords.Of(trials, "drawn course")} of the work {(trials == 1 ? "is" : "are")} finished{by}";
    }
}
