using ShopDays.Times.Regression;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>What is believed of a maker's rates before a single time is logged: the spreads behind the catalogue's figures.</summary>
/// <remarks>
/// The spread of ln(minutes) of a method is ln(high/low)/3.29, since its range holds 90 %. About half of that variance
/// is shared, because a person who is slow at one thing is slow at all: some workers do a third more than others
/// (builders' guides of the 19th century), which makes the standard deviation of ln(pace) about 0.2. The other
/// splits are our choice (common practice, no source).
/// </remarks>
public static class RatePrior
{
    /// <summary>Standard deviation of ln(pace), shared by all operations.</summary>
    public const double PaceSpread = 0.20;

    /// <summary>Standard deviation of ln(pace) of another worker over the maker's: as between any two people.</summary>
    public const double WorkerSpread = PaceSpread * 1.4142135623730951;

    /// <summary>Standard deviation of the pace of a group, shared by its operations.</summary>
    public const double GroupSpread = 0.14;

    /// <summary>Share of a method's variance that changes from task to task: the board, the day, the edge of the iron.</summary>
    public const double NoiseShare = 0.25;

    /// <summary>The least standard deviation of a method's own level.</summary>
    public const double LeastLevelSpread = 0.10;

    /// <summary>Shape of the inverse gamma of the noise scale: worth ten logged times.</summary>
    public const double NoiseShape = 5;

    /// <summary>Scale of the inverse gamma, so that the noise scale is 1 on average.</summary>
    public const double NoiseScale = NoiseShape - 1;

    /// <summary>Standard deviation of ln(minutes) that the range of a method implies.</summary>
    public static double Spread(Method method) => Math.Log(method.HighMinutes / method.LowMinutes) / 3.29;

    /// <summary>Standard deviation of the noise of one task.</summary>
    public static double Noise(Method method) => Math.Sqrt(NoiseShare) * Spread(method);

    /// <summary>Standard deviation of the level of a method: what pace, group and noise leave of its variance.</summary>
    public static double LevelSpread(Method method)
    {
        var spread = Spread(method);
        var left = (spread * spread * (1 - NoiseShare)) - (PaceSpread * PaceSpread) - (GroupSpread * GroupSpread);
        return Math.Sqrt(Math.Max(left, LeastLevelSpread * LeastLevelSpread));
    }

    /// <summary>
    /// Standard deviation of a slope: nine in ten timbers lie within 0.2 of the hardness exponent and within 0.25 of
    /// the others.
    /// </summary>
    public static double SlopeSpread(Slope slope) => slope.Covariate == Covariate.Hardness ? 0.12 : 0.15;

    /// <summary>Centre of the level: ln of the minutes for one unit at the references, rest included.</summary>
    public static double LevelCentre(Method method) => Math.Log(method.MinutesPerUnit * (1 + method.Rest));

    /// <summary>What is believed of the terms that all operations share.</summary>
    /// <param name="terms">The terms.</param>
    /// <param name="pace">How many times wider than usual the pace is spread.</param>
    /// <param name="scatter">How many times wider than usual the rest is spread.</param>
    internal static TermPrior OfCommon(RateTerms terms, double pace = 1, double scatter = 1) => new(
        new double[terms.Common],
        [
            PaceSpread * pace,
            .. Enum.GetValues<PaceGroup>().Select(_ => GroupSpread * scatter),
            .. terms.Others.Select(_ => WorkerSpread * pace),
        ]);

    /// <summary>What is believed of a method's level and slopes.</summary>
    /// <param name="method">The method.</param>
    /// <param name="scatter">How many times wider than usual they are spread.</param>
    internal static TermPrior OfMethod(Method method, double scatter = 1) => new(
        [LevelCentre(method), .. method.Slopes.Select(slope => slope.Exponent)],
        [LevelSpread(method) * scatter, .. method.Slopes.Select(slope => SlopeSpread(slope) * scatter)]);
}
