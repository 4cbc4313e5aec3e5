using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Terminal;

/// <summary>What the times of an answer come from, for the eyes.</summary>
internal static class TimesPrint
{
    /// <summary>Prints it in a line, and below it what of the log does not count.</summary>
    public static void Print(Screen screen, TimesBehind behind)
    {
        screen.Wrapped($"Times {behind.Source}.");
        PrintNotes(screen, behind);
    }

    /// <summary>Prints what of the log does not count.</summary>
    public static void PrintNotes(Screen screen, TimesBehind behind)
    {
        foreach (var note in behind.Notes)
        {
            screen.Wrapped(note);
        }
    }
}
