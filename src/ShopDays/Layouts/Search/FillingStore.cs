using System.Numerics;
using System.Runtime.InteropServices;

namespace ShopDays.Layouts.Search;

/// <summary>
/// All fillings that a search has made, packed close: their sizes, values, what they are put together from and how many
/// of each candidate are in them. One that holds the same as another is not taken in when the other does as well in its
/// place.
/// </summary>
internal sealed class FillingStore
{
    /// <summary>Counts are bytes, and two of them are added: more of a kind in one board are not told apart.</summary>
    private const int MostOfKind = 127;

    private readonly bool crosscutsAreFree;
    private readonly bool ripsAreFree;
    private readonly int block;
    private readonly byte[] most;
    private readonly List<Made> all = [];
    private readonly Dictionary<int, int> lastLike = [];
    private readonly byte[] sum;
    private byte[] counts;

    public FillingStore(int kinds, CostOfCuts cuts)
    {
        crosscutsAreFree = cuts is { Crosscut: 0, CrosscutPerUnit: 0 };
        ripsAreFree = cuts is { Rip: 0, RipPerUnit: 0 };
        block = (kinds + Vector<byte>.Count - 1) / Vector<byte>.Count * Vector<byte>.Count;
        most = new byte[block];
        sum = new byte[block];
        counts = new byte[block * 64];
    }

    public (int Length, int Width) Size(int filling) => (all[filling].Length, all[filling].Width);

    public double Value(int filling) => all[filling].Value;

    public ReadOnlySpan<byte> Counts(int filling) => counts.AsSpan(filling * block, block);

    /// <summary>Takes one candidate in.</summary>
    public int Single(int kind, Candidate candidate)
    {
        most[kind] = (byte)Math.Min(candidate.Most, MostOfKind);
        Array.Clear(sum);
        sum[kind] = 1;
        return Add(new Made(candidate.Length, candidate.Width, candidate.Value, kind, -1, false, -1));
    }

    /// <summary>Whether there are enough of all kinds for two together.</summary>
    public bool CountsAllow(int one, int other)
    {
        ref var limit = ref MemoryMarshal.GetArrayDataReference(most);
        ref var first = ref MemoryMarshal.GetReference(Counts(one));
        ref var second = ref MemoryMarshal.GetReference(Counts(other));
        for (nuint at = 0; at < (nuint)block; at += (nuint)Vector<byte>.Count)
        {
            if (Vector.GreaterThanAny(Vector.LoadUnsafe(ref first, at) + Vector.LoadUnsafe(ref second, at), Vector.LoadUnsafe(ref limit, at)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Takes two together in; -1 when one is there that does as well.</summary>
    public int Join(int one, int other, bool sideBySide, int length, int width, double value)
    {
        var first = Counts(one);
        var second = Counts(other);
        var hash = 17;
        for (var kind = 0; kind < block; kind++)
        {
            sum[kind] = (byte)(first[kind] + second[kind]);
        }

        foreach (var word in MemoryMarshal.Cast<byte, int>(sum))
        {
            hash = unchecked((hash * -1_640_531_535) ^ word ^ (hash >>> 15));
        }

        var like = lastLike.GetValueOrDefault(hash, -1);
        for (var before = like; before >= 0; before = all[before].Before)
        {
            var made = all[before];
            if (DoesAsWell(made, length, width, value) && Counts(before).SequenceEqual(sum))
            {
                return -1;
            }
        }

        lastLike[hash] = all.Count;
        return Add(new Made(length, width, value, one, other, sideBySide, like));
    }

    /// <summary>How a filling is cut.</summary>
    public Filling Filling(int filling, IReadOnlyList<Candidate> candidates)
    {
        var made = all[filling];
        if (made.Second < 0)
        {
            return new Filling.Single(made.First, candidates[made.First].Length, candidates[made.First].Width);
        }

        var (near, far) = (Filling(made.First, candidates), Filling(made.Second, candidates));
        return made.SideBySide ? new Filling.SideBySide(near, far) : new Filling.EndToEnd(near, far);
    }

    /// <summary>Whether what is there can stand wherever the new one can, and nothing is lost by it.</summary>
    /// <remarks>
    /// A shorter one may need a crosscut that a longer one is spared, and not only once and here: after every filling that
    /// is put beside it there may be one more, across all of them. So it does as well only where crosscuts cost nothing.
    /// The same is true of a narrower one and rips.
    /// </remarks>
    private bool DoesAsWell(Made made, int length, int width, double value) => made.Value >= value
        && (made.Length == length || (made.Length < length && crosscutsAreFree))
        && (made.Width == width || (made.Width < width && ripsAreFree));

    private int Add(Made made)
    {
        var at = all.Count;
        if ((at + 1) * block > counts.Length)
        {
            Array.Resize(ref counts, counts.Length * 2);
        }

        sum.CopyTo(counts, at * block);
        all.Add(made);
        return at;
    }

    /// <summary>
    /// A candidate (then the second is -1) or two fillings put together; and which one before it has the same hash of its
    /// counts, -1 when none has.
    /// </summary>
    private readonly record struct Made(int Length, int Width, double Value, int First, int Second, bool SideBySide, int Before);
}
