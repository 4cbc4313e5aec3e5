using ShopDays.Measures;

namespace ShopDays.Parts;

/// <summary>Between what moistures timber goes up and down over the year in a place.</summary>
/// <param name="Driest">The least.</param>
/// <param name="Dampest">The most, no less than the least.</param>
public readonly record struct MoistureRange(MoistureContent Driest, MoistureContent Dampest)
{
    /// <summary>A room that is heated in winter: 6 to 9 % (common practice, no source).</summary>
    public static MoistureRange HeatedRoom { get; } = new(MoistureContent.FromPercent(6), MoistureContent.FromPercent(9));
}
