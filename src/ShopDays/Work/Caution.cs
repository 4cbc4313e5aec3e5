namespace ShopDays.Work;

/// <summary>A short line to print with a kind of work. It defers to local codes, product sheets and licensed practice.</summary>
/// <param name="Kind">The kind of work, as operations name it, for example <c>oily rags</c>.</param>
/// <param name="Text">What to print.</param>
/// <param name="SaidBy">The bodies that say so; a document's number only where it was seen.</param>
public sealed record Caution(string Kind, string Text, string SaidBy)
{
    /// <summary>The kind of the caution that goes with any work.</summary>
    public const string Always = "always";

    /// <summary>The cautions of every kind of work in some tasks, each once and in their order, and the one that goes with any work.</summary>
    /// <param name="tasks">The tasks.</param>
    /// <param name="known">All there are.</param>
    public static IReadOnlyList<Caution> For(IEnumerable<ShopTask> tasks, IReadOnlyList<Caution> known)
    {
        var kinds = tasks.SelectMany(task => task.Cautions).Append(Always).ToHashSet(StringComparer.Ordinal);
        return [.. known.Where(caution => kinds.Contains(caution.Kind))];
    }
}
