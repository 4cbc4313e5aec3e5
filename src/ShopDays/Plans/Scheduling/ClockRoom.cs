using System.Runtime.CompilerServices;

namespace ShopDays.Plans.Scheduling;

/// <summary>
/// How many are free of up to four resources in each minute from 0 on, all four in one number: 15 bits each, and above
/// each a bit that is always set, so that one subtraction says whether there is room for all.
/// </summary>
internal sealed class ClockRoom
{
    /// <summary>Resources at most.</summary>
    public const int Lanes = 4;

    /// <summary>The most there may be of a resource.</summary>
    public const int Most = short.MaxValue;

    private const ulong Guards = 0x8000_8000_8000_8000;
    private readonly ulong empty;
    private ulong[] room;
    private int first;
    private int touched;

    /// <summary>All free.</summary>
    /// <param name="capacities">How many there are of each.</param>
    public ClockRoom(ReadOnlySpan<int> capacities)
    {
        empty = Guards;
        for (var lane = 0; lane < capacities.Length; lane++)
        {
            empty |= Lane(lane, capacities[lane]);
        }

        room = new ulong[512];
        Array.Fill(room, empty);
    }

    /// <summary>So many of one resource, as a number that can be taken; those of several are added up.</summary>
    public static ulong Lane(int resource, int count) => (ulong)count << (16 * resource);

    /// <summary>All free again.</summary>
    /// <param name="begin">The first minute of which some will be taken.</param>
    public void Reset(int begin)
    {
        room.AsSpan(first, touched - first).Fill(empty);
        first = touched = begin;
        if (begin > room.Length)
        {
            Grow(begin);
        }
    }

    /// <summary>Takes room for some minutes, as early as it is free throughout.</summary>
    /// <param name="needs">How many of each.</param>
    /// <param name="ready">The first minute that will do.</param>
    /// <param name="minutes">For how long, 1 or more.</param>
    /// <returns>The first of the minutes.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int TakeFrom(ulong needs, int ready, int minutes)
    {
        unchecked
        {
            // Whatever is taken ends by then, so nothing beyond is looked at.
            var last = Math.Max(ready, touched) + minutes;
            if (last > room.Length)
            {
                Grow(last);
            }

            // Looked at from its end, a stretch that does not do tells the latest minute that is in the way.
            var all = room;
            var (start, known) = (ready, ready);
            while (true)
            {
                var at = start + minutes - 1;
                while (at >= known && ((all[at] - needs) & Guards) == Guards)
                {
                    at--;
                }

                if (at < known)
                {
                    break;
                }

                (known, start) = (start + minutes, at + 1);
            }

            var end = start + minutes;
            foreach (ref var minute in all.AsSpan(start, minutes))
            {
                minute -= needs;
            }

            touched = Math.Max(touched, end);
            return start;
        }
    }

    private void Grow(int least)
    {
        var from = room.Length;
        Array.Resize(ref room, Math.Max(2 * from, least));
        Array.Fill(room, empty, from, room.Length - from);
    }
}
