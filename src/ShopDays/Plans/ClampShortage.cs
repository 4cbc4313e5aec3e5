using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Plans;

/// <summary>Clamps that a glue-up takes and the shop does not own.</summary>
/// <param name="Reach">The least reach that will do.</param>
/// <param name="Needed">How many of this reach or longer it takes.</param>
/// <param name="Owned">How many of them there are.</param>
public sealed record ClampShortage(Length Reach, int Needed, int Owned)
{
    /// <summary>The shortage of the longest clamps of which there are too few; null when there are enough of all.</summary>
    public static ClampShortage? Of(IReadOnlyList<ClampsHeld> wanted, ShopLimits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        var owned = ClampRow.Of(limits);
        return wanted
            .Select(held => held.Reach)
            .Distinct()
            .OrderDescending()
            .Select(reach => new ClampShortage(reach, wanted.Where(held => held.Reach >= reach).Sum(held => held.Count), owned.ThatReach(reach)))
            .FirstOrDefault(one => one.Needed > one.Owned);
    }
}
