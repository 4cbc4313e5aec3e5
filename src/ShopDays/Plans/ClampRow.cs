using System.Collections.Immutable;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Plans;

/// <summary>The shop's clamps, the shortest first, those of one reach together. A longer one may serve for a shorter.</summary>
/// <param name="Reaches">The reaches.</param>
/// <param name="Counts">How many of each.</param>
/// <param name="AreCounted">Whether the shop says which it has; otherwise no account is kept of them.</param>
internal sealed record ClampRow(ImmutableArray<Length> Reaches, ImmutableArray<int> Counts, bool AreCounted)
{
    /// <summary>The clamps of a shop; none where it does not say which it has.</summary>
    public static ClampRow Of(ShopLimits limits)
    {
        var row = (limits.Clamps ?? []).GroupBy(held => held.Reach).OrderBy(group => group.Key).ToList();
        return new([.. row.Select(group => group.Key)], [.. row.Select(group => group.Sum(held => held.Count))], limits.Clamps is not null);
    }

    /// <summary>The first that are long enough; the number of reaches when none is.</summary>
    public int FirstThatReaches(Length reach)
    {
        var first = 0;
        while (first < Reaches.Length && Reaches[first] < reach)
        {
            first++;
        }

        return first;
    }

    /// <summary>How many are long enough.</summary>
    public int ThatReach(Length reach) => Counts.Skip(FirstThatReaches(reach)).Sum();
}
