using ShopDays.Work;

namespace ShopDays.Cli.Terminal;

/// <summary>Remarks on the work for the eyes: what is the matter, and what would help.</summary>
internal static class RemarkPrint
{
    /// <summary>Prints them, each under the last; nothing when there are none.</summary>
    public static void Print(Screen screen, IReadOnlyList<Remark> remarks)
    {
        if (remarks.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        screen.Out.WriteLine("To know before you begin:");
        foreach (var said in RemarkGroups.Said(remarks))
        {
            screen.Wrapped("- " + said, indent: 2);
        }
    }
}
