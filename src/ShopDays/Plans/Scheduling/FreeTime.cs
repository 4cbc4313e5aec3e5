namespace ShopDays.Plans.Scheduling;

/// <summary>
/// What is left of one worker's sessions while a schedule is made: the gaps of each session in a row of links, each knowing
/// the set-up of the work on either side, and for each session its longest gap, by which sessions that have no room are
/// passed over many at a time.
/// </summary>
/// <remarks>Buffers grow when they must and are then kept, so that a second run allocates nothing.</remarks>
internal sealed class FreeTime
{
    private readonly CompiledCalendar calendar;
    private readonly int changeover;
    private readonly FreeGap[] whole;
    private readonly RoomRow longest;
    private FreeGap[] gaps;
    private int used;
    private int touched;
    private Change[] changes = new Change[16];
    private int changed;

    /// <summary>All sessions free.</summary>
    public FreeTime(CompiledCalendar calendar, int changeover)
    {
        this.calendar = calendar;
        this.changeover = changeover;
        whole = new FreeGap[calendar.Count];
        gaps = new FreeGap[calendar.Count + 64];

        for (var session = 0; session < whole.Length; session++)
        {
            whole[session] = new(calendar.From[session], calendar.To[session], FreeGap.NoWork, FreeGap.NoWork, -1);
        }

        longest = new(whole.Select(one => one.To - one.From));
        touched = calendar.Count;
        Reset();
    }

    /// <summary>How often the worker turns from one set-up to another within a session.</summary>
    public int Changeovers { get; set; }

    /// <summary>Whether what is taken can be given back with <see cref="GoBack"/>.</summary>
    public bool Remembers { get; set; }

    /// <summary>How it looks until more is taken.</summary>
    public FreeView View => new(gaps, longest, whole.Length, changeover);

    /// <summary>Says that nothing was taken after a minute, so that less is to be freed again.</summary>
    public void NothingAfter(int minute) => touched = Math.Min(whole.Length, calendar.SessionEndingAfter(minute) + 1);

    /// <summary>All sessions free again.</summary>
    public void Reset()
    {
        whole.AsSpan(0, touched).CopyTo(gaps);
        longest.Reset(touched);
        used = whole.Length;
        (Changeovers, touched, changed) = (0, whole.Length, 0);
    }

    /// <summary>Gives back all that was taken since the worker began to remember, and goes on remembering.</summary>
    public void GoBack()
    {
        while (changed > 0)
        {
            ref readonly var change = ref changes[--changed];
            gaps[change.Gap] = change.Was;
            longest[change.Session] = change.Longest;
            (used, Changeovers) = (change.Used, change.Changeovers);
        }
    }

    /// <summary>Forgets what could be given back.</summary>
    public void Forget() => changed = 0;

    /// <summary>The same as <see cref="FreeView.TryNext(int, int, int, int, out FreeStretch)"/>.</summary>
    /// <param name="session">The first session that ends after the minute, or one before it; or a later one to begin with.</param>
    /// <param name="minute">The minute.</param>
    /// <param name="key">The set-up.</param>
    /// <param name="least">For how long, 1 or more.</param>
    /// <param name="also">Minutes that each session must allow as well; null when nothing else matters.</param>
    /// <param name="found">Receives the stretch.</param>
    /// <returns>Whether there is one.</returns>
    public bool TryNext(int session, int minute, int key, int least, RoomRow? also, out FreeStretch found) =>
        also is null ? View.TryNext(session, minute, key, least, out found) : View.TryNext(also, session, minute, key, least, out found);

    /// <summary>Takes a stretch that lies inside one gap, when nothing but where it was found is known of it.</summary>
    public void Take(int start, int end, int key)
    {
        var session = calendar.SessionEndingAfter(start);
        var (gap, previous) = (session, -1);
        while (gaps[gap].To <= start)
        {
            (previous, gap) = (gap, gaps[gap].Next);
        }

        Take(start, end, key, session, gap, previous);
    }

    /// <summary>Takes a stretch out of the gap that it was found in.</summary>
    public void Take(int start, int end, int key, int session, int gap, int previous)
    {
        ref var one = ref gaps[gap];
        if (Remembers)
        {
            Remember(session, gap);
        }

        var (length, before, after) = (one.To - one.From, one.KeyBefore, one.KeyAfter);
        Changeovers += FreeGap.Turns(before, key) + FreeGap.Turns(key, after) - FreeGap.Turns(before, after);
        if (start == one.From && gap == session && one.Next < 0)
        {
            // The usual case: the beginning of all that is left of a session.
            (one.From, one.KeyBefore) = (end, key);
            longest[session] = one.To - end;
            return;
        }

        if (start == one.From)
        {
            if (end < one.To)
            {
                (one.From, one.KeyBefore) = (end, key);
            }
            else
            {
                Remove(session, gap, previous);
            }
        }
        else
        {
            if (end < one.To)
            {
                // The buffer may be another one afterwards.
                var rest = Added(new(end, one.To, key, after, one.Next));
                one = ref gaps[gap];
                one.Next = rest;
            }

            (one.To, one.KeyAfter) = (start, key);
        }

        if (Math.Min(length, RoomRow.Most) == longest[session])
        {
            longest[session] = Longest(session);
        }
    }

    private int Longest(int session)
    {
        var most = 0;
        for (var gap = session; gap >= 0; gap = gaps[gap].Next)
        {
            most = Math.Max(most, gaps[gap].To - gaps[gap].From);
        }

        return most;
    }

    private int Added(FreeGap gap)
    {
        if (used == gaps.Length)
        {
            Array.Resize(ref gaps, 2 * used);
        }

        gaps[used] = gap;
        return used++;
    }

    private void Remove(int session, int gap, int previous)
    {
        ref var one = ref gaps[gap];
        if (previous >= 0)
        {
            if (Remembers)
            {
                Remember(session, previous);
            }

            gaps[previous].Next = one.Next;
        }
        else if (one.Next >= 0)
        {
            one = gaps[one.Next];
        }
        else
        {
            one.From = one.To;
        }
    }

    private void Remember(int session, int gap)
    {
        if (changed == changes.Length)
        {
            Array.Resize(ref changes, 2 * changed);
        }

        changes[changed++] = new(gap, session, gaps[gap], longest[session], used, Changeovers);
    }

    private readonly record struct Change(int Gap, int Session, FreeGap Was, int Longest, int Used, int Changeovers);
}
