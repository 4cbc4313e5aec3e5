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

    private const int MostRows = 14;

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

        ShowEvery(board, cells);

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

    /// <summary>A piece too narrow to be met by the middle of any cell gets the cell nearest to its own middle that it may take.</summary>
    private static void ShowEvery(BoardLayout board, char[,] cells)
    {
        var (rows, columns) = (cells.GetLength(0), cells.GetLength(1));
        var shown = cells.Cast<char>().CountBy(cell => cell).ToDictionary(count => count.Key, count => count.Value);
        for (var blank = 0; blank < board.Blanks.Count; blank++)
        {
            var letter = LetterOf(blank);
            if (shown.ContainsKey(letter))
            {
                continue;
            }

            var region = board.Blanks[blank].Region;
            var (atRow, atColumn) = (CellOf(region.Y + (region.Width / 2), board.Board.Width, rows), CellOf(region.X + (region.Length / 2), board.Board.Length, columns));
            var (row, column) = (from r in Enumerable.Range(0, rows)
                                 from c in Enumerable.Range(0, columns)
                                 where shown.GetValueOrDefault(cells[r, c]) != 1 || !char.IsAsciiLetterOrDigit(cells[r, c])
                                 orderby Math.Abs(r - atRow), Math.Abs(c - atColumn)
                                 select (r, c)).FirstOrDefault((atRow, atColumn));
            shown[cells[row, column]] = shown.GetValueOrDefault(cells[row, column]) - 1;
            cells[row, column] = letter;
            shown[letter] = 1;
        }
    }

    private static int CellOf(Length at, Length whole, int cells) => Math.Clamp((int)Math.Floor(at / whole * cells), 0, cells - 1);

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
