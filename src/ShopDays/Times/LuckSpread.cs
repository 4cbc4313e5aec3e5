using MathNet.Numerics.Distributions;

namespace ShopDays.Times;

/// <summary>How the luck of one task is spread: partly as believed, a Student, partly as the times of like work were off.</summary>
internal sealed class LuckSpread
{
    /// <summary>The believed spread weighs as much as so many like times.</summary>
    private const double Believed = 10;

    /// <summary>Where a density is wanted, a past time speaks for its neighbours too: standard deviation of what it is smeared by.</summary>
    private const double Smear = 0.1;

    private readonly double[] offs;
    private readonly double[] sums;
    private readonly double degrees;

    /// <summary>Mixes.</summary>
    /// <param name="like">What like times were off by, and how much each counts.</param>
    /// <param name="degrees">Degrees of freedom of the Student.</param>
    public LuckSpread(IEnumerable<(double Off, double Weight)> like, double degrees)
        : this([.. like.OrderBy(one => one.Off)], degrees)
    {
    }

    /// <summary>Mixes.</summary>
    /// <param name="offs">What like times were off by, from the least on; kept, not copied.</param>
    /// <param name="weights">How much each counts.</param>
    /// <param name="degrees">Degrees of freedom of the Student.</param>
    public LuckSpread(double[] offs, ReadOnlySpan<double> weights, double degrees)
    {
        this.degrees = degrees;
        this.offs = offs;
        sums = new double[offs.Length];
        var sum = 0.0;
        for (var at = 0; at < sums.Length; at++)
        {
            sum += weights[at];
            sums[at] = sum;
        }
    }

    private LuckSpread((double Off, double Weight)[] sorted, double degrees)
        : this([.. sorted.Select(one => one.Off)], [.. sorted.Select(one => one.Weight)], degrees)
    {
    }

    /// <summary>The share that speaks out of the log, 0 to 1.</summary>
    public double ShareOfLog => Logged / (Logged + Believed);

    private double Logged => sums.Length == 0 ? 0 : sums[^1];

    /// <summary>The chance of being off by that much or less.</summary>
    public double ShareBelow(double off)
    {
        var at = FirstAbove(off);
        return ((at == 0 ? 0 : sums[at - 1]) + (Believed * StudentT.CDF(0, 1, degrees, off))) / (Logged + Believed);
    }

    /// <summary>The least off that is not passed with a chance of that share.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    public double At(double share)
    {
        var wanted = share * (Logged + Believed);
        var (low, high) = (0, offs.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (sums[middle] + (Believed * StudentT.CDF(0, 1, degrees, offs[middle])) >= wanted)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        // Either the share is passed between two past times, where only the believed spread rises, or at the later of them.
        var below = low == 0 ? 0 : sums[low - 1];
        var between = (wanted - below) / Believed;
        if (between >= 1)
        {
            return offs[low];
        }

        var off = StudentT.InvCDF(0, 1, degrees, between);
        return low < offs.Length ? Math.Min(off, offs[low]) : off;
    }

    /// <summary>ln of the density at that off, past times smeared a little.</summary>
    public double LogDensity(double off)
    {
        var density = Believed * StudentT.PDF(0, 1, degrees, off);
        for (var at = 0; at < offs.Length; at++)
        {
            density += (sums[at] - (at == 0 ? 0 : sums[at - 1])) * Normal.PDF(offs[at], Smear, off);
        }

        return Math.Log(density / (Logged + Believed));
    }

    /// <summary>The share of what past times count for that were off by more, 0 to 1.</summary>
    public double ShareOfLogAbove(double off)
    {
        var at = FirstAbove(off);
        return at == 0 ? 1 : 1 - (sums[at - 1] / Logged);
    }

    /// <summary>The spread laid out to be drawn from.</summary>
    public LuckTable Table()
    {
        var weights = new double[sums.Length];
        for (var at = 0; at < sums.Length; at++)
        {
            weights[at] = sums[at] - (at == 0 ? 0 : sums[at - 1]);
        }

        return new(offs, weights, Believed);
    }

    /// <summary>One of the past times, as often as it counts.</summary>
    /// <param name="share">Where among them, 0 up to 1.</param>
    public double OfLog(double share)
    {
        var at = Array.BinarySearch(sums, share * Logged);
        return offs[Math.Min(at < 0 ? ~at : at, offs.Length - 1)];
    }

    private int FirstAbove(double off)
    {
        var at = Array.BinarySearch(offs, off);
        at = at < 0 ? ~at : at + 1;
        while (at < offs.Length && offs[at] <= off)
        {
            at++;
        }

        return at;
    }
}
