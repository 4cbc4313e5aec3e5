using ShopDays.Parts;

namespace ShopDays.Times;

/// <summary>The distribution behind a maker's own guess.</summary>
internal static class GuessedTime
{
    /// <summary>
    /// Minutes at a normal deviate: log-normal on either side of the likely time, so that low and high are passed one
    /// time in ten each. Our choice: a guess has no negative time and may be lopsided.
    /// </summary>
    public static double Minutes(TimeGuess guess, double deviate) => guess.Likely.Minutes * Math.Exp(GuessSides.Of(guess).LogAt(deviate));

    /// <summary>Minutes left, above zero, at a deviate, of work that has taken some minutes already; 0 for none, of which all is left.</summary>
    public static double Left(TimeGuess guess, double spent, double deviate) =>
        spent > 0 ? LeftOfBegun(guess, spent, deviate) : Minutes(guess, deviate);

    private static double LeftOfBegun(TimeGuess guess, double spent, double deviate) =>
        TimeLeft.Minutes(least => Minutes(guess, TimeLeft.Beyond(deviate, least)), spent, DeviateOf(guess, spent));

    /// <summary>The deviate of so many minutes, above 0; infinite where the guess allows no such time.</summary>
    private static double DeviateOf(TimeGuess guess, double minutes) => GuessSides.Of(guess).DeviateAt(Math.Log(minutes / guess.Likely.Minutes));
}
