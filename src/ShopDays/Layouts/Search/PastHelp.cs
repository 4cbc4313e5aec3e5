using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>
/// How many of each part no stock helps, since it must come from one board. The numbers of a part are alike, so only how
/// many are past help is known, not which: of those left over the last are told as past help, spares before the others.
/// </summary>
internal sealed class PastHelp
{
    private readonly Dictionary<string, int> counts = new(StringComparer.Ordinal);

    /// <summary>Counts these, unless as many of their part or more are counted already.</summary>
    /// <param name="left">What is left over however much stock there is.</param>
    /// <returns>Whether any part has more of them now.</returns>
    public bool Raise(IEnumerable<(Part Part, int Number)> left)
    {
        var isMore = false;
        foreach (var part in left.GroupBy(one => one.Part.Name, StringComparer.Ordinal))
        {
            if (part.Count() > counts.GetValueOrDefault(part.Key))
            {
                counts[part.Key] = part.Count();
                isMore = true;
            }
        }

        return isMore;
    }

    /// <summary>Those of what is left over that stock could help; each number is there once.</summary>
    public IReadOnlyList<(Part Part, int Number)> WithHope(IEnumerable<(Part Part, int Number)> left) =>
    [
        .. left.GroupBy(one => one.Part.Name, StringComparer.Ordinal)
            .SelectMany(part => part.OrderBy(one => one.Number).SkipLast(counts.GetValueOrDefault(part.Key))),
    ];
}
