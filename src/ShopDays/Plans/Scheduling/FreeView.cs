using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ShopDays.Plans.Scheduling;

/// <summary>
/// One worker's free time as the innermost loop sees it: everything by reference, nothing asked for twice. What is taken in
/// any other way than <see cref="TryTakeFirst"/> makes it stale, and another must be had.
/// </summary>
/// <remarks>
/// References instead of arrays leave out the checks of every index; each is a session that <see cref="RoomRow"/> found, or
/// the link of a gap of it.
/// </remarks>
internal readonly ref struct FreeView
{
    private readonly ref FreeGap gaps;
    private readonly ref byte room;
    private readonly int sessions;
    private readonly int changeover;

    /// <summary>A view of a worker's gaps and of the room of each session.</summary>
    public FreeView(FreeGap[] gaps, RoomRow room, int sessions, int changeover)
    {
        this.gaps = ref MemoryMarshal.GetArrayDataReference(gaps);
        this.room = ref room.First;
        (this.sessions, this.changeover) = (sessions, changeover);
    }

    /// <summary>
    /// The first stretch at or after a minute in which work with a key can be done for some time, changeovers left free on
    /// either side.
    /// </summary>
    /// <param name="session">The first session that ends after the minute, or one before it; or a later one to begin with.</param>
    /// <param name="minute">The minute.</param>
    /// <param name="key">The set-up.</param>
    /// <param name="least">For how long, 1 or more.</param>
    /// <param name="found">Receives the stretch.</param>
    /// <returns>Whether there is one.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool TryNext(int session, int minute, int key, int least, out FreeStretch found)
    {
        unchecked
        {
            while (true)
            {
                session = RoomRow.Next(ref room, session, least);
                if (session >= sessions)
                {
                    found = default;
                    return false;
                }

                if (TryNextOf(session, minute, key, least, out found))
                {
                    return true;
                }

                session++;
            }
        }
    }

    /// <summary>The same, in sessions that another row has room in as well.</summary>
    /// <inheritdoc cref="TryNext(int, int, int, int, out FreeStretch)"/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool TryNext(RoomRow also, int session, int minute, int key, int least, out FreeStretch found)
    {
        unchecked
        {
            while (true)
            {
                session = RoomRow.Next(ref room, ref also.First, session, least);
                if (session >= sessions)
                {
                    found = default;
                    return false;
                }

                if (TryNextOf(session, minute, key, least, out found))
                {
                    return true;
                }

                session++;
            }
        }
    }

    /// <summary>Takes a stretch if it is the usual one: the beginning of all that is left of its session.</summary>
    /// <param name="session">The session.</param>
    /// <param name="start">The first minute.</param>
    /// <param name="end">The end.</param>
    /// <param name="key">The set-up.</param>
    /// <param name="turns">Receives how many turns from one set-up to another it adds.</param>
    /// <returns>Whether it was; nothing is taken otherwise.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool TryTakeFirst(int session, int start, int end, int key, out int turns)
    {
        unchecked
        {
            ref var one = ref Unsafe.Add(ref gaps, session);
            if (start != one.From || one.Next >= 0)
            {
                turns = 0;
                return false;
            }

            turns = (one.KeyBefore & key & one.KeyAfter) < 0 ? 0 : FreeGap.Turns(one.KeyBefore, key) + FreeGap.Turns(key, one.KeyAfter) - FreeGap.Turns(one.KeyBefore, one.KeyAfter);
            (one.From, one.KeyBefore) = (end, key);
            Unsafe.Add(ref room, session) = RoomRow.Clipped(one.To - end);
            return true;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool TryNextOf(int session, int minute, int key, int least, out FreeStretch found)
    {
        unchecked
        {
            var (gap, previous) = (session, -1);
            do
            {
                ref var one = ref Unsafe.Add(ref gaps, gap);
                var start = Math.Max(minute, one.From + (key < 0 ? 0 : FreeGap.Turns(one.KeyBefore, key) * changeover));
                var end = one.To - (key < 0 ? 0 : FreeGap.Turns(one.KeyAfter, key) * changeover);
                if (end - start >= least)
                {
                    found = new(start, end, session, gap, previous);
                    return true;
                }

                (previous, gap) = (gap, one.Next);
            }
            while (gap >= 0);

            found = default;
            return false;
        }
    }
}
