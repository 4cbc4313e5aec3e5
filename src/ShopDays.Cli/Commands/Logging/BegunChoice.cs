using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands.Logging;

/// <summary>Which of the begun tasks is meant.</summary>
internal static class BegunChoice
{
    /// <summary>The one at hand, the only paused one, or the one whose name has the words; else null, which is complained of.</summary>
    public static BegunWork? Of(ShopLog? log, string worker, string? typed, Screen screen)
    {
        var theirs = (log?.Begun.All() ?? []).Where(one => one.Worker == worker).ToList();
        var fitting = typed is null
            ? theirs.Where(one => one.PausedAt is null).ToList() is { Count: 1 } atHand ? atHand : theirs
            : theirs.Where(one => Fits(one, typed)).ToList();
        switch (fitting)
        {
            case [var only]:
                return only;
            case [] when theirs.Count == 0:
                screen.Error.WriteLine("no task is begun; begin one with: shopdays log start JOB TASK, or log a time afterwards with: shopdays log add JOB TASK TIME");
                return null;
            case []:
                screen.Wrapped(screen.Error, $"no begun task has {QuotedText.Of(typed!)} in its name; begun: {Names(theirs)}");
                return null;
            default:
                screen.Wrapped(screen.Error, $"several tasks are begun: {Names(fitting)}; say which with --task");
                return null;
        }
    }

    private static bool Fits(BegunWork work, string typed) =>
        typed.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word => $"{work.Job} {work.Task}".Contains(word, StringComparison.OrdinalIgnoreCase));

    private static string Names(IReadOnlyList<BegunWork> works) => CountWords.Names([.. works.Select(one => $"'{LogPhrases.Plain(one.Task)}'")], 6);
}
