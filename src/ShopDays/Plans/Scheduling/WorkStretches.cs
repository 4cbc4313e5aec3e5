using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ShopDays.Plans.Scheduling;

/// <summary>
/// Stretches of one worker's work at one place, as they come. Adding one costs next to nothing; the few who ask look through
/// all of them, several at a time.
/// </summary>
internal sealed class WorkStretches
{
    private int[] from = new int[64];
    private int[] to = new int[64];

    /// <summary>How many there are; those added last can be taken back.</summary>
    public int Count { get; set; }

    /// <summary>Adds a stretch that overlaps none of the others.</summary>
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

    /// <summary>The first stretch with a minute in some time.</summary>
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
}
