namespace ShopDays.Plans;

/// <summary>
/// Sorts a schedule's blocks by when they end, the last first: the order of work of the mirrored problem. Turned twice,
/// it is that of the beginnings. Buffers are kept, so that it allocates nothing.
/// </summary>
/// <param name="problem">The problem of the schedules that are looked at, the real or the mirrored one.</param>
internal sealed class LateOrder(ScheduleProblem problem)
{
    /// <summary>Up to so many minutes for each block it is quicker to count than to compare.</summary>
    private const int CountedMinutes = 8;

    private readonly int[] ends = new int[problem.Blocks];
    private readonly long[] keys = new long[problem.Blocks];
    private readonly bool hasPairs = problem.Blocks < problem.Tasks.Length;
    private int[] counts = new int[64];

    /// <summary>Writes the blocks, those that end together in the opposite of their former order.</summary>
    /// <param name="schedule">A schedule with every task placed.</param>
    /// <param name="order">The order it was made from.</param>
    /// <param name="numbers">What each block is called in the order that is written.</param>
    /// <param name="into">Receives every block once, each before those it depends on; may not be the order itself.</param>
    public void Write(Schedule schedule, ReadOnlySpan<int> order, ReadOnlySpan<int> numbers, Span<int> into)
    {
        var (first, last) = hasPairs ? EndsOfBlocks(schedule) : EndsOfTasks(schedule);
        if (last - first <= CountedMinutes * order.Length)
        {
            Count(order, numbers, into, first, last);
        }
        else
        {
            Compare(order, numbers, into);
        }
    }

    private (int First, int Last) EndsOfTasks(Schedule schedule)
    {
        var (first, last) = (int.MaxValue, 0);
        var taskEnds = schedule.End;
        for (var block = 0; block < ends.Length; block++)
        {
            var end = taskEnds[problem.OnlyMember(block)];
            ends[block] = end;
            first = Math.Min(first, end);
            last = Math.Max(last, end);
        }

        return (first, last);
    }

    /// <summary>A block ends with its last task, and no earlier than the blocks it depends on: one of their tasks may have nothing to wait for it.</summary>
    private (int First, int Last) EndsOfBlocks(Schedule schedule)
    {
        var (first, last) = (int.MaxValue, 0);
        for (var block = 0; block < ends.Length; block++)
        {
            var end = 0;
            foreach (var task in problem.Members(block))
            {
                end = Math.Max(end, schedule.End[task]);
            }

            foreach (var before in problem.BlocksBefore(block))
            {
                end = Math.Max(end, ends[before]);
            }

            ends[block] = end;
            first = Math.Min(first, end);
            last = Math.Max(last, end);
        }

        return (first, last);
    }

    private void Count(ReadOnlySpan<int> order, ReadOnlySpan<int> numbers, Span<int> into, int first, int last)
    {
        var length = last - first + 2;
        if (counts.Length < length)
        {
            counts = new int[2 * length];
        }

        var places = counts.AsSpan(0, length);
        places.Clear();
        foreach (var end in ends)
        {
            places[last - end + 1]++;
        }

        for (var minute = 1; minute < length; minute++)
        {
            places[minute] += places[minute - 1];
        }

        for (var place = order.Length - 1; place >= 0; place--)
        {
            var block = order[place];
            into[places[last - ends[block]]++] = numbers[block];
        }
    }

    private void Compare(ReadOnlySpan<int> order, ReadOnlySpan<int> numbers, Span<int> into)
    {
        for (var place = 0; place < order.Length; place++)
        {
            keys[place] = ((long)(CompiledCalendar.Never - ends[order[place]]) << 32) | (long)(order.Length - 1 - place);
        }

        keys.AsSpan().Sort();
        for (var place = 0; place < keys.Length; place++)
        {
            into[place] = numbers[order[order.Length - 1 - (int)(keys[place] & int.MaxValue)]];
        }
    }
}
