using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans;

/// <summary>Something that takes more floor than the shop has free.</summary>
/// <param name="Needed">The floor that it takes, in whole square decimetres.</param>
/// <param name="Free">The floor that there is.</param>
public sealed record FloorShortage(Area Needed, Area Free)
{
    private static readonly Area SquareDecimetre = Area.FromSquareMetres(0.01);

    /// <summary>The shortage; null when there is enough, or when the shop does not say how much it has.</summary>
    public static FloorShortage? Of(Area wanted, ShopLimits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return limits.Floor is { } free && Wanted(wanted) > There(free) ? new(SquareDecimetre * Wanted(wanted), free) : null;
    }

    /// <summary>Floor that is wanted, in whole square decimetres, rounded up.</summary>
    internal static int Wanted(Area area) => (int)Math.Ceiling(Math.Min(area / SquareDecimetre, CompiledCalendar.Never) - Dust);

    /// <summary>Floor that there is, in whole square decimetres, rounded down.</summary>
    internal static int There(Area area) => (int)Math.Floor(Math.Min(area / SquareDecimetre, CompiledCalendar.Never) + Dust);

    // So that 3.7 m2 is 370 square decimetres, whatever a division makes of it.
    private const double Dust = 1e-6;
}
