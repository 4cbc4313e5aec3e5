using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>Pieces longer than one pass are sawn and planed in several, each after the first with a move.</summary>
internal static class Passes
{
    // One foot of overlap from pass to pass (common practice, no source).
    private static readonly Length Overlap = Length.FromInches(12m);

    /// <summary>Moves between passes: (length - reach) over (reach - overlap), rounded up; none when it is within reach.</summary>
    public static int Moves(Length length, Length reach) => length <= reach
        ? 0
        : (int)Math.Ceiling((length - reach) / Length.Max(reach - Overlap, Overlap));

    /// <summary>What blending the passes costs under the plane: a tenth more (common practice, no source).</summary>
    public static double Blending(Length length, Length reach) => length <= reach ? 1 : 1.1;

    /// <summary>What a face costs that is wider than an arm's stroke, 16 in: 15 % more (common practice, no source).</summary>
    public static double WideFace(Length width) => width > Length.FromInches(16m) ? 1.15 : 1;
}
