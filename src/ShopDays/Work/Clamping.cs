using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>Clamps that a glue-up wants against clamps that the shop owns.</summary>
internal static class Clamping
{
    /// <summary>
    /// What of the clamps wanted the shop owns, the longest reach given out first; what is missing becomes a remark, so
    /// that the plan goes on as if it were borrowed.
    /// </summary>
    public static IReadOnlyList<ClampsHeld> Owned(Draft draft, string about, IReadOnlyList<ClampsHeld> wanted)
    {
        var held = new List<ClampsHeld>();
        foreach (var one in wanted.OrderByDescending(one => one.Reach))
        {
            var longEnough = draft.Limits.Clamps.Where(clamps => clamps.Reach >= one.Reach).Sum(clamps => clamps.Count);
            var free = Math.Max(0, longEnough - held.Sum(other => other.Count));
            var count = Math.Min(one.Count, free);
            if (count > 0)
            {
                held.Add(one with { Count = count });
            }

            if (count < one.Count)
            {
                Warn(draft, about, one, count);
            }
        }

        return held;
    }

    private static void Warn(Draft draft, string about, ClampsHeld wanted, int count)
    {
        var text = draft.Limits.Clamps.Count == 0
            ? FormattableString.Invariant($"{about} wants {wanted.Count} clamps, and the shop lists none")
            : FormattableString.Invariant($"{about} wants {wanted.Count} clamps that reach across it, and the shop has {count} to give");
        var cure = draft.Limits.Clamps.Count == 0
            ? "list the shop's clamps, so that the plan can keep account of them"
            : "borrow clamps, use wedges or rope, or glue it in stages";
        if (!draft.Remarks.Exists(remark => remark.Text == text))
        {
            draft.Remarks.Add(new Remark(RemarkKind.Clamps, about, text, cure));
        }
    }
}
