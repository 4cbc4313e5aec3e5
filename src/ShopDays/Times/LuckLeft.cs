using MathNet.Numerics.Distributions;

namespace ShopDays.Times;

/// <summary>The luck in one course of a task that is begun.</summary>
/// <param name="Spread">How it is spread.</param>
/// <param name="Usual">The noise scale as it usually is.</param>
/// <param name="Scale">The noise scale of this course.</param>
/// <param name="Deviate">A standard normal.</param>
/// <param name="Share">Which of the words about it is heard, 0 up to 1.</param>
internal readonly record struct LuckLeft(LuckSpread Spread, double Usual, double Scale, double Deviate, double Share)
{
    /// <summary>
    /// The luck beyond a least one, which the time spent has used up. What is believed is as great as this course's scale;
    /// what the log was off by is told in the usual one.
    /// </summary>
    public double Beyond(double least)
    {
        if (Spread.ShareOfLog == 0)
        {
            return Scale * TimeLeft.Beyond(Deviate, least / Scale);
        }

        var above = Spread.ShareOfLogAbove(least / Usual);
        var logged = Spread.ShareOfLog * above;
        var believed = (1 - Spread.ShareOfLog) * Normal.CDF(0, 1, -least / Scale);
        var share = Share * (logged + believed);
        return share < logged
            ? Usual * Spread.OfLog(1 - above + (share / Spread.ShareOfLog))
            : Scale * TimeLeft.Beyond(Deviate, least / Scale);
    }
}
