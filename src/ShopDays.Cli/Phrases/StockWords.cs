using ShopDays.Parts;

namespace ShopDays.Cli.Phrases;

/// <summary>Boards by their marks.</summary>
internal static class StockWords
{
    /// <summary>The marks of some boards; more than two that lie one after another in the stock as <c>A1 to A5</c>.</summary>
    /// <param name="some">The boards, in the order of the stock.</param>
    /// <param name="stock">All boards.</param>
    public static string Marks(IEnumerable<Board> some, IReadOnlyList<Board> stock)
    {
        var places = stock.Select((board, place) => (board.Name, place)).ToDictionary(one => one.Name, one => one.place, StringComparer.Ordinal);
        var rows = new List<List<Board>>();
        foreach (var board in some)
        {
            if (rows.Count > 0 && rows[^1][^1] is var last && last.Line == board.Line && places[board.Name] == places[last.Name] + 1)
            {
                rows[^1].Add(board);
            }
            else
            {
                rows.Add([board]);
            }
        }

        return string.Join(", ", rows.SelectMany(row => row.Count > 2 ? [$"{row[0].Name} to {row[^1].Name}"] : row.Select(board => board.Name)));
    }
}
