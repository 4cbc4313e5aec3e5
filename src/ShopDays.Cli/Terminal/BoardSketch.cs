using ShopDays.Layouts;
using ShopDays.Measures;

namespace ShopDays.Cli.Terminal;

/// <summary>
/// A board drawn with characters: every piece has its letter, a key beneath says what the letters are. Rows are coarse;
/// the drawing to scale is on paper.
/// </summary>
internal static class BoardSketch
{
    private const string Letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789";
    private const char Waste = '·';
    private const char Kept = ' ';
    private const char Spoilt = '×';

    /// <summary>A character is about twice as high as it is wide.</summary>
    private const double RowsPerColumn = 0.5;

    private const int MostRows = 10;

    /// <summary>The lines of the sketch, its frame included.</summary>
    /// <param name="board">The board.</param>
    /// <param name="width">Columns there are.</param>
    public static IReadOnlyList<string> Lines(BoardLayout board, int width)
    {
        var columns = width - 2;
        var shape = board.Board.Width / board.Board.Length;
        var rows = Math.Clamp((int)Math.Round(columns * shape * RowsPerColumn, MidpointRounding.AwayFromZero), Math.Min(3, MostRows), MostRows);
        var cells = new char[rows, columns];
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                cells[row, column] = At(board, Middle(board.Board.Length, column, columns), Middle(board.Board.Width, row, rows));
            }
        }

        // The reference edge is at the bottom, as a maker stands at the board.
        return
        [
            "┌" + new string('─', columns) + "┐",
            .. Enumerable.Range(0, rows).Select(row => "│" + Row(cells, rows - 1 - row, columns) + "│"),
            "└" + new string('─', columns) + "┘",
        ];
    }

    /// <summary>The letter of a blank on its board.</summary>
    public static char LetterOf(int blank) => blank < Letters.Length ? Letters[blank] : '#';

    private static char At(BoardLayout board, Length x, Length y)
    {
        for (var blank = 0; blank < board.Blanks.Count; blank++)
        {
            if (IsIn(board.Blanks[blank].Region, x, y))
            {
                return LetterOf(blank);
            }
        }

        if (board.Board.Flaws.Any(flaw => flaw.From <= x && x < flaw.To && flaw.AcrossFrom <= y && y < flaw.AcrossTo))
        {
            return Spoilt;
        }

        return board.Offcuts.Any(offcut => offcut.IsUseful && IsIn(offcut.Region, x, y)) ? Kept : Waste;
    }

    private static bool IsIn(Region region, Length x, Length y) =>
        region.X <= x && x < region.Right && region.Y <= y && y < region.Top;

    private static Length Middle(Length whole, int cell, int cells) => ((whole * ((2 * cell) + 1)) / (2 * cells));

    private static string Row(char[,] cells, int row, int columns) =>
        string.Create(columns, (cells, row), static (line, state) =>
        {
            for (var column = 0; column < line.Length; column++)
            {
                line[column] = state.cells[state.row, column];
            }
        });
}
