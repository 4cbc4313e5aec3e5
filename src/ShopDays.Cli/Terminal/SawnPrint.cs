using ShopDays.Cli.Phrases;
using ShopDays.Layouts;
using ShopDays.Measures;

namespace ShopDays.Cli.Terminal;

/// <summary>Boards that were recorded as sawn, for the eyes.</summary>
internal static class SawnPrint
{
    /// <summary>Prints what was recorded and how it is undone.</summary>
    public static void Print(Screen screen, string file, IReadOnlyList<BoardLayout> boards, LengthFormat format)
    {
        foreach (var board in boards)
        {
            screen.Wrapped($"{board.Board.Name} is sawn: {SawnWords.Blanks(board)}.");
            foreach (var offcut in board.Offcuts)
            {
                screen.Wrapped($"- kept: {offcut.Name}, {format.Write(offcut.Region.Length)} x {format.Write(offcut.Region.Width)}", indent: 2);
            }
        }

        screen.Out.WriteLine();
        screen.Wrapped($"Recorded in {file}. From now on the rest is laid out around these boards, and what was kept of them may yield parts. Take a spoiled blank out of that file and it is wanted again; take out a board, or the whole file, to undo this.");
    }
}
