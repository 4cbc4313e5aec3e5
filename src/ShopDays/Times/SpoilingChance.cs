using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>
/// The chance that a piece, cut or joint is spoiled in an operation by a method: what the catalogue says counts as
/// <see cref="PriorPieces"/> pieces, and the log's own pieces are added to them.
/// </summary>
/// <param name="Operation">The operation.</param>
/// <param name="Method">The method.</param>
/// <param name="Pieces">Pieces in the log, each by its age; 0 or more.</param>
/// <param name="Spoiled">How many of them were spoiled, each by its age; 0 up to that.</param>
/// <remarks>
/// The conjugate pair of beta and binomial: Gelman et al., Bayesian Data Analysis, 3rd ed. (2013), section 2.4, from memory. How
/// much the catalogue counts is our choice.
/// </remarks>
public sealed record SpoilingChance(Operation Operation, Method Method, double Pieces, double Spoiled)
{
    /// <summary>So many pieces the catalogue's word counts as much as.</summary>
    public const double PriorPieces = 50;

    /// <summary>The chance before anything was logged, 0 up to 1.</summary>
    public double Prior => Method.SpoilChance;

    /// <summary>The chance as it is believed now: the mean, 0 up to 1.</summary>
    public double Mean => Alpha / (Alpha + Beta);

    /// <summary>The chance that is believed not to be passed with a share of certainty.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    public double At(double share) => Alpha == 0 ? 0 : MathNet.Numerics.Distributions.Beta.InvCDF(Alpha, Beta, share);

    /// <summary>First parameter of the beta distribution; 0 where nothing is ever spoiled.</summary>
    internal double Alpha => (Prior * PriorPieces) + Spoiled;

    /// <summary>Its second parameter, above 0.</summary>
    internal double Beta => ((1 - Prior) * PriorPieces) + Math.Max(0, Pieces - Spoiled);

    /// <summary>
    /// The chances that no more than 0, 1, 2 and so on of some pieces are spoiled, the chance itself being uncertain: the
    /// beta-binomial distribution, up to where it is as good as 1.
    /// </summary>
    /// <param name="pieces">How many, 1 or more.</param>
    internal double[] AtMost(int pieces)
    {
        const double AsGoodAsOne = 1 - 1e-12;
        var chance = 1.0;
        for (var piece = 0; piece < pieces; piece++)
        {
            chance *= (Beta + piece) / (Alpha + Beta + piece);
        }

        var sums = new List<double> { chance };
        for (var spoiled = 0; spoiled < pieces && sums[^1] < AsGoodAsOne; spoiled++)
        {
            chance *= (pieces - spoiled) * (Alpha + spoiled) / ((spoiled + 1) * (Beta + pieces - spoiled - 1));
            sums.Add(sums[^1] + chance);
        }

        return [.. sums];
    }
}
