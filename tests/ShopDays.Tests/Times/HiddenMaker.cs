using MathNet.Numerics.Distributions;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Tests.Times;

/// <summary>A maker whose true rates are known to the test and to nobody else: drawn from the prior, or set far outside it.</summary>
internal sealed class HiddenMaker
{
    private readonly RateTerms terms;
    private readonly Random random;
    private readonly double[] common;
    private readonly double[][] own;
    private readonly double scale;
    private readonly Kind kind;

    /// <summary>Draws a maker.</summary>
    public HiddenMaker(OperationCatalogue catalogue, Kind kind, int seed)
    {
        this.kind = kind;
        random = new Random(seed);
        terms = new RateTerms(catalogue, []);
        scale = Math.Sqrt(RatePrior.NoiseScale / Gamma.Sample(random, RatePrior.NoiseShape, 1)) * kind.Noise;
        common = Draw(RatePrior.OfCommon(terms).Centre, RatePrior.OfCommon(terms).Spread, 1);
        common[0] += Math.Log(kind.Pace);
        var planing = 1 + Array.IndexOf(Enum.GetValues<PaceGroup>(), PaceGroup.Planing);
        common[planing] += Math.Log(kind.Planing);
        own = [.. terms.Methods.Select(method => RatePrior.OfMethod(method)).Select(prior => Draw(prior.Centre, prior.Spread, kind.Scatter))];

        double[] Draw(double[] centres, double[] spreads, double wider) =>
            [.. centres.Zip(spreads, (centre, spread) => centre + (Normal.Sample(random, 0, 1) * spread * wider * scale / kind.Noise))];
    }

    /// <summary>How long the maker takes this time.</summary>
    public WorkTime Do(TaskTiming.ByOperation task)
    {
        var row = RateRow.Of(task, terms);
        var luck = kind.HasBadDays ? StudentT.Sample(random, 0, 1, 3) : Normal.Sample(random, 0, 1);
        var sum = row.Offset + (row.Noise * scale * luck);
        sum += row.Own.Zip(own[row.Block], (figure, term) => figure * term).Sum();
        sum += row.Common.Zip(common, (figure, term) => figure * term).Sum();
        return WorkTime.FromMinutes(Math.Exp(sum));
    }

    /// <summary>How a maker differs from those that the prior has in mind.</summary>
    /// <param name="Name">In words.</param>
    /// <param name="Pace">Factor on all times.</param>
    /// <param name="Planing">Factor on planing.</param>
    /// <param name="Scatter">How much wider single operations and slopes are scattered.</param>
    /// <param name="Noise">Factor on the luck of single tasks.</param>
    /// <param name="HasBadDays">Whether luck has the heavy tails of a Student with three degrees of freedom.</param>
    public sealed record Kind(string Name, double Pace = 1, double Planing = 1, double Scatter = 1, double Noise = 1, bool HasBadDays = false)
    {
        public static readonly Kind Inside = new("as the prior has them");

        public static readonly IReadOnlyList<Kind> Outside =
        [
            new("three times slower", Pace: 3),
            new("three times faster", Pace: 1.0 / 3),
            new("planing 2.5 times slower", Planing: 2.5),
            new("twice as scattered", Scatter: 2),
            new("twice as unsteady", Noise: 2),
            new("with dreadful days", HasBadDays: true),
        ];
    }
}
