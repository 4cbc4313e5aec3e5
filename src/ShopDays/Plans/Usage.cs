namespace ShopDays.Plans;

/// <summary>How many of one thing are in use over time: a step function of minutes, beginning with none.</summary>
internal sealed class Usage
{
    private int[] at = new int[16];
    private int[] used = new int[16];
    private int steps;

    /// <summary>Nothing in use.</summary>
    public void Reset()
    {
        steps = 1;
        (at[0], used[0]) = (int.MinValue, 0);
    }

    /// <summary>Becomes like another.</summary>
    public void CopyFrom(Usage other)
    {
        while (at.Length < other.steps)
        {
            Grow();
        }

        steps = other.steps;
        Array.Copy(other.at, at, steps);
        Array.Copy(other.used, used, steps);
    }

    /// <summary>Uses some from a minute to another, which is not included.</summary>
    public void Add(int from, int to, int number)
    {
        if (from >= to)
        {
            return;
        }

        var first = StepBeginningAt(from);
        var last = StepBeginningAt(to);
        for (var step = first; step < last; step++)
        {
            used[step] += number;
        }
    }

    /// <summary>The most in use at any minute from one to another, the first always looked at, the second not included.</summary>
    public int Most(int from, int to)
    {
        var step = StepAt(from);
        var most = used[step];
        for (step++; step < steps && at[step] < to; step++)
        {
            most = Math.Max(most, used[step]);
        }

        return most;
    }

    /// <summary>The first minute from one on at which more than a limit are in use; <see cref="CompiledCalendar.Never"/> when there is none.</summary>
    public int FirstAbove(int limit, int from)
    {
        var step = StepAt(from);
        if (used[step] > limit)
        {
            return from;
        }

        for (step++; step < steps; step++)
        {
            if (used[step] > limit)
            {
                return at[step];
            }
        }

        return CompiledCalendar.Never;
    }

    /// <summary>The first minute from one on at which no more than a limit are in use; <see cref="CompiledCalendar.Never"/> when there is none.</summary>
    public int FirstWithin(int limit, int from)
    {
        var step = StepAt(from);
        if (used[step] <= limit)
        {
            return from;
        }

        for (step++; step < steps; step++)
        {
            if (used[step] <= limit)
            {
                return at[step];
            }
        }

        return CompiledCalendar.Never;
    }

    /// <summary>The first minute after one at which the use changes; <see cref="CompiledCalendar.Never"/> when it does not.</summary>
    public int NextChange(int after)
    {
        var step = StepAt(after) + 1;
        return step < steps ? at[step] : CompiledCalendar.Never;
    }

    private int StepAt(int minute)
    {
        var found = Array.BinarySearch(at, 0, steps, minute);
        return found < 0 ? ~found - 1 : found;
    }

    private int StepBeginningAt(int minute)
    {
        var step = StepAt(minute);
        if (at[step] == minute)
        {
            return step;
        }

        if (steps == at.Length)
        {
            Grow();
        }

        step++;
        Array.Copy(at, step, at, step + 1, steps - step);
        Array.Copy(used, step, used, step + 1, steps - step);
        at[step] = minute;
        used[step] = used[step - 1];
        steps++;
        return step;
    }

    private void Grow()
    {
        Array.Resize(ref at, 2 * at.Length);
        Array.Resize(ref used, 2 * used.Length);
    }
}
