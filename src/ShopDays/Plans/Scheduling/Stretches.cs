using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ShopDays.Plans.Scheduling;

/// <summary>
/// Stretches of time, as they come: of a worker's work at one place, of dust in the air. Adding one costs next to nothing;
/// the few who ask look through all of them, several at a time.
/// </summary>
internal sealed class Stretches
{
    private int[] from = new int[64];
    private int[] to = new int[64];

    /// <summary>How many there are; those added last can be taken back.</summary>
    public int Count { get; set; }

    /// <summary>One of them.</summary>
    public (int From, int To) this[int index] => (from[index], to[index]);

    /// <summary>Adds a stretch.</summary>
    public void Add(int start, int end)
    {
        if (Count + Vector256<int>.Count > from.Length)
        {
            Array.Resize(ref from, 2 * from.Length);
            Array.Resize(ref to, 2 * to.Length);
        }

        from[Count] = start;
        to[Count] = end;
        Count++;
    }

    /// <summary>The first stretch with a minute in some time, of stretches that do not overlap.</summary>
    /// <param name="start">The first minute of the time.</param>
    /// <param name="end">Its end.</param>
    /// <param name="first">Receives what of the stretch lies in the time.</param>
    /// <returns>Whether there is one.</returns>
    public bool TryFirst(int start, int end, out (int From, int To) first)
    {
        unchecked
        {
            ref var starts = ref MemoryMarshal.GetArrayDataReference(from);
            ref var ends = ref MemoryMarshal.GetArrayDataReference(to);
            var (earliest, latest) = (Vector256.Create(start), Vector256.Create(end));
            first = (end, end);
            for (var at = 0; at < Count; at += Vector256<int>.Count)
            {
                var meet = Vector256.LessThan(Vector256.LoadUnsafe(ref starts, (nuint)at), latest)
                    & Vector256.GreaterThan(Vector256.LoadUnsafe(ref ends, (nuint)at), earliest);
                for (var bits = meet.ExtractMostSignificantBits(); bits != 0; bits &= bits - 1)
                {
                    var one = at + BitOperations.TrailingZeroCount(bits);
                    if (one < Count && from[one] < first.From)
                    {
                        first = (Math.Max(start, from[one]), Math.Min(end, to[one]));
                    }
                }
            }

            return first.From < end;
        }
    }

    /// <summary>The last end of all stretches with a minute in some time; the first minute of the time when there is none.</summary>
    public int LastEnd(int start, int end)
    {
        unchecked
        {
            ref var starts = ref MemoryMarshal.GetArrayDataReference(from);
            ref var ends = ref MemoryMarshal.GetArrayDataReference(to);
            var (earliest, latest) = (Vector256.Create(start), Vector256.Create(end));
            var (last, lanes) = (earliest, Vector256<int>.Indices);
            for (var at = 0; at < Count; at += Vector256<int>.Count)
            {
                // Behind the last stretch lie others that were taken back.
                var meet = Vector256.LessThan(Vector256.LoadUnsafe(ref starts, (nuint)at), latest) & Vector256.LessThan(lanes, Vector256.Create(Count - at));
                last = Vector256.ConditionalSelect(meet, Vector256.Max(last, Vector256.LoadUnsafe(ref ends, (nuint)at)), last);
            }

            var most = start;
            for (var lane = 0; lane < Vector256<int>.Count; lane++)
            {
                most = Math.Max(most, last[lane]);
            }

            return most;
        }
    }
}
