using ShopDays.Parts;

namespace ShopDays.Times;

/// <summary>The two sides of a maker's own guess: ln of time over the likely time for each standard normal.</summary>
/// <param name="Below">Where it goes quicker than likely.</param>
/// <param name="Above">Where it goes slower.</param>
internal readonly record struct GuessSides(double Below, double Above)
{
    /// <summary>The sides of a guess: low and high are passed one time in ten each.</summary>
    public static GuessSides Of(TimeGuess guess) => new(
        Math.Log(guess.Likely / guess.Low) / TimeRange.NinetiethDeviate,
        Math.Log(guess.High / guess.Likely) / TimeRange.NinetiethDeviate);

    /// <summary>ln of time over the likely time.</summary>
    public double LogAt(double deviate) => deviate * (deviate < 0 ? Below : Above);

    /// <summary>The deviate of a time; infinite or not a number where the guess allows no such time.</summary>
    public double DeviateAt(double log) => log == 0 ? 0 : log / (log < 0 ? Below : Above);
}
