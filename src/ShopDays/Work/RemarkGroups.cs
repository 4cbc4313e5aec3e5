namespace ShopDays.Work;

/// <summary>Remarks that say the same of several boards or parts, said once.</summary>
public static class RemarkGroups
{
    /// <summary>The remarks in their order, each as one text with its cure; those that differ only in what they are about together.</summary>
    public static IReadOnlyList<string> Said(IReadOnlyList<Remark> remarks) =>
    [
        .. remarks
            .GroupBy(remark => (remark.Text.Replace(remark.About, "", StringComparison.Ordinal), remark.Cure))
            .Select(group => Said([.. group])),
    ];

    private static string Said(Remark[] same)
    {
        var said = $"{same[0].Text}: {same[0].Cure}.";
        return same.Length == 1 ? said : $"{said} The same holds for {string.Join(", ", same.Skip(1).Select(remark => remark.About))}.";
    }
}
