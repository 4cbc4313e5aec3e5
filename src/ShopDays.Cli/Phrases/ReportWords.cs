using System.Globalization;
using ShopDays.Times;

namespace ShopDays.Cli.Phrases;

/// <summary>How far the ranges can be trusted, in plain words.</summary>
internal static class ReportWords
{
    private const double Usual = 0.8;

    /// <summary>So many times its standard error is a leaning that chance seldom explains.</summary>
    private const double Telling = 2;

    /// <summary>An average that is known no better than this says of no leaning that it is not there.</summary>
    private const double Loosest = 0.25;

    /// <summary>Fewer times than this lie close together by chance too often for their scatter to say how well their average is known.</summary>
    private const int FewestForLeaning = 5;

    /// <summary>The sentences of a report card.</summary>
    /// <param name="card">The card.</param>
    /// <param name="widthOfTables">The upper end of the 80 % range over the lower, as the tables alone have it for half of the same times.</param>
    public static IReadOnlyList<string> Of(ReportCard card, double widthOfTables) => [Coverage(card), Others(card), Leaning(card), Sharpness(card, widthOfTables)];

    /// <summary><c>Of 40 timed tasks 33 fell inside their 80 % range (expected 32): the ranges can be trusted.</c></summary>
    public static string Coverage(ReportCard card)
    {
        var coverage = card.Coverages.Single(one => one.Share == Usual);
        var told = $"Of {CountWords.Of(card.Times, "timed task")} {CountWords.Number(coverage.Inside)} fell inside {(card.Times == 1 ? "its" : "their")} 80 % range (expected {Expected(coverage, card.Times)})";
        return Trusted.Of(coverage, card.Times) switch
        {
            Trust.TooFewToTell => $"{told}: too few to judge by yet; from {CountWords.Number(Trusted.Least)} on the ranges are judged.",
            Trust.NothingAgainst => $"{told}: no more off than chance explains, but too few yet to vouch for the ranges.",
            Trust.AsWide => $"{told}: the ranges can be trusted.",
            Trust.TooNarrow => $"{told}: the ranges are too narrow. Until more is logged, promise by the 90 % figures.",
            Trust.TooWide => $"{told}: the ranges are wider than they need be. A promise by them is on the safe side.",
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static string Others(ReportCard card)
    {
        var told = string.Join(", ", card.Coverages.Where(one => one.Share != Usual).Select(one =>
            $"inside their {Share(one.Share)} range {CountWords.Number(one.Inside)} (expected {Expected(one, card.Times)}){Remark(Trusted.Of(one, card.Times))}"));
        return $"{char.ToUpperInvariant(told[0])}{told[1..]}.";
    }

    private static string Remark(Trust trust) => trust switch
    {
        Trust.TooNarrow => ", fewer than chance explains",
        Trust.TooWide => ", more than chance explains",
        _ => "",
    };

    private static string Leaning(ReportCard card)
    {
        var off = Math.Exp(Math.Abs(card.Bias)) - 1;
        var within = Math.Max(0.01, Math.Exp(Math.Abs(card.Bias) + (Telling * card.BiasError)) - 1);
        var isTelling = Math.Abs(card.Bias) > Telling * card.BiasError && Percent(off) != "0 %";
        if (card.Times < FewestForLeaning || (!isTelling && within > Loosest))
        {
            return $"Whether you take longer or less than expected, {(card.Times == 1 ? "one time" : CountWords.Of(card.Times, "time"))} cannot tell.";
        }

        return !isTelling ? $"You lean neither way: on average work takes what is expected, within {Percent(within)}."
            : card.Bias > 0 ? $"You take {Percent(off)} longer than expected, on average."
            : $"You take {Percent(1 - Math.Exp(card.Bias))} less than expected, on average.";
    }

    private static string Sharpness(ReportCard card, double widthOfTables)
    {
        var told = $"The upper end of a usual 80 % range is {Times(card.Width)} its lower end";
        return Times(card.Width) == Times(widthOfTables)
            ? $"{told}, as it is by the tables alone."
            : $"{told}; by the tables alone it would be {Times(widthOfTables)}.";
    }

    private static string Expected(Coverage coverage, int times) => (coverage.Share * times).ToString("0", CultureInfo.InvariantCulture);

    private static string Times(double ratio) => ratio.ToString("0.0", CultureInfo.InvariantCulture) + " times";

    private static string Share(double share) => Percent(share);

    private static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(share * 100, MidpointRounding.AwayFromZero):0} %");
}
