namespace ShopDays.Times;

/// <summary>
/// Draws whose word the luck of a task is, one of the log's past times or what is believed, in one look however long the log.
/// </summary>
/// <remarks>
/// Each of as many equal bins as there are words is shared by two at most, so that all together each has its weight: the alias
/// method (A. J. Walker, 1977), laid out as M. D. Vose does ("A linear algorithm for generating random numbers with a given
/// distribution", 1991). Hundreds of these are in use at once, so a bin is kept small.
/// </remarks>
internal sealed class LuckTable
{
    private readonly double[] offs;
    private readonly Bin[] bins;

    /// <summary>Lays out the table.</summary>
    /// <param name="offs">What past times were off by, fewer than 65,535 of them.</param>
    /// <param name="weights">What each counts.</param>
    /// <param name="believed">What the believed spread counts, above 0: the last word.</param>
    public LuckTable(double[] offs, ReadOnlySpan<double> weights, double believed)
    {
        this.offs = offs;
        var words = offs.Length + 1;
        var parts = new double[words];
        weights.CopyTo(parts);
        parts[^1] = believed;
        var mean = parts.Sum() / words;
        bins = new Bin[words];

        // Words lighter than a bin are piled up from the left, heavier ones from the right.
        var piles = new int[words];
        var (light, heavy) = (0, words);
        for (var word = 0; word < words; word++)
        {
            parts[word] /= mean;
            bins[word] = new(uint.MaxValue, (ushort)word, (ushort)word);
            piles[parts[word] < 1 ? light++ : --heavy] = word;
        }

        while (light > 0 && heavy < words)
        {
            var (less, more) = (piles[--light], piles[heavy]);
            bins[less] = new((uint)(parts[less] * uint.MaxValue), (ushort)less, (ushort)more);
            parts[more] -= 1 - parts[less];
            if (parts[more] < 1)
            {
                heavy++;
                piles[light++] = more;
            }
        }
    }

    /// <summary>Which past time's word is heard, as often as it counts; none as often as what is believed speaks.</summary>
    /// <param name="share">0 up to 1.</param>
    /// <param name="off">What that time was off by.</param>
    public bool IsOfLog(double share, out double off)
    {
        var place = share * bins.Length;
        var number = (int)place;
        ref readonly var bin = ref bins[number];
        var word = (place - number) * uint.MaxValue < bin.Share ? bin.Word : bin.Other;
        if (word == offs.Length)
        {
            off = 0;
            return false;
        }

        off = offs[word];
        return true;
    }

    /// <summary>A bin.</summary>
    /// <param name="Share">The part of it that is the first word's, of all that a whole number holds.</param>
    /// <param name="Word">The first word.</param>
    /// <param name="Other">The other word.</param>
    private readonly record struct Bin(uint Share, ushort Word, ushort Other);
}
