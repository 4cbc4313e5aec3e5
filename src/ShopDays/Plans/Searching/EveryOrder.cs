using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>All orders of a problem's blocks in which nothing comes before what it depends on: for the last few tasks of a job they can all be tried.</summary>
internal static class EveryOrder
{
    /// <summary>With more blocks than these they are not counted: even in rows that leave little choice there are too many.</summary>
    private const int MostBlocks = 16;

    /// <summary>Whether there are at most some of them.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="most">How many, 0 or more.</param>
    public static bool IsWithin(ScheduleProblem problem, int most)
    {
        if (problem.Blocks > MostBlocks)
        {
            return false;
        }

        // Those of a set of blocks are those of the set without each block that can be its last; a block is known by its bit.
        var before = Enumerable.Range(0, problem.Blocks).Select(block => BitsOf(problem.BlocksBefore(block))).ToArray();
        var orders = new long[1 << problem.Blocks];
        orders[0] = 1;
        for (var placed = 0; placed < orders.Length; placed++)
        {
            for (var block = 0; block < before.Length && orders[placed] > 0; block++)
            {
                if ((placed & (1 << block)) == 0 && (before[block] & ~placed) == 0)
                {
                    orders[placed | (1 << block)] += orders[placed];
                }
            }
        }

        return orders[^1] <= most;
    }

    /// <summary>Each of them, in the same buffer.</summary>
    public static IEnumerable<int[]> Of(ScheduleProblem problem)
    {
        var before = Enumerable.Range(0, problem.Blocks).Select(block => BitsOf(problem.BlocksBefore(block))).ToArray();
        var order = new int[problem.Blocks];
        return From(0, 0);

        IEnumerable<int[]> From(int place, int placed)
        {
            if (place == order.Length)
            {
                yield return order;
                yield break;
            }

            for (var block = 0; block < before.Length; block++)
            {
                if ((placed & (1 << block)) != 0 || (before[block] & ~placed) != 0)
                {
                    continue;
                }

                order[place] = block;
                foreach (var whole in From(place + 1, placed | (1 << block)))
                {
                    yield return whole;
                }
            }
        }
    }

    private static int BitsOf(ReadOnlySpan<int> blocks)
    {
        var bits = 0;
        foreach (var block in blocks)
        {
            bits |= 1 << block;
        }

        return bits;
    }
}
