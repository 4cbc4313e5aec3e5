namespace ShopDays.Plans.Scheduling;

/// <summary>A short list for each of many things, all in one array.</summary>
internal sealed class Rows<T>
{
    private readonly int[] begin;
    private readonly T[] items;

    /// <summary>Rows from items with the row each belongs to; order within a row is kept.</summary>
    public Rows(int rows, IEnumerable<(int Row, T Item)> entries)
    {
        var byRow = entries.ToLookup(entry => entry.Row, entry => entry.Item);
        begin = new int[rows + 1];
        for (var row = 0; row < rows; row++)
        {
            begin[row + 1] = begin[row] + byRow[row].Count();
        }

        items = [.. Enumerable.Range(0, rows).SelectMany(row => byRow[row])];
    }

    /// <summary>The items of one row.</summary>
    public ReadOnlySpan<T> this[int row] => items.AsSpan(begin[row], begin[row + 1] - begin[row]);
}
