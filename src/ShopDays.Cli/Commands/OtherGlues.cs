using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>
/// Glues that a job could take instead of its own: the one that holds soonest, and where the shop's nights slow or forbid its
/// own the one that bears most cold. None leaves less time to close the joints in.
/// </summary>
internal static class OtherGlues
{
    /// <summary>Less than this many times as long is not worth another glue.</summary>
    private const double Slow = 1.05;

    /// <summary>What could be taken.</summary>
    /// <param name="read">The shop and the job.</param>
    /// <returns>A glue of the job, that which could be taken instead, and the glue-ups that it holds.</returns>
    public static IEnumerable<(Adhesive Own, Adhesive Other, IReadOnlyList<string> GlueUps)> Of(ShopAndJob read)
    {
        foreach (var same in read.Job.GlueUps.GroupBy(one => one.Adhesive, StringComparer.Ordinal))
        {
            if (!read.Waits.TryFindAdhesive(same.Key, out var own))
            {
                continue;
            }

            List<Adhesive> roomy = [.. read.Waits.Adhesives.Where(other => other.Name != own.Name && other.AssemblyTime >= own.AssemblyTime)];
            var soonest = roomy.Where(other => Holds(other) < Holds(own) || (Holds(other) == Holds(own) && other.ClampTime < own.ClampTime))
                .OrderBy(Holds).ThenBy(other => other.ClampTime).FirstOrDefault();
            var hardiest = IsColdFor(own, read)
                ? roomy.Where(other => other.LeastTemperature < own.LeastTemperature).OrderBy(other => other.LeastTemperature).ThenBy(Holds).FirstOrDefault()
                : null;
            foreach (var other in ((Adhesive?[])[soonest, hardiest]).OfType<Adhesive>().Distinct())
            {
                yield return (own, other, [.. same.Select(one => one.Name)]);
            }
        }
    }

    private static Duration Holds(Adhesive glue) => Duration.Max(glue.UntilWorked, glue.ClampTime);

    private static bool IsColdFor(Adhesive glue, ShopAndJob read) => read.Shop.Limits.Nights is { } nights
        && Setting.Of(glue, read.Waits, nights) is var setting
        && (setting.BarredMonths.Count > 0 || Parts.ShopNights.AllMonths.Max(setting.FactorIn) >= Slow);
}
