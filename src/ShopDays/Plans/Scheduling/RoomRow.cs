using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ShopDays.Plans.Scheduling;

/// <summary>
/// How many minutes each session has room for at most, a byte for each, so that the next session with room enough is found
/// among 64 at a time. What is longer than <see cref="Most"/> counts as that: who looks for more must look closer.
/// </summary>
internal sealed class RoomRow
{
    /// <summary>The most that is told apart.</summary>
    public const int Most = byte.MaxValue;

    private readonly byte[] minutes;
    private readonly byte[] whole;

    /// <summary>A row with the same room in all sessions.</summary>
    public RoomRow(int sessions, int room)
        : this(Enumerable.Repeat(room, sessions))
    {
    }

    /// <summary>A row with the room that each session has.</summary>
    public RoomRow(IEnumerable<int> rooms)
    {
        // Behind the last session there is room without end: every look ahead finds some.
        whole = [.. rooms.Select(Clipped), .. Enumerable.Repeat(byte.MaxValue, 2 * Vector512<byte>.Count)];
        minutes = [.. whole];
    }

    /// <summary>The room of the first session; that of the others follows.</summary>
    public ref byte First => ref MemoryMarshal.GetArrayDataReference(minutes);

    /// <summary>The room of a session; of one that has none it may be set below 0.</summary>
    public int this[int session]
    {
        get => minutes[session];
        set => minutes[session] = Clipped(value);
    }

    /// <summary>The first sessions have the room again that they had first.</summary>
    public void Reset(int sessions) => whole.AsSpan(0, sessions).CopyTo(minutes);

    /// <summary>The first session from one on with room for some minutes, 1 or more; the one behind the last when there is none.</summary>
    /// <param name="first">The <see cref="First"/> of a row.</param>
    /// <param name="session">The session.</param>
    /// <param name="least">The minutes.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static int Next(ref byte first, int session, int least)
    {
        unchecked
        {
            var enough = Vector512.Create(Clipped(least));
            while (true)
            {
                var found = Vector512.GreaterThanOrEqual(At(ref first, session), enough).ExtractMostSignificantBits();
                if (found != 0)
                {
                    return session + BitOperations.TrailingZeroCount(found);
                }

                session += Vector512<byte>.Count;
            }
        }
    }

    /// <summary>The same, of sessions that have room in another row too.</summary>
    /// <inheritdoc cref="Next(ref byte, int, int)"/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static int Next(ref byte first, ref byte other, int session, int least)
    {
        unchecked
        {
            var enough = Vector512.Create(Clipped(least));
            while (true)
            {
                var found = Vector512.GreaterThanOrEqual(Vector512.Min(At(ref first, session), At(ref other, session)), enough).ExtractMostSignificantBits();
                if (found != 0)
                {
                    return session + BitOperations.TrailingZeroCount(found);
                }

                session += Vector512<byte>.Count;
            }
        }
    }

    /// <summary>A length as a row keeps it.</summary>
    public static byte Clipped(int minutes) => unchecked((byte)Math.Max(0, Math.Min(minutes, Most)));

    private static Vector512<byte> At(ref byte first, int session) => Vector512.LoadUnsafe(ref first, unchecked((nuint)session));
}
