using System.Numerics;
using System.Runtime.InteropServices;

namespace ShopDays.Layouts.Search;

/// <summary>Adds rows of values, several places at a time; sums that are no more than what is there change nothing.</summary>
internal static class Rows
{
    /// <summary>Raises each value to the sum of the two in the same place of two others, where that is more.</summary>
    public static void Raise(Span<double> to, ReadOnlySpan<double> near, ReadOnlySpan<double> far)
    {
        ref var into = ref MemoryMarshal.GetReference(to);
        ref var one = ref MemoryMarshal.GetReference(near);
        ref var other = ref MemoryMarshal.GetReference(far);
        nuint at = 0;
        for (; at + (nuint)Vector<double>.Count <= (nuint)to.Length; at += (nuint)Vector<double>.Count)
        {
            var sum = Vector.LoadUnsafe(ref one, at) + Vector.LoadUnsafe(ref other, at);
            Vector.MaxNative(sum, Vector.LoadUnsafe(ref into, at)).StoreUnsafe(ref into, at);
        }

        for (var rest = (int)at; rest < to.Length; rest++)
        {
            to[rest] = Math.Max(to[rest], near[rest] + far[rest]);
        }
    }

    /// <summary>Raises each value to the sum of one and the one in the same place of another, where that is more.</summary>
    public static void Raise(Span<double> to, double near, ReadOnlySpan<double> far)
    {
        ref var into = ref MemoryMarshal.GetReference(to);
        ref var other = ref MemoryMarshal.GetReference(far);
        var one = new Vector<double>(near);
        nuint at = 0;
        for (; at + (nuint)Vector<double>.Count <= (nuint)to.Length; at += (nuint)Vector<double>.Count)
        {
            Vector.MaxNative(one + Vector.LoadUnsafe(ref other, at), Vector.LoadUnsafe(ref into, at)).StoreUnsafe(ref into, at);
        }

        for (var rest = (int)at; rest < to.Length; rest++)
        {
            to[rest] = Math.Max(to[rest], near + far[rest]);
        }
    }
}
