namespace ShopDays.Parts;

/// <summary>Boards by their marks.</summary>
public static class BoardMarks
{
    /// <summary>Before all that lie in the stock, and next to none of them.</summary>
    private const int NotInStock = -2;

    /// <summary>The marks of some boards in the order of the stock; more than two of a line that lie one after another as <c>A1 to A5</c>.</summary>
    /// <param name="some">The boards; those that are not in the stock any more come first.</param>
    /// <param name="stock">All boards.</param>
    public static string Of(IEnumerable<Board> some, IReadOnlyList<Board> stock)
    {
        var places = stock.Select((board, place) => (board.Name, place)).ToDictionary(one => one.Name, one => one.place, StringComparer.Ordinal);
        var rows = new List<List<Board>>();
        foreach (var board in some.OrderBy(PlaceOf))
        {
            if (rows.Count > 0 && rows[^1][^1] is var last && last.Line == board.Line && PlaceOf(board) == PlaceOf(last) + 1)
            {
                rows[^1].Add(board);
            }
            else
            {
                rows.Add([board]);
            }
        }

        return string.Join(", ", rows.SelectMany(row => row.Count > 2 ? [$"{row[0].Name} to {row[^1].Name}"] : row.Select(board => board.Name)));

        int PlaceOf(Board board) => places.GetValueOrDefault(board.Name, NotInStock);
    }
}
