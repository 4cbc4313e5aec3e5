using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>
/// Makes the keys of a new draft from those of two: all of the one, but within a stretch of its time the blocks follow one
/// another as they do in the other. Now and then some blocks trade places.
/// </summary>
/// <remarks>
/// The two-point crossover of start times of D. Debels and M. Vanhoucke's bi-population genetic algorithm (2005, from
/// memory); how long the stretch is and how often blocks trade places was found by trial on the published problems.
/// </remarks>
internal sealed class KeyCrossing(ScheduleProblem problem, Random draws)
{
    /// <summary>The shortest and the longest stretch, as shares of the whole time.</summary>
    private const double Shortest = 0.1, Longest = 0.6;

    /// <summary>More than any key.</summary>
    private const long Part = 1L << 32;

    /// <summary>
    /// How likely another trade is, each time: with few blocks a little over half, so that small populations do not run dry;
    /// with many two in five, so that most drafts are as the crossing made them. Found by trial.
    /// </summary>
    private readonly double anotherTrade = Math.Min(0.55, 0.25 + (16.0 / Math.Max(1, problem.Blocks)));

    private readonly int[] setups = [.. Enumerable.Range(0, problem.Blocks).Select(block => problem.Tasks[problem.Members(block)[0]].SetupKey)];

    /// <summary>Writes the keys.</summary>
    /// <param name="one">The keys that are kept outside the stretch.</param>
    /// <param name="other">The keys that order what lies in it.</param>
    /// <param name="into">Receives the new keys.</param>
    public void Cross(ReadOnlySpan<int> one, ReadOnlySpan<int> other, Span<long> into)
    {
        var whole = 0;
        foreach (var key in one)
        {
            whole = Math.Max(whole, key);
        }

        var length = (int)(whole * (Shortest + ((Longest - Shortest) * draws.NextDouble())));
        var from = draws.Next(whole - length + 1);
        var to = from + length;
        for (var block = 0; block < one.Length; block++)
        {
            var key = one[block];
            into[block] = key < from ? key : key > to ? key + (2 * Part) : other[block] + Part;
        }

        while (draws.NextDouble() < anotherTrade)
        {
            Trade(into);
        }
    }

    /// <summary>Two blocks trade places; or one goes next to a block of like work, where there is work of several kinds.</summary>
    private void Trade(Span<long> keys)
    {
        var (one, other) = (draws.Next(keys.Length), draws.Next(keys.Length));
        if (setups[one] >= 0 && setups[one] == setups[other])
        {
            keys[one] = keys[other];
        }
        else
        {
            (keys[one], keys[other]) = (keys[other], keys[one]);
        }
    }
}
