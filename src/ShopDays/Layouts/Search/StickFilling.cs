namespace ShopDays.Layouts.Search;

/// <summary>
/// Lengths out of as few sticks as can be, when nothing else matters: every stick is as long, every length takes a kerf.
/// </summary>
/// <remarks>
/// Whether some number of sticks will do is tried stick by stick: the length which the fewest fills could still take is
/// filled up first, by what is left over least; what leads nowhere is taken back. A fill may lose no more than is to spare
/// over all of the sticks. Bounded by a count of fills; begun anew a few times in other orders, since a bad beginning costs
/// more than a new one.
/// </remarks>
/// <param name="stick">Usable length of a stick and a kerf more.</param>
/// <param name="lengths">The lengths, each with its kerf; none longer than a stick.</param>
/// <param name="random">For the order of fills that are as good.</param>
internal sealed class StickFilling(long stick, IReadOnlyList<long> lengths, Random random)
{
    /// <summary>So many beginnings share what may be tried.</summary>
    private const int Beginnings = 8;

    /// <summary>From so many fills on it does not matter how many there are.</summary>
    private const int Plenty = 8;

    /// <summary>How many fills of one length are tried in turn.</summary>
    private const int MostFills = 60;

    /// <summary>How many fills are tried when some sticks are emptied and filled anew.</summary>
    private const int TriesToRefill = 400;

    private readonly long[] sizes = [.. lengths.Distinct().OrderDescending()];
    private readonly List<(int[] Sizes, long Loss)> chosen = [];
    private List<(int[] Sizes, long Loss)> deepest = [];
    private int[] counts = [];
    private int remaining;
    private int triesLeft;

    /// <summary>No layout needs fewer: by their sum, and since no two longer than half a stick share one.</summary>
    public int LeastSticks => (int)Math.Max((lengths.Sum() + stick - 1) / stick, lengths.Count(length => 2 * length > stick));

    /// <summary>For each stick the numbers of the lengths that come out of it.</summary>
    /// <param name="tries">How many fills may be tried in all.</param>
    /// <param name="most">How many sticks there are; null when even those do not do.</param>
    public IReadOnlyList<IReadOnlyList<int>>? Fill(int tries, int most)
    {
        var plain = Plainly();
        for (var sticks = LeastSticks; sticks < Math.Min(plain.Count, most + 1); sticks++)
        {
            if (FillAfresh(sticks, tries / 2) || Refill(sticks, tries / 2))
            {
                return Numbered();
            }
        }

        return plain.Count <= most ? plain : null;
    }

    /// <summary>Begins anew until it comes out, what may be tried is used up, or it is proven that it never does.</summary>
    private bool FillAfresh(int sticks, int tries)
    {
        deepest = [];
        for (var beginning = 0; beginning < Beginnings; beginning++)
        {
            chosen.Clear();
            counts = [.. sizes.Select(size => lengths.Count(length => length == size))];
            remaining = lengths.Count;
            triesLeft = tries / Beginnings;
            if (Go(sticks, Spare(sticks)))
            {
                return true;
            }

            if (triesLeft > 0)
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>Goes on from the most sticks that could be filled: some are emptied again and filled in other ways.</summary>
    private bool Refill(int sticks, int tries)
    {
        Return();
        var current = deepest;
        foreach (var fill in current)
        {
            Add(fill);
        }

        while (tries > 0)
        {
            var kept = current.Count - Math.Min(current.Count, random.Next(6, 18));
            var shuffled = current.ToArray();
            random.Shuffle(shuffled);
            Return();
            foreach (var fill in shuffled.AsSpan(0, kept))
            {
                Add(fill);
            }

            deepest = [.. chosen];
            triesLeft = TriesToRefill;
            if (Go(sticks - kept, Spare(sticks)))
            {
                return true;
            }

            tries -= TriesToRefill - triesLeft + 1;
            if (deepest.Count >= current.Count)
            {
                current = deepest;
            }
        }

        return false;
    }

    private long Spare(int sticks) => (sticks * stick) - lengths.Sum() - chosen.Sum(fill => fill.Loss);

    /// <summary>The longest first, each into the stick where it leaves least.</summary>
    private List<List<int>> Plainly()
    {
        var sticks = new List<(long Left, List<int> Numbers)>();
        foreach (var number in Enumerable.Range(0, lengths.Count).OrderByDescending(number => lengths[number]))
        {
            var best = -1;
            for (var at = 0; at < sticks.Count; at++)
            {
                if (sticks[at].Left >= lengths[number] && (best < 0 || sticks[at].Left < sticks[best].Left))
                {
                    best = at;
                }
            }

            if (best < 0)
            {
                best = sticks.Count;
                sticks.Add((stick, []));
            }

            sticks[best].Numbers.Add(number);
            sticks[best] = (sticks[best].Left - lengths[number], sticks[best].Numbers);
        }

        return sticks.ConvertAll(one => one.Numbers);
    }

    /// <summary>Fills the sticks that are left; what is chosen stays chosen only when that can be done.</summary>
    private bool Go(int sticks, long spare)
    {
        if (remaining == 0)
        {
            return true;
        }

        if (sticks == 0 || triesLeft <= 0)
        {
            return false;
        }

        var average = spare / sticks;
        foreach (var fill in FillsOf(Hardest(average), spare, average))
        {
            triesLeft--;
            Add(fill);
            if (chosen.Count > deepest.Count)
            {
                deepest = [.. chosen];
            }

            if (Go(sticks - 1, spare - fill.Loss))
            {
                return true;
            }

            RemoveLast();
            if (triesLeft <= 0)
            {
                return false;
            }
        }

        return false;
    }

    private void Add((int[] Sizes, long Loss) fill)
    {
        chosen.Add(fill);
        Take(fill.Sizes, 1);
    }

    private void RemoveLast()
    {
        Take(chosen[^1].Sizes, -1);
        chosen.RemoveAt(chosen.Count - 1);
    }

    private void Return()
    {
        while (chosen.Count > 0)
        {
            RemoveLast();
        }
    }

    private void Take(int[] fill, int times)
    {
        foreach (var size in fill)
        {
            counts[size] -= times;
        }

        remaining -= times * fill.Length;
    }

    /// <summary>The length that the fewest fills could still take, the longest of those.</summary>
    private int Hardest(long spare)
    {
        var hardest = -1;
        var fewest = Plenty + 1;
        for (var size = 0; size < sizes.Length && fewest > 0; size++)
        {
            if (counts[size] > 0)
            {
                var search = new FillSearch(sizes, counts, spare, fewest);
                var fills = search.Count(size, stick);
                if (fills < fewest)
                {
                    (hardest, fewest) = (size, fills);
                }
            }
        }

        return hardest < 0 ? Array.FindIndex(counts, count => count > 0) : hardest;
    }

    /// <summary>The ways to fill a stick with a length in it, those first that lose least, then those with unusual lengths.</summary>
    private List<(int[] Sizes, long Loss)> FillsOf(int size, long spare, long average)
    {
        var found = new FillSearch(sizes, counts, average, MostFills).All(size, stick, random);
        if (found.Count == 0 && spare > average)
        {
            found = new FillSearch(sizes, counts, spare, MostFills).All(size, stick, random);
        }

        return [.. found.OrderBy(fill => fill.Loss).ThenByDescending(Unusual)];
    }

    /// <summary>Lengths far from the others have few that go with them, so they are used while those are there.</summary>
    private double Unusual((int[] Sizes, long Loss) fill) =>
        fill.Sizes.Sum(one => (double)sizes[one] * sizes[one]) * (1 + (0.1 * random.NextDouble()));

    private List<List<int>> Numbered()
    {
        var numbers = Enumerable.Range(0, lengths.Count).GroupBy(number => lengths[number]).ToDictionary(same => same.Key, same => new Queue<int>(same));
        return chosen.ConvertAll(fill => fill.Sizes.Select(size => numbers[sizes[size]].Dequeue()).ToList());
    }
}
