using ShopDays.Cli.Files;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>The cautions that go with a plan's work.</summary>
internal static class PlanCautions
{
    /// <summary>The kind of caution that closes every list.</summary>
    public const string Always = "always";

    /// <summary>The cautions of every kind of work in some tasks, each once, in the order of the data file, and the one that always goes.</summary>
    public static IReadOnlyList<Caution> For(IEnumerable<ShopTask> tasks)
    {
        var kinds = tasks.SelectMany(task => task.Cautions).Append(Always).ToHashSet(StringComparer.Ordinal);
        return [.. BuiltIn.Cautions.Where(caution => kinds.Contains(caution.Kind))];
    }
}
