using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>Clamps that a glue-up wants, and what the shop says of its own.</summary>
internal static class Clamping
{
    /// <summary>
    /// The clamps that a glue-up is planned with: all that are wanted, whether or not the shop owns them, which the plan
    /// looks at. Where the shop does not say which it has, there is nothing to keep account of, and that becomes a remark.
    /// </summary>
    public static IReadOnlyList<ClampsHeld> Of(Draft draft, string about, IReadOnlyList<ClampsHeld> wanted)
    {
        if (draft.Limits.Clamps is not null || wanted.Count == 0)
        {
            return wanted;
        }

        var text = FormattableString.Invariant($"{about} wants {wanted.Sum(one => one.Count)} clamps, and the shop lists none");
        if (!draft.Remarks.Exists(remark => remark.Text == text))
        {
            draft.Remarks.Add(new Remark(RemarkKind.Clamps, about, text, "list the shop's clamps, so that the plan can keep account of them"));
        }

        return [];
    }
}
