namespace ShopDays.Work;

/// <summary>
/// A short mark for each task of a job, such as <c>KDR</c>, for the pencil and for typing times back. It is made from the
/// task's name alone, so a new plan leaves it as it is; where two tasks would share one, both get a longer one.
/// </summary>
public sealed class TaskMarks
{
    private const int Shortest = 3;
    private const int Longest = 12;

    // No vowels, so that no mark is a word, and no letter that a pencil makes like another.
    private const string Letters = "BCDFGHJKLMNPQRSTVWXZ";

    private readonly (string Name, string Whole)[] all;

    /// <summary>Makes the marks of a job's tasks.</summary>
    /// <param name="names">The names, each one of a kind.</param>
    public TaskMarks(IEnumerable<string> names) => all = [.. names.Select(name => (name, Whole(name)))];

    /// <summary>The mark of a task: the shortest that no other task of the job begins with.</summary>
    /// <exception cref="KeyNotFoundException">The job has no such task.</exception>
    public string Of(string name)
    {
        if (!Has(name))
        {
            throw new KeyNotFoundException($"no task is called '{name}'");
        }

        var whole = Whole(name);
        var length = Shortest;
        while (length < Longest && all.Any(one => one.Name != name && one.Whole.AsSpan(0, length).SequenceEqual(whole.AsSpan(0, length))))
        {
            length++;
        }

        return whole[..length];
    }

    /// <summary>Whether the job has a task of that name.</summary>
    public bool Has(string name) => all.Any(one => one.Name == name);

    /// <summary>The names of the tasks whose marks begin with what was typed, without regard to case; none for less than three letters.</summary>
    public IReadOnlyList<string> Find(string typed) => typed.Length is < Shortest or > Longest
        ? []
        : [.. all.Where(one => one.Whole.StartsWith(typed, StringComparison.OrdinalIgnoreCase)).Select(one => one.Name)];

    /// <summary>Letters drawn from the FNV-1a hash of the name's UTF-16 code units, which is the same on every machine (public algorithm of Fowler, Noll and Vo, from memory).</summary>
    private static string Whole(string name)
    {
        var hash = 14695981039346656037UL;
        foreach (var letter in name)
        {
            unchecked
            {
                hash = (hash ^ letter) * 1099511628211UL;
            }
        }

        // The high bits of this hash mix best: they are folded into the low ones before the letters are taken.
        hash ^= hash >> 32;
        return string.Create(Longest, hash, (mark, left) =>
        {
            for (var at = 0; at < mark.Length; at++)
            {
                mark[at] = Letters[(int)(left % (ulong)Letters.Length)];
                left /= (ulong)Letters.Length;
            }
        });
    }
}
