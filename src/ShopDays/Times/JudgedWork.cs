using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Times;

/// <summary>A time of the log beside what all the other times would have made one expect of it.</summary>
public sealed record JudgedWork
{
    /// <summary>The chance on either side of a time that is believed unasked: of 500 good ones, one lies outside.</summary>
    internal const double Oddity = 0.001;

    /// <summary>With fewer other times than this the log cannot yet tell an odd time from a maker unlike the catalogue.</summary>
    private const int Few = 5;

    /// <summary>While there are few times, only one that is so many times off is a slip of the pencil rather than a pace.</summary>
    private const double AbsurdFactor = 10;

    internal JudgedWork(TimedWork work, TimeBelief expected, bool isHeldOut, Luck.Past luck)
    {
        Work = work;
        Expected = expected;
        IsHeldOut = isHeldOut;
        Luck = luck;
    }

    /// <summary>The work and how long it took.</summary>
    public TimedWork Work { get; }

    /// <summary>What would have been believed of it without it, the shop's own luck left aside.</summary>
    public TimeBelief Expected { get; }

    /// <summary>Whether it is so far out that nothing is learned from it until the maker has been asked.</summary>
    public bool IsHeldOut { get; }

    /// <summary>The share of what was expected that is shorter than what it took, 0 to 1: evenly spread when ranges are honest.</summary>
    public double Place => Expected.ShareBelow(Work.Took);

    /// <summary>The range that 998 in 1,000 times lie in, the shop's own luck left aside: inside it a time is believed unasked.</summary>
    public (WorkTime Low, WorkTime High) Credible => (Expected.At(Oddity), Expected.At(1 - Oddity));

    /// <summary>What it took over what was as likely as not.</summary>
    public double Factor => Work.Took / Expected.Median;

    /// <summary>What it says of this shop's luck.</summary>
    internal Luck.Past Luck { get; }

    /// <summary>Whether it must be asked about.</summary>
    /// <param name="others">How many other times there are.</param>
    /// <param name="farOff">How many scales off a time may be and is believed unasked.</param>
    internal bool IsOdd(int others, double farOff) => !Work.IsKept && (others < Few
        ? Math.Abs(Math.Log(Factor)) >= Math.Log(AbsurdFactor)
        : Math.Abs(Luck.Off) > farOff);
}
