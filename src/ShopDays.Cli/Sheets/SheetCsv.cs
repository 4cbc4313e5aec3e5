using System.Globalization;
using System.Text;
using CsvHelper;
using NodaTime.Text;

namespace ShopDays.Cli.Sheets;

/// <summary>
/// A table as CSV (RFC 4180): numbers with a point and nothing else, dates as ISO 8601. These files are made for
/// spreadsheets, which take words for something to reckon when they begin so: such words get an apostrophe before them.
/// The log's own export is for this program and stays as it is.
/// </summary>
internal static class SheetCsv
{
    private static readonly LocalDatePattern Date = LocalDatePattern.Iso;
    private static readonly LocalDateTimePattern Time = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm");

    /// <summary>The bytes of a table's file: UTF-8 without a mark at its head.</summary>
    public static byte[] Write(SheetTable table)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(text, new CsvWriterOptions { Separator = ',', NewLine = "\r\n", FormatProvider = CultureInfo.InvariantCulture }))
        {
            Row(csv, table.Columns.Select(column => column.Head));
            foreach (var row in table.Rows)
            {
                Row(csv, row.Select(Field));
            }
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void Row(CsvWriter csv, IEnumerable<string> fields)
    {
        foreach (var field in fields)
        {
            csv.WriteField(field);
        }

        csv.EndRecord();
    }

    private static string Field(SheetCell cell) => cell switch
    {
        SheetCell.Words words => Plain(words.Text),
        SheetCell.Number number => number.Value.ToString("0." + new string('#', number.Places), CultureInfo.InvariantCulture),
        SheetCell.Day day => Date.Format(day.Date),
        SheetCell.Moment moment => Time.Format(moment.Time),
        SheetCell.Empty => "",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string Plain(string text) => text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' ? "'" + text : text;
}
