namespace ShopDays.Times;

/// <summary>How far a model's ranges can be trusted: each time of the log beside what all the others made one expect.</summary>
public sealed record ReportCard
{
    /// <summary>How many times were judged; those held out are among them.</summary>
    public required int Times { get; init; }

    /// <summary>How many lay inside the range that holds half, four in five, nine in ten.</summary>
    public required IReadOnlyList<Coverage> Coverages { get; init; }

    /// <summary>Mean of ln(time / expected middle): above 0 when work takes longer than expected.</summary>
    public required double Bias { get; init; }

    /// <summary>Standard error of the bias.</summary>
    public required double BiasError { get; init; }

    /// <summary>The upper end of the 80 % range over the lower, as it is for half of the times.</summary>
    public required double Width { get; init; }

    /// <summary>Mean of ln of the density at ln(minutes): greater is better.</summary>
    public required double LogScore { get; init; }

    /// <summary>Judges a model by its log.</summary>
    /// <returns>The card; null when nothing was learned from.</returns>
    public static ReportCard? Of(RateModel model) => Of(model, _ => true);

    /// <summary>The card of some of the log.</summary>
    /// <param name="model">The model.</param>
    /// <param name="which">Which times.</param>
    /// <returns>The card; null when there are none.</returns>
    public static ReportCard? Of(RateModel model, Func<JudgedWork, bool> which)
    {
        var judged = model.Log.Where(which).Select(one => (one.Work.Took, Expected: model.ExpectedOf(one))).ToList();
        if (judged.Count == 0)
        {
            return null;
        }

        var places = judged.Select(one => one.Expected.ShareBelow(one.Took)).ToList();
        var offs = judged.Select(one => Math.Log(one.Took / one.Expected.Median)).ToList();
        var bias = offs.Average();
        var widths = judged.Select(one => one.Expected.At(0.9) / one.Expected.At(0.1)).Order().ToList();
        return new()
        {
            Times = judged.Count,
            Coverages = [.. ((double[])[0.5, 0.8, 0.9]).Select(share => new Coverage(share, places.Count(place => Math.Abs(place - 0.5) <= share / 2)))],
            Bias = bias,
            BiasError = judged.Count < 2 ? double.PositiveInfinity : Math.Sqrt(offs.Sum(off => (off - bias) * (off - bias)) / (judged.Count - 1) / judged.Count),
            Width = widths[widths.Count / 2],
            LogScore = judged.Average(one => one.Expected.LogDensity(one.Took)),
        };
    }
}

/// <summary>How many times lay inside the central ranges of one coverage.</summary>
/// <param name="Share">What such a range holds if it is honest, 0 to 1.</param>
/// <param name="Inside">How many lay inside.</param>
public sealed record Coverage(double Share, int Inside);
