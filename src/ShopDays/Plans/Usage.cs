namespace ShopDays.Plans;

/// <summary>How many of one thing are in use over time: a step function of minutes, beginning with none.</summary>
/// <remarks>No two steps that touch are alike, so that work that follows on work lengthens a step and adds none.</remarks>
internal sealed class Usage
{
    private Step[] all = new Step[16];
    private int count;

    /// <summary>Nothing in use.</summary>
    public void Reset()
    {
        count = 1;
        all[0] = new(int.MinValue, 0);
    }

    /// <summary>Uses some from a minute to another, which is not included; below 0 gives them back.</summary>
    public void Add(int from, int to, int number)
    {
        if (from >= to || number == 0)
        {
            return;
        }

        var first = StepAt(from);
        if (first > 0 && all[first].At == from && all[first - 1].Used == all[first].Used + number && (first + 1 == count || all[first + 1].At > to))
        {
            all[first].At = to;
            return;
        }

        first = Split(first, from);
        var last = Split(StepAt(to), to);
        for (var step = first; step < last; step++)
        {
            all[step].Used += number;
        }

        Join(last);
        Join(first);
    }

    /// <summary>The most in use at any minute from one to another, which is not included.</summary>
    public int Most(int from, int to)
    {
        var step = StepAt(from);
        var most = all[step].Used;
        for (step++; step < count && all[step].At < to; step++)
        {
            most = Math.Max(most, all[step].Used);
        }

        return most;
    }

    /// <summary>The first minute from one on, and before another, at which more than a limit are in use; <see cref="CompiledCalendar.Never"/> when there is none.</summary>
    public int FirstAbove(int limit, int from, int before)
    {
        var step = StepAt(from);
        if (all[step].Used > limit)
        {
            return from;
        }

        for (step++; step < count && all[step].At < before; step++)
        {
            if (all[step].Used > limit)
            {
                return all[step].At;
            }
        }

        return CompiledCalendar.Never;
    }

    /// <summary>The first minute from one on at which no more than a limit are in use; <see cref="CompiledCalendar.Never"/> when there is none.</summary>
    public int FirstWithin(int limit, int from)
    {
        var step = StepAt(from);
        if (all[step].Used <= limit)
        {
            return from;
        }

        for (step++; step < count; step++)
        {
            if (all[step].Used <= limit)
            {
                return all[step].At;
            }
        }

        return CompiledCalendar.Never;
    }

    /// <summary>The first minute after one at which fewer are in use than before; <see cref="CompiledCalendar.Never"/> when there is none.</summary>
    public int NextFall(int after)
    {
        for (var step = StepAt(after) + 1; step < count; step++)
        {
            if (all[step].Used < all[step - 1].Used)
            {
                return all[step].At;
            }
        }

        return CompiledCalendar.Never;
    }

    private int StepAt(int minute)
    {
        unchecked
        {
            var steps = all;
            var (low, left) = (0, count);
            while (left > 1)
            {
                // Without a branch, which would be guessed wrong every other time: all bits set when the later half begins too late.
                var half = left >> 1;
                var late = (int)(((long)minute - steps[low + half].At) >> 63);
                low += half & ~late;
                left -= half;
            }

            return low;
        }
    }

    private int Split(int step, int minute)
    {
        if (all[step].At == minute)
        {
            return step;
        }

        if (count == all.Length)
        {
            Array.Resize(ref all, 2 * count);
        }

        step++;
        Array.Copy(all, step, all, step + 1, count - step);
        all[step] = new(minute, all[step - 1].Used);
        count++;
        return step;
    }

    private void Join(int step)
    {
        if (step > 0 && step < count && all[step].Used == all[step - 1].Used)
        {
            count--;
            Array.Copy(all, step + 1, all, step, count - step);
        }
    }

    private record struct Step(int At, int Used);
}
