using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>Cuts like pieces into runs that fit a session, as even as can be.</summary>
internal static class Runs
{
    /// <summary>The pieces of each run, in order; a piece that is too long for itself stands alone.</summary>
    public static IEnumerable<IReadOnlyList<T>> Of<T>(IReadOnlyList<T> pieces, WorkTime each, WorkTime limit)
    {
        var most = each <= WorkTime.Zero ? pieces.Count : Math.Clamp((int)(limit / each), 1, Math.Max(1, pieces.Count));
        var runs = pieces.Count == 0 ? 0 : ((pieces.Count - 1) / most) + 1;
        for (var run = 0; run < runs; run++)
        {
            var from = pieces.Count * run / runs;
            yield return [.. pieces.Skip(from).Take((pieces.Count * (run + 1) / runs) - from)];
        }
    }
}
