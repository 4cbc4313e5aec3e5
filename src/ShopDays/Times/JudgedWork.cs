using ShopDays.Logbook;

namespace ShopDays.Times;

/// <summary>A time of the log beside what all the other times would have made one expect of it.</summary>
/// <param name="Work">The work and how long it took.</param>
/// <param name="Expected">What would have been believed of it without it.</param>
/// <param name="IsHeldOut">Whether it is so far out that nothing is learned from it until the maker has been asked.</param>
public sealed record JudgedWork(TimedWork Work, TimeBelief Expected, bool IsHeldOut)
{
    /// <summary>Shares of what is expected between which a time is believed unasked: of 500 good ones, one lies outside by chance.</summary>
    private const double Oddity = 0.001;

    /// <summary>With fewer other times than this the log cannot yet tell an odd time from a maker unlike the catalogue.</summary>
    private const int Few = 5;

    /// <summary>While there are few times, only one that is so many times off is a slip of the pencil rather than a pace.</summary>
    private const double AbsurdFactor = 10;

    /// <summary>The share of what was expected that is shorter than what it took, 0 to 1: evenly spread when ranges are honest.</summary>
    public double Place { get; } = Expected.ShareBelow(Work.Took);

    /// <summary>What it took over what was as likely as not.</summary>
    public double Factor => Work.Took / Expected.Median;

    /// <summary>Whether it lies inside the central range of that coverage.</summary>
    /// <param name="coverage">Above 0 and below 1; 0.8 is the range from one in ten to nine in ten.</param>
    public bool IsInside(double coverage) => Math.Abs(Place - 0.5) <= coverage / 2;

    /// <summary>Whether it must be asked about.</summary>
    /// <param name="others">How many other times there are.</param>
    internal bool IsOdd(int others) => !Work.IsKept && (others < Few
        ? Math.Abs(Math.Log(Factor)) >= Math.Log(AbsurdFactor)
        : Place is < Oddity or > 1 - Oddity);
}
