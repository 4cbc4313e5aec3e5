using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>A task as a row of the regression: what is known of it, and which terms it depends on.</summary>
/// <param name="Offset">ln of the effective quantity and the known factor.</param>
/// <param name="Terms">The places of its terms and what each is multiplied with.</param>
/// <param name="Noise">Standard deviation of its noise where the noise scale is 1.</param>
internal sealed record RateRow(double Offset, IReadOnlyList<(int Place, double Value)> Terms, double Noise)
{
    /// <summary>
    /// The row of a task. Setting up, and what goes besides, count as extra quantity, as much as could be done in their
    /// time at the catalogue's own rate, and the batch effect as less of it.
    /// </summary>
    public static RateRow Of(TaskTiming.ByOperation timing, RateTerms terms)
    {
        var method = timing.Method;
        var level = terms.Level(timing.Operation, method);
        var row = new List<(int Place, double Value)>
        {
            (RateTerms.Pace, 1),
            (RateTerms.Group(method.PaceGroup), 1),
            (level, 1),
        };
        var atCatalogueRate = method.MinutesPerUnit * timing.Factor;
        for (var slope = 0; slope < method.Slopes.Count; slope++)
        {
            var (covariate, reference, exponent) = method.Slopes[slope];
            if (timing.Covariates.TryGetValue(covariate, out var value))
            {
                var distance = Math.Log(value / reference);
                row.Add((level + 1 + slope, distance));
                atCatalogueRate *= Math.Exp(exponent * distance);
            }
        }

        var effective = (timing.Quantity * Batch.MeanFactor(timing.Batch, method.LearningRate))
            + (((method.Setup.Minutes * timing.Setups) + (timing.Besides.Minutes / (1 + method.Rest))) / atCatalogueRate);
        return new(Math.Log(effective * timing.Factor), row, RatePrior.Noise(method));
    }
}
