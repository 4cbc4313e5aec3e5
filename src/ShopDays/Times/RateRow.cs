using ShopDays.Measures;
using ShopDays.Times.Regression;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>A task as a row of the regression: what is known of it, and which terms it depends on.</summary>
/// <param name="Offset">ln of the effective quantity and the known factor.</param>
/// <param name="Block">The block of its operation and method.</param>
/// <param name="Own">The figures of its level and slopes.</param>
/// <param name="Common">The figures of the terms that all share.</param>
/// <param name="Noise">Standard deviation of its noise where the noise scale is 1.</param>
internal sealed record RateRow(double Offset, int Block, double[] Own, double[] Common, double Noise)
{
    /// <summary>
    /// The row of a task. Setting up, and what goes besides, count as extra quantity, as much as could be done in their
    /// time at the catalogue's own rate, and the batch effect as less of it.
    /// </summary>
    /// <param name="timing">The task.</param>
    /// <param name="terms">The terms.</param>
    /// <param name="worker">Who does it; null for the maker.</param>
    public static RateRow Of(TaskTiming.ByOperation timing, RateTerms terms, string? worker = null)
    {
        var block = terms.Block(timing.Operation, timing.Method);
        var method = timing.Method;
        var own = new double[1 + method.Slopes.Count];
        own[0] = 1;
        var atCatalogueRate = method.MinutesPerUnit * timing.Factor;
        for (var slope = 0; slope < method.Slopes.Count; slope++)
        {
            var (covariate, reference, exponent) = method.Slopes[slope];
            if (timing.Covariates.TryGetValue(covariate, out var value))
            {
                own[1 + slope] = Math.Log(value / reference);
                atCatalogueRate *= Math.Exp(exponent * own[1 + slope]);
            }
        }

        var effective = (timing.Quantity * Batch.MeanFactor(timing.Batch, method.LearningRate))
            + (((method.Setup.Minutes * timing.Setups) + (timing.Besides.Minutes / (1 + method.Rest))) / atCatalogueRate);
        return new(Math.Log(effective * timing.Factor), block, own, terms.CommonOf(method.PaceGroup, worker), RatePrior.Noise(method));
    }

    /// <summary>The row with a time that was taken, in units of its noise.</summary>
    /// <param name="took">The time.</param>
    /// <param name="weight">How much it counts.</param>
    public RegressionRow With(WorkTime took, double weight) => new(
        Block,
        [.. Own.Select(figure => figure / Noise)],
        [.. Common.Select(figure => figure / Noise)],
        (Math.Log(took.Minutes) - Offset) / Noise,
        weight);
}
