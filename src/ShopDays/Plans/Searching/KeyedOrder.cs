using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>Turns keys of blocks into an order of work: the least key first, but each block after those that it depends on.</summary>
internal sealed class KeyedOrder(ScheduleProblem problem)
{
    private const int BlockBits = 20;
    private const long BlockMask = (1L << BlockBits) - 1;

    private readonly long[] sorted = new long[problem.Blocks];
    private readonly int[] waitsFor = new int[problem.Blocks];
    private readonly PriorityQueue<int, long> ready = new(problem.Blocks);

    /// <summary>Writes the order; of equal keys the lower number goes first, which is an order of work.</summary>
    /// <param name="keys">A key for each block, from 0 to 2^43.</param>
    /// <param name="order">Receives every block once.</param>
    public void Write(ReadOnlySpan<long> keys, Span<int> order)
    {
        for (var block = 0; block < sorted.Length; block++)
        {
            sorted[block] = (keys[block] << BlockBits) | (long)block;
        }

        sorted.AsSpan().Sort();
        for (var place = 0; place < sorted.Length; place++)
        {
            order[place] = (int)(sorted[place] & BlockMask);
        }

        if (!IsOrderOfWork(order))
        {
            WriteByTurns(keys, order);
        }
    }

    private bool IsOrderOfWork(ReadOnlySpan<int> order)
    {
        Array.Clear(waitsFor);
        foreach (var block in order)
        {
            foreach (var before in problem.BlocksBefore(block))
            {
                if (waitsFor[before] == 0)
                {
                    return false;
                }
            }

            waitsFor[block] = 1;
        }

        return true;
    }

    private void WriteByTurns(ReadOnlySpan<long> keys, Span<int> order)
    {
        for (var block = 0; block < waitsFor.Length; block++)
        {
            waitsFor[block] = problem.BlocksBefore(block).Length;
            if (waitsFor[block] == 0)
            {
                ready.Enqueue(block, (keys[block] << BlockBits) | (long)block);
            }
        }

        for (var place = 0; ready.TryDequeue(out var block, out _); place++)
        {
            order[place] = block;
            foreach (var after in problem.BlocksAfter(block))
            {
                if (--waitsFor[after] == 0)
                {
                    ready.Enqueue(after, (keys[after] << BlockBits) | (long)after);
                }
            }
        }
    }
}
