using ShopDays.Measures;
using ShopDays.Plans;

namespace ShopDays.Cli.Phrases;

/// <summary>On which days a helper is needed, and for what.</summary>
internal static class VisitWords
{
    /// <summary>What stands above the visits.</summary>
    public const string Title = "When somebody else is needed";

    /// <summary>More visits than these are told as a number: somebody who is there all week is not called in.</summary>
    private const int Named = 8;

    private const int TasksNamed = 2;

    private const int OperationsNamed = 4;

    /// <summary>A line for each visit: <c>helper, Sat 13 Mar: 35 min for two (fetch the boards, lift S1 and 2 more), 2 h alone</c>.</summary>
    public static IReadOnlyList<string> Lines(IReadOnlyList<HelperVisit> visits) =>
        [.. visits.Take(Named).Select(visit => $"{visit.Worker}, {DateWords.Short(visit.Date)}: {For(visit, named: true)}"), .. Others(visits)];

    /// <summary>All visits in a sentence: <c>helper: Sat 13 Mar, 35 min for two, 2 h alone; Sat 20 Mar, 1 h alone</c>; none where nobody is called in.</summary>
    public static string? InASentence(IReadOnlyList<HelperVisit> visits) => visits.Count == 0
        ? null
        : string.Join(". ", visits.Take(Named).GroupBy(visit => visit.Worker, StringComparer.Ordinal).Select(own => $"{own.Key}: {string.Join("; ", own.Select(visit => $"{DateWords.Short(visit.Date)}, {For(visit, named: false)}"))}").Concat(Others(visits))) + ".";

    private static string For(HelperVisit visit, bool named)
    {
        List<string> said = [];
        if (visit.Together > WorkTime.Zero)
        {
            var what = named ? $" ({CountWords.Names([.. visit.Tasks.Select(task => task.Name)], TasksNamed)})" : "";
            said.Add($"{WorkTimeText.Write(visit.Together)} for two{what}");
        }

        if (visit.Alone > WorkTime.Zero)
        {
            said.Add($"{WorkTimeText.Write(visit.Alone)} alone{(visit.AtOnce.Count > 0 ? $", with a tool of their own to {CountWords.Names(visit.AtOnce, OperationsNamed)}" : "")}");
        }

        return string.Join(", ", said);
    }

    private static string[] Others(IReadOnlyList<HelperVisit> visits) => visits.Count <= Named ? [] : [$"and on {CountWords.Of(visits.Count - Named, "more day")}"];
}
