namespace ShopDays.Plans.Scheduling;

/// <summary>
/// How many of one thing are in use over time: a step function of minutes, beginning with none. Steps are kept in cells of
/// time, so that a minute's step is found at once.
/// </summary>
/// <remarks>No two steps that touch are alike, so that work that follows on work lengthens a step and adds none.</remarks>
internal sealed class Usage
{
    /// <summary>A cell is 1,024 minutes long: most hold a session or none.</summary>
    private const int CellShift = 10;

    private const int NoStep = -1;

    private readonly Cell[] cells;
    private Step[] steps = new Step[64];
    private int used;
    private int unused = NoStep;
    private int touched;

    /// <summary>Nothing in use.</summary>
    /// <param name="minutes">Until when things usually come and go; what comes later takes longer to find.</param>
    public Usage(int minutes)
    {
        cells = new Cell[1 + (Math.Max(0, minutes) >> CellShift)];
        touched = cells.Length - 1;
        Reset();
    }

    /// <summary>Nothing in use.</summary>
    public void Reset()
    {
        cells.AsSpan(0, touched + 1).Fill(new(0, NoStep));
        (used, unused, touched) = (0, NoStep, 0);
    }

    /// <summary>Uses some from a minute to another, which is not included; below 0 gives them back.</summary>
    public void Add(int from, int to, int number)
    {
        if (from >= to || number == 0)
        {
            return;
        }

        unchecked
        {
            var (first, last) = (CellOf(from), CellOf(to));
            touched = Math.Max(touched, last);
            Rise(first, from, number);
            for (var at = first + 1; at <= last; at++)
            {
                cells[at].Used += number;
            }

            Rise(last, to, -number);
        }
    }

    /// <summary>The most in use at any minute from one to another, which is not included.</summary>
    public int Most(int from, int to)
    {
        unchecked
        {
            var at = CellOf(from);
            var inUse = UsedAt(at, from, out var step);
            var most = inUse;
            while (true)
            {
                for (; step >= 0 && steps[step].At < to; step = steps[step].Next)
                {
                    inUse += steps[step].Rise;
                    most = Math.Max(most, inUse);
                }

                if (step >= 0 || ++at > touched || at << CellShift >= to)
                {
                    return most;
                }

                step = cells[at].First;
            }
        }
    }

    /// <summary>The first minute from one on, and before another, at which more than a limit are in use; <see cref="CompiledCalendar.Never"/> when there is none.</summary>
    public int FirstAbove(int limit, int from, int before)
    {
        unchecked
        {
            var at = CellOf(from);
            var inUse = UsedAt(at, from, out var step);
            if (inUse > limit)
            {
                return from;
            }

            while (true)
            {
                for (; step >= 0 && steps[step].At < before; step = steps[step].Next)
                {
                    inUse += steps[step].Rise;
                    if (inUse > limit)
                    {
                        return steps[step].At;
                    }
                }

                if (step >= 0 || ++at > touched || at << CellShift >= before)
                {
                    return CompiledCalendar.Never;
                }

                step = cells[at].First;
            }
        }
    }

    /// <summary>The first minute from one on at which no more than a limit are in use; <see cref="CompiledCalendar.Never"/> when there is none.</summary>
    public int FirstWithin(int limit, int from)
    {
        unchecked
        {
            var at = CellOf(from);
            var inUse = UsedAt(at, from, out var step);
            if (inUse <= limit)
            {
                return from;
            }

            for (; at <= touched; step = ++at < cells.Length ? cells[at].First : NoStep)
            {
                for (; step >= 0; step = steps[step].Next)
                {
                    inUse += steps[step].Rise;
                    if (inUse <= limit)
                    {
                        return steps[step].At;
                    }
                }
            }

            return CompiledCalendar.Never;
        }
    }

    /// <summary>The first minute after one at which fewer are in use than before; <see cref="CompiledCalendar.Never"/> when there is none.</summary>
    public int NextFall(int after)
    {
        unchecked
        {
            var at = CellOf(after);
            UsedAt(at, after, out var step);
            for (; at <= touched; step = ++at < cells.Length ? cells[at].First : NoStep)
            {
                for (; step >= 0; step = steps[step].Next)
                {
                    if (steps[step].Rise < 0)
                    {
                        return steps[step].At;
                    }
                }
            }

            return CompiledCalendar.Never;
        }
    }

    /// <summary>Everything before minute 0 lies in the first cell, everything late in the last.</summary>
    private int CellOf(int minute) => Math.Max(0, Math.Min(minute >> CellShift, cells.Length - 1));

    /// <summary>What is in use at a minute of a cell, and the first step of the cell after that.</summary>
    private int UsedAt(int at, int minute, out int next)
    {
        unchecked
        {
            var (inUse, step) = (cells[at].Used, cells[at].First);
            while (step >= 0 && steps[step].At <= minute)
            {
                inUse += steps[step].Rise;
                step = steps[step].Next;
            }

            next = step;
            return inUse;
        }
    }

    /// <summary>From a minute of a cell on so many more are in use; a step that is none any more goes.</summary>
    private void Rise(int at, int minute, int by)
    {
        unchecked
        {
            if (used == steps.Length)
            {
                // Before anything in it is pointed at.
                Array.Resize(ref steps, 2 * used);
            }

            ref var link = ref cells[at].First;
            while (link >= 0 && steps[link].At < minute)
            {
                link = ref steps[link].Next;
            }

            var step = link;
            if (step < 0 || steps[step].At > minute)
            {
                var another = Another();
                steps[another] = new(minute, by, step);
                link = another;
                return;
            }

            steps[step].Rise += by;
            if (steps[step].Rise == 0)
            {
                link = steps[step].Next;
                steps[step].Next = unused;
                unused = step;
            }
        }
    }

    /// <summary>A step for new use: one that has gone, or one more.</summary>
    private int Another()
    {
        if (unused >= 0)
        {
            var again = unused;
            unused = steps[again].Next;
            return again;
        }

        return used++;
    }

    private struct Cell(int used, int first)
    {
        public int Used = used;
        public int First = first;
    }

    private struct Step(int at, int rise, int next)
    {
        public int Rise = rise;
        public int Next = next;
        public readonly int At = at;
    }
}
