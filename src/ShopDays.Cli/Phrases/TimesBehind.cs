using System.Diagnostics;
using ShopDays.Logbook;

namespace ShopDays.Cli.Phrases;

/// <summary>What an answer's times come from: the shop's own log, and how much of it, or the built-in rates alone.</summary>
/// <param name="Entries">Entries in the shop's log; 0 where there is none.</param>
/// <param name="Timed">Timed tasks, put together from entries, that rates are learned from.</param>
/// <param name="Odd">Timed tasks that look odd and are held out until the maker says what they are.</param>
/// <param name="LeftOut">Entries that nothing can be learned from.</param>
/// <param name="PriorOnly">Whether the maker asked for times as they would be without the log.</param>
internal sealed record TimesBehind(int Entries, int Timed, int Odd, IReadOnlyList<LeftOut> LeftOut, bool PriorOnly)
{
    /// <summary>For example <c>from 37 timed tasks of your own and the built-in rates</c>.</summary>
    public string Source => Timed == 0 ? "from the built-in rates alone" : $"from {CountWords.Of(Timed, "timed task")} of your own and the built-in rates";

    /// <summary>What of the log does not count, and how to see it; nothing where all does.</summary>
    public IReadOnlyList<string> Notes => PriorOnly
        ? Entries == 0 ? [] : [$"The {(Entries == 1 ? "entry" : CountWords.Number(Entries) + " entries")} of your log {(Entries == 1 ? "is" : "are")} left aside, as '--prior-only' asks."]
        : [.. OddOnes(), .. Others()];

    private IEnumerable<string> OddOnes()
    {
        if (Odd > 0)
        {
            yield return $"{CountWords.Of(Odd, "timed task")} {(Odd == 1 ? "looks" : "look")} odd and {(Odd == 1 ? "is" : "are")} held out until you say what to make of {(Odd == 1 ? "it" : "them")}: shopdays log odd";
        }
    }

    private IEnumerable<string> Others()
    {
        if (LeftOut.Count > 0)
        {
            var all = LeftOut.Sum(one => one.Entries.Count);
            List<(int Count, string Words)> reasons = [.. LeftOut.GroupBy(one => one.Reason).OrderBy(group => group.Key).Select(group => (group.Sum(one => one.Entries.Count), WordsOf(group.Key, group.Count())))];
            var why = reasons is [var only] ? only.Words : string.Join(", ", reasons.Select(one => $"{CountWords.Number(one.Count)} {one.Words}"));
            yield return $"Nothing is learned from {LogPhrases.Count(all)} ({why}): shopdays rates names {(all == 1 ? "it" : "them")}";
        }
    }

    /// <param name="reason">The reason.</param>
    /// <param name="tasks">How many tasks the entries are of.</param>
    private static string WordsOf(LeftOutReason reason, int tasks) => reason switch
    {
        LeftOutReason.NotFinished => tasks == 1 ? "of a task that is not finished" : "of tasks that are not finished",
        LeftOutReason.NoOperation => tasks == 1 ? "of a task that no operation times" : "of tasks that no operation times",
        LeftOutReason.UnknownOperation => tasks == 1 ? "of an operation that is not there any more" : "of operations that are not there any more",
        LeftOutReason.MarkedUnusual => "marked unusual",
        LeftOutReason.ImpossibleFigures => "with figures that cannot be",
        _ => throw new UnreachableException(),
    };
}
