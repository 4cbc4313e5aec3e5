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
}
