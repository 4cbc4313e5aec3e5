using MathNet.Numerics.Distributions;

namespace ShopDays.Times;

/// <summary>What the times of a log say of the ranges that they were expected in.</summary>
public enum Trust
{
    /// <summary>There are too few times to say anything.</summary>
    TooFewToTell,

    /// <summary>As many lie inside as should, give or take what chance explains.</summary>
    AsWide,

    /// <summary>More lie outside than chance explains.</summary>
    TooNarrow,

    /// <summary>More lie inside than chance explains.</summary>
    TooWide,
}

/// <summary>Judges how many times lay inside their ranges.</summary>
public static class Trusted
{
    /// <summary>With fewer times than this nothing is said, whatever chance would allow.</summary>
    public const int Least = 10;

    /// <summary>The chance, on either side, of a false alarm: one honest log in twenty is called dishonest, half of them each way.</summary>
    private const double FalseAlarm = 0.025;

    /// <summary>Judges by the binomial: so many of so many, each inside with the share that the range promises.</summary>
    /// <param name="coverage">How many were inside, and the share that should be.</param>
    /// <param name="times">How many there are.</param>
    public static Trust Of(Coverage coverage, int times) => times switch
    {
        < Least => Trust.TooFewToTell,
        _ when Binomial.CDF(coverage.Share, times, coverage.Inside) < FalseAlarm => Trust.TooNarrow,
        _ when coverage.Inside > 0 && 1 - Binomial.CDF(coverage.Share, times, coverage.Inside - 1) < FalseAlarm => Trust.TooWide,
        _ => Trust.AsWide,
    };
}
