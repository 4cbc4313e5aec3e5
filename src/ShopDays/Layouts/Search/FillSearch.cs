namespace ShopDays.Layouts.Search;

/// <summary>The ways to fill one stick that holds a given length, of the lengths that are still to be had.</summary>
/// <param name="sizes">The lengths, each once, longest first.</param>
/// <param name="counts">How many of each are to be had; as before when a search is over.</param>
/// <param name="spare">How much of the stick may be lost.</param>
/// <param name="most">How many ways are looked for.</param>
internal sealed class FillSearch(long[] sizes, int[] counts, long spare, int most)
{
    /// <summary>Where little fits, a stick may be filled in more ways than anybody could look at.</summary>
    private const int MostSteps = 20_000;

    private readonly long shortest = sizes[Array.FindLastIndex(counts, count => count > 0)];
    private readonly Stack<int> taken = [];
    private List<(int[] Sizes, long Loss)>? kept;
    private int found;
    private int steps;
    private int turn;

    /// <summary>In how many ways, up to the most.</summary>
    public int Count(int size, long stick)
    {
        Begin(size, stick);
        return found;
    }

    /// <summary>The ways, up to the most, each as places in the list of sizes; begun somewhere by chance.</summary>
    public IReadOnlyList<(int[] Sizes, long Loss)> All(int size, long stick, Random random)
    {
        kept = [];
        turn = random.Next(sizes.Length);
        Begin(size, stick);
        return kept;
    }

    private void Begin(int size, long stick)
    {
        Take(size);
        var left = stick - sizes[size];
        if (left <= spare)
        {
            Keep(left);
        }

        // Turned by chance, so that not always the same fills are found when there are more than are looked for.
        Go(turn, sizes.Length, left);
        Go(0, turn, left);
        Untake();
    }

    private void Go(int from, int to, long left)
    {
        for (var size = FirstThatFits(from, left); size < to && found < most && steps < MostSteps; size++)
        {
            steps++;
            var after = left - sizes[size];
            if (after > spare && left < 2 * shortest)
            {
                return;
            }

            if (counts[size] == 0 || (after > spare && after < shortest))
            {
                continue;
            }

            Take(size);
            if (after <= spare)
            {
                Keep(after);
            }

            if (after >= shortest)
            {
                Go(size, sizes.Length, after);
            }

            Untake();
        }
    }

    private int FirstThatFits(int from, long left)
    {
        var (low, high) = (from, sizes.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (sizes[middle] <= left)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return low;
    }

    private void Keep(long loss)
    {
        found++;
        kept?.Add(([.. taken], loss));
    }

    private void Take(int size)
    {
        counts[size]--;
        taken.Push(size);
    }

    private void Untake() => counts[taken.Pop()]++;
}
