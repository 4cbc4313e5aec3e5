using ShopDays.Cli.Phrases;
using ShopDays.Plans;

namespace ShopDays.Cli.Terminal;

/// <summary>How far a finish moved, and why, for the eyes.</summary>
internal static class MovedPrint
{
    /// <summary>Prints it: the whole, then a line for each cause.</summary>
    public static void Print(Screen screen, MovedFinish moved, IReadOnlyList<MovedRow> why, bool isRecorded = true)
    {
        screen.Wrapped(MovedRow.Whole(moved, isRecorded));
        foreach (var row in why)
        {
            screen.Hanging($"  {row.Days,-15} ", row.What);
        }
    }
}
