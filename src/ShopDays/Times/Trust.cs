using MathNet.Numerics.Distributions;

namespace ShopDays.Times;

/// <summary>What the times of a log say of the ranges that they were expected in.</summary>
public enum Trust
{
    /// <summary>There are too few times to say anything.</summary>
    TooFewToTell,

    /// <summary>No more are off than chance explains, but ranges that hold far too little would not have shown themselves either.</summary>
    NothingAgainst,

    /// <summary>As many lie inside as should, give or take what chance explains, and ranges that hold far too little are ruled out.</summary>
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

    /// <summary>A share this near to what was promised is as good, however many times prove that it is not the same.</summary>
    private const double NearEnough = 0.03;

    /// <summary>Ranges that hold so much less than they promise would mislead; they are to be ruled out before ranges are vouched for.</summary>
    private const double FarTooLittle = 0.2;

    /// <summary>Judges by the binomial: so many of so many, each inside with the share that the range promises.</summary>
    /// <param name="coverage">How many were inside, and the share that should be.</param>
    /// <param name="times">How many there are.</param>
    public static Trust Of(Coverage coverage, int times)
    {
        var off = ((double)coverage.Inside / times) - coverage.Share;
        return times switch
        {
            < Least => Trust.TooFewToTell,
            _ when off < -NearEnough && Binomial.CDF(coverage.Share, times, coverage.Inside) < FalseAlarm => Trust.TooNarrow,
            _ when off > NearEnough && ChanceOfSoMany(coverage.Share) < FalseAlarm => Trust.TooWide,
            _ when ChanceOfSoMany(coverage.Share - FarTooLittle) < FalseAlarm => Trust.AsWide,
            _ => Trust.NothingAgainst,
        };

        double ChanceOfSoMany(double share) => coverage.Inside == 0 ? 1 : 1 - Binomial.CDF(share, times, coverage.Inside - 1);
    }
}
