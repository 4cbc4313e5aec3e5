using Spectre.Console;

namespace ShopDays.Cli.Terminal;

/// <summary>Tables for the terminal: one look, wide enough for 80 columns.</summary>
internal static class Grid
{
    /// <summary>Makes a table. A head that begins with <c>&gt;</c> stands over figures, to the right.</summary>
    public static Table WithHeads(params string[] heads)
    {
        var table = new Table().Border(TableBorder.Simple).Collapse();
        foreach (var head in heads)
        {
            var isFigures = head.StartsWith('>');
            var column = new TableColumn(new Text(head.TrimStart('>'))) { Padding = new Padding(0, 0, 1, 0), NoWrap = isFigures };
            table.AddColumn(isFigures ? column.RightAligned() : column);
        }

        return table;
    }

    /// <summary>Adds a row of plain text; nothing in it is markup.</summary>
    public static void AddTexts(this Table table, params string[] cells) => table.AddRow(cells.Select(cell => new Text(cell)));
}
