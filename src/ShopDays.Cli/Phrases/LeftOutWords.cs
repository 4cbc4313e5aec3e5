using ShopDays.Logbook;

namespace ShopDays.Cli.Phrases;

/// <summary>Entries that nothing is learned from, by reason.</summary>
internal static class LeftOutWords
{
    private const int MostNumbers = 12;

    /// <summary>One line for each reason: <c>3 entries that you marked as unusual (4, 9, 12)</c>.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<LeftOut> leftOut) =>
    [
        .. leftOut
            .GroupBy(one => one.Reason)
            .OrderBy(group => group.Key)
            .Select(group => (group.Key, Tasks: group.Count(), Numbers: group.SelectMany(one => one.Entries).Select(entry => entry.Id.ToString()).ToList()))
            .Select(one => $"{LogPhrases.Count(one.Numbers.Count)} {Why(one.Key, one.Tasks)} ({CountWords.Names(one.Numbers, MostNumbers)})"),
    ];

    /// <summary>The reason, to follow 'entries' of so many tasks.</summary>
    private static string Why(LeftOutReason reason, int tasks) => reason switch
    {
        LeftOutReason.NotFinished => $"{(tasks == 1 ? "of a task that is" : "of tasks that are")} not finished, without a word on how much is done",
        LeftOutReason.NoOperation => tasks == 1 ? "of a task that goes by a guess, not by an operation" : "of tasks that go by a guess, not by an operation",
        LeftOutReason.UnknownOperation => "of an operation, method or unit that the catalogue does not have",
        LeftOutReason.MarkedUnusual => "that you marked as unusual",
        LeftOutReason.ImpossibleFigures => "with a figure that cannot be, such as nothing at all or more than anyone could work; put it right or delete it",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
