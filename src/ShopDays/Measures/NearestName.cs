namespace ShopDays.Measures;

/// <summary>Finds the valid name that a misspelt one was probably meant to be.</summary>
public static class NearestName
{
    private const int LeastToMatchInside = 3;

    /// <summary>The nearest valid name, or null when nothing is near.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="valid">The names that would have been right.</param>
    /// <remarks>
    /// Near is: at most two slips of the pen or a third of the longer name, and never more than half of it (a slip is a
    /// letter too many, too few, wrong, or two neighbours swapped: Damerau 1964, restricted to one edit for each place);
    /// else one name beginning with the other; else one holding the other, of at least three letters. Case does not
    /// count. Among equals the fewest slips win, then the first in ordinal order, so the order of
    /// <paramref name="valid"/> does not matter.
    /// </remarks>
    public static string? To(string typed, IEnumerable<string> valid)
    {
        var wanted = Folded(typed);
        return wanted.Length == 0
            ? null
            : valid
                .Select(name => (Name: name, Distance: Distance(wanted, Folded(name))))
                .Where(found => found.Distance is not null)
                .OrderBy(found => found.Distance)
                .ThenBy(found => found.Name, StringComparer.Ordinal)
                .Select(found => found.Name)
                .FirstOrDefault();
    }

    private static string Folded(string name) => name.Trim().ToUpperInvariant();

    /// <summary>How near, smaller is nearer; null for not near. The first number is the kind of likeness.</summary>
    private static (int Kind, int Slips)? Distance(string typed, string name)
    {
        var longer = Math.Max(typed.Length, name.Length);
        var gap = Math.Abs(typed.Length - name.Length);
        var limit = Math.Min(Math.Max(2, longer / 3), longer / 2);
        if (gap <= limit && Slips(typed, name) is int slips && slips <= limit)
        {
            return (0, slips);
        }

        (var part, var all) = typed.Length < name.Length ? (typed, name) : (name, typed);
        return part.Length < LeastToMatchInside ? null
            : all.StartsWith(part, StringComparison.Ordinal) ? (1, gap)
            : all.Contains(part, StringComparison.Ordinal) ? (2, gap)
            : null;
    }

    private static int Slips(string left, string right)
    {
        var table = new int[left.Length + 1, right.Length + 1];
        for (var i = 0; i <= left.Length; i++)
        {
            for (var j = 0; j <= right.Length; j++)
            {
                table[i, j] = i == 0 || j == 0 ? i + j : Cheapest(table, left, right, i, j);
            }
        }

        return table[left.Length, right.Length];
    }

    private static int Cheapest(int[,] table, string left, string right, int i, int j)
    {
        var changed = table[i - 1, j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1);
        var cheapest = Math.Min(changed, Math.Min(table[i - 1, j], table[i, j - 1]) + 1);
        var isSwap = i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1];
        return isSwap ? Math.Min(cheapest, table[i - 2, j - 2] + 1) : cheapest;
    }
}
