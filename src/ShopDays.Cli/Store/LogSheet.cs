using ShopDays.Cli.Files;
using ShopDays.Cli.Files.Yaml;

namespace ShopDays.Cli.Store;

/// <summary>Reads a CSV file of times: a pencilled sheet typed back, or an export of a log; columns in any order.</summary>
internal static class LogSheet
{
    private static readonly Dictionary<string, string> OtherNames = new(StringComparer.OrdinalIgnoreCase)
    {
        ["finished"] = "done",
        ["notes"] = "note",
        ["end"] = "stop",
        ["time"] = "took",
        ["timber"] = "species",
    };

    private static readonly string[] Headings = [.. LogCsv.SheetColumns, .. LogCsv.Columns];

    /// <summary>Reads it.</summary>
    /// <param name="file">The file.</param>
    /// <param name="settings">By what it is read.</param>
    /// <returns>The rows that are filled in, and how many are not.</returns>
    public static (IReadOnlyList<SheetRow> Rows, int Empty) Read(SourceFile file, SheetSettings settings)
    {
        var findings = settings.Reading.Findings;
        if (CsvRows.Read(file, findings, LogCsv.List) is not { } rows || ReadHeadings(rows[0], findings) is not { } columns)
        {
            return ([], 0);
        }

        var (own, exported) = (new OwnRow(settings), new ExportedRow(findings, settings.Today));
        var read = new List<SheetRow>();
        var empty = 0;
        foreach (var row in rows.Skip(1))
        {
            var cells = new SheetCells(row, columns);
            if (row.Count > rows[0].Count)
            {
                findings.Add(CsvMistakes.TooManyFields(row[rows[0].Count].Place, row.Count, rows[0].Count));
            }
            else if (row.FirstOrDefault(cell => cell.Value.Contains('\0', StringComparison.Ordinal)) is { } broken)
            {
                findings.Add(LogMistakes.NoText(broken.Place));
            }
            else if (cells["key"] is not null)
            {
                Add(exported.Read(cells));
            }
            else if (OwnRow.IsEmpty(cells))
            {
                empty++;
            }
            else
            {
                Add(own.Read(cells));
            }
        }

        return (read, empty);

        void Add(SheetRow? row)
        {
            if (row is not null)
            {
                read.Add(row);
            }
        }
    }

    private static Dictionary<string, int>? ReadHeadings(IReadOnlyList<YamlText> row, Findings findings)
    {
        var before = findings.Count;
        var columns = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var at = 0; at < row.Count; at++)
        {
            var heading = row[at].Value.Trim();
            var meant = OtherNames.GetValueOrDefault(heading, heading);
            var known = Headings.FirstOrDefault(one => string.Equals(one, meant, StringComparison.OrdinalIgnoreCase));
            if (known is null)
            {
                findings.Add(CsvMistakes.UnknownColumn(row[at].Place, heading, LogCsv.List, Headings));
            }
            else if (!columns.TryAdd(known, at))
            {
                findings.Add(CsvMistakes.ColumnTwice(row[at].Place, heading));
            }
        }

        return findings.Count == before ? columns : null;
    }
}
