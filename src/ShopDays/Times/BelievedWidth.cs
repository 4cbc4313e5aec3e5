using ShopDays.Times.Regression;

namespace ShopDays.Times;

/// <summary>
/// How far makers are believed to lie from the catalogue and from each other. The usual width is that of competent workers;
/// a log may speak for a wider one, of somebody much slower or faster, or much better at one thing than at another.
/// </summary>
/// <param name="Pace">How many times wider than usual the pace is spread.</param>
/// <param name="Scatter">How many times wider than usual single groups, operations and slopes are spread.</param>
/// <param name="Credit">How likely such a maker is beforehand, compared with a usual one.</param>
internal sealed record BelievedWidth(double Pace, double Scatter, double Credit)
{
    /// <summary>Competent workers.</summary>
    public static readonly BelievedWidth Usual = new(1, 1, 1);

    // The widths and what they are credited with are our choice (common practice, no source): one maker in ten or so is
    // unlike the catalogue's.
    private static readonly BelievedWidth[] All = [Usual, new(5, 1, 0.1), new(1, 2, 0.1), new(5, 2, 0.05)];

    /// <summary>What is believed of a catalogue's terms.</summary>
    public BlockRegression PriorOf(RateTerms terms) => BlockRegression.FromPrior(
        RatePrior.OfCommon(terms, Pace, Scatter),
        terms.Methods.Select(method => RatePrior.OfMethod(method, Scatter)),
        RatePrior.NoiseShape,
        RatePrior.NoiseScale);

    /// <summary>Learns with the width that the rows speak for most.</summary>
    public static BlockRegression Learn(RateTerms terms, FoldedRows rows) => All
        .Select(width => (Learned: width.PriorOf(terms).With(rows), width.Credit))
        .MaxBy(one => one.Learned.LogEvidence() + Math.Log(one.Credit)).Learned;
}
