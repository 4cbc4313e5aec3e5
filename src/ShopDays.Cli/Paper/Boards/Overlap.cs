using ShopDays.Cli.Paper.Setting;

namespace ShopDays.Cli.Paper.Boards;

/// <summary>How much two rectangles cover of each other.</summary>
internal static class Overlap
{
    /// <summary>The area that both cover, in square points.</summary>
    public static double Of(Box one, Box other) =>
        Math.Max(0, Math.Min(one.Right, other.Right) - Math.Max(one.X, other.X)) *
        Math.Max(0, Math.Min(one.Bottom, other.Bottom) - Math.Max(one.Y, other.Y));
}
