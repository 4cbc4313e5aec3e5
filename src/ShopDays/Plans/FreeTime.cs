namespace ShopDays.Plans;

/// <summary>
/// What is left of one worker's sessions while a schedule is made: gaps in order, each inside one session, each knowing
/// the set-up of the work on either side of it.
/// </summary>
/// <remarks>Buffers grow when they must and are then kept, so that a second run allocates nothing.</remarks>
internal sealed class FreeTime(CompiledCalendar calendar, int changeover)
{
    private const int NoWork = -1;
    private int[] from = new int[calendar.Count + 16];
    private int[] to = new int[calendar.Count + 16];
    private int[] session = new int[calendar.Count + 16];
    private int[] keyBefore = new int[calendar.Count + 16];
    private int[] keyAfter = new int[calendar.Count + 16];
    private int count;

    /// <summary>How often the worker turns from one set-up to another within a session.</summary>
    public int Changeovers { get; private set; }

    /// <summary>All sessions free again.</summary>
    public void Reset()
    {
        count = calendar.Count;
        Changeovers = 0;
        calendar.From.CopyTo(from);
        calendar.To.CopyTo(to);
        Array.Fill(keyBefore, NoWork, 0, count);
        Array.Fill(keyAfter, NoWork, 0, count);
        for (var index = 0; index < count; index++)
        {
            session[index] = index;
        }
    }

    /// <summary>Becomes like another.</summary>
    public void CopyFrom(FreeTime other)
    {
        while (from.Length < other.count)
        {
            Grow();
        }

        count = other.count;
        Changeovers = other.Changeovers;
        Array.Copy(other.from, from, count);
        Array.Copy(other.to, to, count);
        Array.Copy(other.session, session, count);
        Array.Copy(other.keyBefore, keyBefore, count);
        Array.Copy(other.keyAfter, keyAfter, count);
    }

    /// <summary>The first stretch at or after a minute in which work with a key can be done, changeovers left free on either side.</summary>
    /// <returns>Whether there is one.</returns>
    public bool TryNext(int minute, int key, out int start, out int end, out int inSession)
    {
        for (var gap = GapEndingAfter(minute); gap < count; gap++)
        {
            start = Math.Max(minute, from[gap] + Cost(keyBefore[gap], key));
            end = to[gap] - Cost(keyAfter[gap], key);
            if (start >= end)
            {
                continue;
            }

            inSession = session[gap];
            return true;
        }

        start = end = CompiledCalendar.Never;
        inSession = -1;
        return false;
    }

    /// <summary>Takes a stretch that lies inside one gap.</summary>
    public void Take(int start, int end, int key)
    {
        var gap = GapEndingAfter(start);
        var (before, after) = (keyBefore[gap], keyAfter[gap]);
        Changeovers += Turns(before, key) + Turns(key, after) - Turns(before, after);
        var (roomBefore, roomAfter) = (from[gap] < start, end < to[gap]);
        if (roomBefore && roomAfter)
        {
            Insert(gap);
            (to[gap], keyAfter[gap]) = (start, key);
            (from[gap + 1], keyBefore[gap + 1]) = (end, key);
        }
        else if (roomBefore)
        {
            (to[gap], keyAfter[gap]) = (start, key);
        }
        else if (roomAfter)
        {
            (from[gap], keyBefore[gap]) = (end, key);
        }
        else
        {
            Remove(gap);
        }
    }

    private static int Turns(int before, int after) => before < 0 || after < 0 || before == after ? 0 : 1;

    private int Cost(int neighbour, int key) => Turns(neighbour, key) * changeover;

    private int GapEndingAfter(int minute)
    {
        var found = Array.BinarySearch(to, 0, count, minute + 1);
        return found < 0 ? ~found : found;
    }

    private void Insert(int gap)
    {
        if (count == from.Length)
        {
            Grow();
        }

        Shift(gap, gap + 1);
        count++;
    }

    private void Remove(int gap)
    {
        Shift(gap + 1, gap);
        count--;
    }

    private void Shift(int source, int target)
    {
        var length = count - source;
        Array.Copy(from, source, from, target, length);
        Array.Copy(to, source, to, target, length);
        Array.Copy(session, source, session, target, length);
        Array.Copy(keyBefore, source, keyBefore, target, length);
        Array.Copy(keyAfter, source, keyAfter, target, length);
    }

    private void Grow()
    {
        var size = 2 * from.Length;
        Array.Resize(ref from, size);
        Array.Resize(ref to, size);
        Array.Resize(ref session, size);
        Array.Resize(ref keyBefore, size);
        Array.Resize(ref keyAfter, size);
    }
}
