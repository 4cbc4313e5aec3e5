using ShopDays.Times.Regression;

namespace ShopDays.Times;

/// <summary>
/// How far makers are believed to lie from the catalogue and from each other. The usual width is that of competent workers;
/// a log may speak for a wider one, of somebody much slower or faster, or much better at one thing than at another.
/// </summary>
internal static class BelievedWidth
{
    // How many times wider than usual the pace is spread, how many times wider the rest, and how likely such a maker is beforehand
    // compared with a usual one: our choice (common practice, no source), one maker in ten or so being unlike the catalogue's.
    private static readonly (double Scatter, (double Pace, double Credit)[] Paces)[] All =
    [
        (1, [(1, 1), (5, 0.1)]),
        (2, [(1, 0.1), (5, 0.05)]),
    ];

    /// <summary>
    /// Times of fewer methods than this do not speak of a maker who is slow or fast at everything: one slip of the pencil, or one
    /// operation that means something else in this shop, must not carry the estimates of all others away (our choice).
    /// </summary>
    private const int FewestForPace = 3;

    /// <summary>What is believed of a catalogue's terms in the usual width.</summary>
    public static BlockRegression Usual(RateTerms terms) => PriorOf(terms, 1);

    /// <summary>Learns with the width that the rows speak for most.</summary>
    public static BlockRegression Learn(RateTerms terms, FoldedRows rows)
    {
        var best = (Learned: (BlockRegression?)null, Weight: double.NegativeInfinity);
        foreach (var (scatter, paces) in All)
        {
            var learned = PriorOf(terms, scatter).With(rows);
            foreach (var (pace, credit) in paces.Where(one => one.Pace == 1 || rows.Triangles.Count >= FewestForPace))
            {
                var otherwise = pace == 1 ? learned : learned.Believing(RatePrior.OfCommon(terms, pace, scatter));
                var weight = otherwise.LogEvidence() + Math.Log(credit);
                best = weight > best.Weight ? (otherwise, weight) : best;
            }
        }

        return best.Learned!;
    }

    private static BlockRegression PriorOf(RateTerms terms, double scatter) => BlockRegression.FromPrior(
        RatePrior.OfCommon(terms, 1, scatter),
        terms.Methods.Select(method => RatePrior.OfMethod(method, scatter)),
        RatePrior.NoiseShape,
        RatePrior.NoiseScale);
}
