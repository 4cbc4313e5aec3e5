using SpreadCheetah;
using SpreadCheetah.Styling;
using SpreadCheetah.Worksheets;

namespace ShopDays.Cli.Sheets;

/// <summary>Tables as a workbook (ISO/IEC 29500, .xlsx): one sheet for each, its heads frozen, numbers and dates as such.</summary>
internal static class Workbook
{
    private const string DateFormat = "yyyy-mm-dd";
    private const string TimeFormat = "yyyy-mm-dd hh:mm";

    /// <summary>The bytes of the file.</summary>
    public static byte[] Write(IReadOnlyList<SheetTable> tables) => Written(tables).GetAwaiter().GetResult();

    // The package writes to streams that may wait; one in memory never does.
    private static async Task<byte[]> Written(IReadOnlyList<SheetTable> tables)
    {
        using var file = new MemoryStream();
        await using var book = await Spreadsheet.CreateNewAsync(file).ConfigureAwait(false);
        var styles = new Dictionary<string, StyleId>(StringComparer.Ordinal);
        var head = book.AddStyle(new Style { Font = { Bold = true } });
        foreach (var table in tables)
        {
            var options = new WorksheetOptions { FrozenRows = 1 };
            foreach (var (place, column) in table.Columns.Index())
            {
                options.Column(place + 1).Width = column.Width;
            }

            await book.StartWorksheetAsync(table.Name, options).ConfigureAwait(false);
            await book.AddHeaderRowAsync([.. table.Columns.Select(column => column.Head)], head).ConfigureAwait(false);
            foreach (var row in table.Rows)
            {
                await book.AddRowAsync([.. row.Select(CellOf)]).ConfigureAwait(false);
            }
        }

        await book.FinishAsync().ConfigureAwait(false);
        return file.ToArray();

        Cell CellOf(SheetCell cell) => cell switch
        {
            SheetCell.Words words => new(words.Text),
            SheetCell.Number number => new(number.Value, Shown(number.Places == 0 ? "0" : "0." + new string('#', number.Places))),
            SheetCell.Day day => new(day.Date.AtMidnight().ToDateTimeUnspecified(), Shown(DateFormat)),
            SheetCell.Moment moment => new(moment.Time.ToDateTimeUnspecified(), Shown(TimeFormat)),
            SheetCell.Empty => default,
            _ => throw new System.Diagnostics.UnreachableException(),
        };

        StyleId Shown(string format) => styles.TryGetValue(format, out var known)
            ? known
            : styles[format] = book.AddStyle(new Style { Format = NumberFormat.Custom(format) });
    }
}
