using ShopDays.Cli.Files.Jobs;
using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files;

/// <summary>Reads a parts list from a CSV file: a row of headings, then a part in each row; columns in any order.</summary>
internal static class PartsCsv
{
    private static readonly CsvList List = new("the parts list", "part", 2_000);

    private static readonly string[] Headings = ["name", "count", "length", "width", "thickness", "species"];
    private static readonly string[] NeededHeadings = ["name", "length", "width", "thickness"];

    /// <summary>Reads a parts list.</summary>
    /// <param name="file">The file.</param>
    /// <param name="known">The species that may be named.</param>
    /// <param name="names">Where the names of the job are kept.</param>
    /// <param name="reading">Units, and where mistakes go.</param>
    public static IReadOnlyList<PartLine> Read(SourceFile file, SpeciesTable known, JobNames names, Reading reading)
    {
        if (CsvRows.Read(file, reading.Findings, List) is not { } rows || ReadHeadings(rows[0], reading.Findings) is not { } columns)
        {
            return [];
        }

        var lines = new List<PartLine>();
        foreach (var row in rows.Skip(1))
        {
            if (row.Count > rows[0].Count)
            {
                reading.Findings.Add(CsvMistakes.TooManyFields(row[rows[0].Count].Place, row.Count, rows[0].Count));
                continue;
            }

            lines.Add(ReadRow(row, columns, known, names, reading));
        }

        return lines;
    }

    private static Dictionary<string, int>? ReadHeadings(IReadOnlyList<YamlText> row, Findings findings)
    {
        var before = findings.Count;
        var columns = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var at = 0; at < row.Count; at++)
        {
            var heading = row[at].Value.Trim();
            var known = Headings.FirstOrDefault(one => string.Equals(one, heading, StringComparison.OrdinalIgnoreCase));
            if (known is null)
            {
                findings.Add(CsvMistakes.UnknownColumn(row[at].Place, heading, List, Headings));
            }
            else if (!columns.TryAdd(known, at))
            {
                findings.Add(CsvMistakes.ColumnTwice(row[at].Place, heading));
            }
        }

        if (findings.Count == before && NeededHeadings.Where(one => !columns.ContainsKey(one)).ToList() is { Count: > 0 } missing)
        {
            findings.Add(CsvMistakes.ColumnsMissing(row[0].Place, missing));
        }

        return findings.Count == before ? columns : null;
    }

    private static PartLine ReadRow(IReadOnlyList<YamlText> row, Dictionary<string, int> columns, SpeciesTable known, JobNames names, Reading reading)
    {
        var name = Cell("name", Values.Name("the part's name"));
        names.Declare(name, NameKind.Part);
        var length = Cell("length", LengthValues.AboveZero("the length of a part", LengthValues.Longest));
        var width = Cell("width", LengthValues.AboveZero("the width of a part", LengthValues.Widest));
        var thickness = Cell("thickness", LengthValues.AboveZero("the thickness of a part", LengthValues.Thickest));
        var size = length.IsRead && width.IsRead && thickness.IsRead
            ? Field<Size>.Read(length.Place, new(length.Value, width.Value, thickness.Value))
            : Field<Size>.Wrong(row[0].Place);
        var species = IsEmpty("species") ? Field<Species>.Missing(row[0].Place) : Cell("species", StockReader.SpeciesOf(known));
        var count = IsEmpty("count") ? 1 : Cell("count", Values.Whole("a count of parts", 1, PartReader.MostAlike)).Or(1);
        return new(name, size, species, Field<string>.Missing(row[0].Place), row[0].Place, new() { Count = count });

        Field<T> Cell<T>(string heading, ValueReader<T> read) => At(heading) is { } cell ? read(cell, reading) : Missed<T>(heading);

        Field<T> Missed<T>(string heading)
        {
            reading.Findings.Add(CsvMistakes.FieldMissing(row[^1].Place, heading));
            return Field<T>.Wrong(row[^1].Place);
        }

        bool IsEmpty(string heading) => At(heading) is not { } cell || string.IsNullOrWhiteSpace(cell.Value);

        YamlText? At(string heading) => columns.TryGetValue(heading, out var at) && at < row.Count ? row[at] : null;
    }
}
