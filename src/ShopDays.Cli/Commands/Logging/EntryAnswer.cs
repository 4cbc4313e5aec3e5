using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Logbook;

namespace ShopDays.Cli.Commands.Logging;

/// <summary>What commands that change single entries say.</summary>
internal static class EntryAnswer
{
    /// <summary>Says that no entry has a number.</summary>
    /// <returns>The exit code for it.</returns>
    public static int SayNone(Screen screen, EntryId id)
    {
        screen.Error.WriteLine($"the log has no entry {id}; see their numbers with: shopdays log list");
        return ExitCode.No;
    }

    /// <summary>Says what was changed, old value before new.</summary>
    public static void SayChange(Screen screen, LogEntry before, LogEntry after)
    {
        var changes = LogPhrases.Changes(before, after);
        screen.Wrapped(changes.Count == 0 ? $"{after.Id}: nothing to change." : $"{LogPhrases.Of(after)}.");
        foreach (var change in changes)
        {
            screen.Hanging("  ", change);
        }
    }
}
