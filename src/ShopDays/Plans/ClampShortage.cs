using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Plans;

/// <summary>Clamps that a glue-up takes and the shop does not own.</summary>
/// <param name="Reach">The least reach that will do.</param>
/// <param name="Needed">How many of this reach or longer it takes.</param>
/// <param name="Owned">How many of them there are.</param>
/// <param name="Missing">How many of this reach are the least to be added, those of longer reaches that are missing too being added before; 1 or more.</param>
public sealed record ClampShortage(Length Reach, int Needed, int Owned, int Missing)
{
    /// <summary>The shortages, the longest reach first; none when there are enough of all, or when the shop does not say which it has.</summary>
    public static IReadOnlyList<ClampShortage> Of(IReadOnlyList<ClampsHeld> wanted, ShopLimits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        if (limits.Clamps is null)
        {
            return [];
        }

        var owned = ClampRow.Of(limits);
        var added = 0;
        var all = new List<ClampShortage>();
        foreach (var reach in wanted.Select(held => held.Reach).Distinct().OrderDescending())
        {
            var (needed, there) = (wanted.Where(held => held.Reach >= reach).Sum(held => held.Count), owned.ThatReach(reach));
            if (needed > there + added)
            {
                all.Add(new(reach, needed, there, needed - there - added));
                added = needed - there;
            }
        }

        return all;
    }
}
