namespace ShopDays.Times;

/// <summary>
/// The chance in one trial: a stream that a seed and the trial's number settle, so that trials need not be drawn one after
/// another.
/// </summary>
/// <remarks>
/// The bits are those of SplitMix64 (G. L. Steele, D. Lea and C. H. Flood, "Fast splittable pseudorandom number generators",
/// 2014). It begins at a mix of seed and number. All streams are stretches of one cycle of 2^64: that any two of ten thousand
/// that are a thousand long meet has a chance of about 1 in 10^8.
/// </remarks>
internal sealed class ChanceStream
{
    private const ulong Step = 0x9E3779B97F4A7C15;

    /// <summary>2 to the power of -53: the spacing of shares.</summary>
    private const double Grain = 1.0 / (1UL << 53);

    /// <summary>Of a draw's 64 bits the lowest 8 choose the strip, the next the sign, the highest 53 the place.</summary>
    private const int SignBit = 8;

    private ulong state;

    /// <summary>Begins the stream of a trial.</summary>
    /// <param name="seed">The seed of all trials.</param>
    /// <param name="trial">Its number.</param>
    public ChanceStream(int seed, int trial)
    {
        state = BeginningOf(seed, trial);
    }

    /// <summary>The first share of the stream of a trial, where most streams are looked at once and no more.</summary>
    /// <param name="seed">The seed of all trials.</param>
    /// <param name="trial">Its number.</param>
    public static double FirstShare(int seed, int trial)
    {
        unchecked
        {
            return ShareOf(Mix(BeginningOf(seed, trial) + Step));
        }
    }

    /// <summary>64 bits.</summary>
    public ulong NextBits()
    {
        unchecked
        {
            state += Step;
            return Mix(state);
        }
    }

    /// <summary>A share, all alike likely: 0 included, 1 not.</summary>
    public double NextShare() => ShareOf(NextBits());

    /// <summary>A standard normal, exact but for the grain of shares.</summary>
    /// <remarks>The ziggurat: see <see cref="NormalStrips"/>. Strip, sign and place are told by bits of their own (J. A. Doornik, 2005).</remarks>
    public double NextNormal()
    {
        while (true)
        {
            var bits = NextBits();
            var strip = (int)(bits & (NormalStrips.Count - 1));
            var distance = ShareOf(bits) * NormalStrips.Ends[strip];
            if (distance < NormalStrips.Ends[strip + 1] || IsUnderCurve(strip, ref distance))
            {
                return BitConverter.UInt64BitsToDouble(BitConverter.DoubleToUInt64Bits(distance) | ((bits >> SignBit & 1) << 63));
            }
        }
    }

    /// <summary>Fills with standard normals.</summary>
    public void FillWithNormals(Span<double> into)
    {
        foreach (ref var one in into)
        {
            one = NextNormal();
        }
    }

    /// <summary>Fills with shares.</summary>
    public void FillWithShares(Span<double> into)
    {
        foreach (ref var one in into)
        {
            one = NextShare();
        }
    }

    /// <summary>A gamma of scale 1.</summary>
    /// <param name="shape">The shape, at least 1.</param>
    /// <remarks>G. Marsaglia and W. W. Tsang, "A simple method for generating gamma variables", 2000.</remarks>
    public double NextGamma(double shape)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(shape, 1);
        var third = shape - (1.0 / 3);
        var slope = 1 / Math.Sqrt(9 * third);
        while (true)
        {
            var normal = NextNormal();
            var root = 1 + (slope * normal);
            var cube = root * root * root;
            if (cube > 0 && Math.Log(1 - NextShare()) < (normal * normal / 2) + third - (third * cube) + (third * Math.Log(cube)))
            {
                return third * cube;
            }
        }
    }

    private static double ShareOf(ulong bits)
    {
        unchecked
        {
            return (long)(bits >> 11) * Grain;
        }
    }

    private static ulong BeginningOf(int seed, int trial)
    {
        unchecked
        {
            return Mix(Mix((ulong)seed + Step) + (ulong)trial);
        }
    }

    private static ulong Mix(ulong bits)
    {
        unchecked
        {
            bits = (bits ^ (bits >> 30)) * 0xBF58476D1CE4E5B9;
            bits = (bits ^ (bits >> 27)) * 0x94D049BB133111EB;
            return bits ^ (bits >> 31);
        }
    }

    /// <summary>Settles the one draw in a hundred that does not lie clear of the curve.</summary>
    private bool IsUnderCurve(int strip, ref double distance)
    {
        if (strip > 0)
        {
            var (low, high) = (NormalStrips.Heights[strip], NormalStrips.Heights[strip + 1]);
            return low + (NextShare() * (high - low)) < Math.Exp(-distance * distance / 2);
        }

        // The tail beyond the last strip (G. Marsaglia, 1964).
        while (true)
        {
            var beyond = -Math.Log(1 - NextShare()) / NormalStrips.Tail;
            if (-2 * Math.Log(1 - NextShare()) > beyond * beyond)
            {
                distance = NormalStrips.Tail + beyond;
                return true;
            }
        }
    }
}
