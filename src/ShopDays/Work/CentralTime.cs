using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>
/// The central time of work by the catalogue alone: what runs and glue-ups are cut to. The estimate with its range,
/// its learning and its batches is made later, by the rate model.
/// </summary>
public static class CentralTime
{
    /// <summary>Minutes: (quantity x rate x slopes x factor + setups) x (1 + rest) + what goes besides.</summary>
    public static WorkTime Of(TaskTiming.ByOperation timing) =>
        ((WorkTime.FromMinutes(timing.Quantity * timing.Method.MinutesPerUnit * SlopeFactor(timing.Method, timing.Covariates) * timing.Factor)
            + (timing.Method.Setup * timing.Setups)) * (1 + timing.Method.Rest)) + timing.Besides;

    /// <summary>The time of a unit over its time at the references: the product of (x / reference) to the power of the exponent.</summary>
    public static double SlopeFactor(Method method, IReadOnlyDictionary<Covariate, double> covariates) => method.Slopes.Aggregate(
        1.0, (factor, slope) => covariates.TryGetValue(slope.Covariate, out var x) ? factor * Math.Pow(x / slope.Reference, slope.Exponent) : factor);
}
