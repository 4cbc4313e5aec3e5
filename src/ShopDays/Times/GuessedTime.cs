using ShopDays.Parts;

namespace ShopDays.Times;

/// <summary>The distribution behind a maker's own guess.</summary>
internal static class GuessedTime
{
    /// <summary>The normal deviate that nine in ten do not exceed.</summary>
    private const double NinetiethDeviate = 1.2815515655446004;

    /// <summary>
    /// Minutes at a normal deviate: log-normal on either side of the likely time, so that low and high are passed one
    /// time in ten each. Our choice: a guess has no negative time and may be lopsided.
    /// </summary>
    public static double Minutes(TimeGuess guess, double deviate)
    {
        var side = deviate < 0 ? guess.Likely / guess.Low : guess.High / guess.Likely;
        return guess.Likely.Minutes * Math.Exp(deviate / NinetiethDeviate * Math.Log(side));
    }
}
