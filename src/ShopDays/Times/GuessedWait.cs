using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Times;

/// <summary>The distribution behind a guess of a wait for somebody else: that of a guessed time, over the clock's minutes.</summary>
internal static class GuessedWait
{
    /// <summary>Minutes at a normal deviate.</summary>
    public static double Minutes(WaitGuess guess, double deviate) => guess.Likely <= Duration.Zero ? 0 : GuessedTime.Minutes(ByTheClock(guess), deviate);

    /// <summary>Minutes left at a deviate when so much has gone by and it has not come.</summary>
    /// <param name="guess">The guess of the whole.</param>
    /// <param name="gone">How long it has been waited for; zero or more.</param>
    /// <param name="deviate">A normal deviate: 0 gives what is as likely passed as not.</param>
    public static double Left(WaitGuess guess, Duration gone, double deviate) =>
        guess.Likely <= Duration.Zero ? gone > Duration.Zero ? TimeLeft.LeastMinutes : 0 : GuessedTime.Left(ByTheClock(guess), gone.TotalMinutes, deviate);

    // A guess that reaches down to nothing would have no logarithm.
    private static TimeGuess ByTheClock(WaitGuess guess) => new(
        WorkTime.FromMinutes(Math.Min(Math.Max(1, guess.Low.TotalMinutes), guess.Likely.TotalMinutes)),
        WorkTime.FromMinutes(guess.Likely.TotalMinutes),
        WorkTime.FromMinutes(guess.High.TotalMinutes));
}
