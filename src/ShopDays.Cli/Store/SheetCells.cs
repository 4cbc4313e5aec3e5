using ShopDays.Cli.Files;
using ShopDays.Cli.Files.Yaml;

namespace ShopDays.Cli.Store;

/// <summary>The cells of one row by their headings.</summary>
internal sealed class SheetCells(IReadOnlyList<YamlText> row, IReadOnlyDictionary<string, int> columns)
{
    /// <summary>Where the row begins.</summary>
    public Place Place => row[0].Place;

    /// <summary>The cell under a heading; null where it is empty or there is no such column.</summary>
    public YamlText? this[string heading] => columns.TryGetValue(heading, out var at) && at < row.Count && !string.IsNullOrWhiteSpace(row[at].Value) ? row[at] : null;

    /// <summary>Whether there is such a column.</summary>
    public bool HasColumn(string heading) => columns.ContainsKey(heading);

    /// <summary>The text under a heading as it stands, spaces and all; empty where there is none.</summary>
    public string Text(string heading) => columns.TryGetValue(heading, out var at) && at < row.Count ? row[at].Value : "";

    /// <summary>Where the maker stopped, as it stands in the row; what cannot be kept is reported.</summary>
    public string Stopped(Findings findings)
    {
        var text = Text("stopped");
        if (StoppedText.Complaint(text) is { } complaint)
        {
            findings.Add(LogMistakes.NotKept(PlaceOf("stopped"), complaint));
        }

        return text;
    }

    /// <summary>Where the cell under a heading is, or would be.</summary>
    public Place PlaceOf(string heading) => columns.TryGetValue(heading, out var at) && at < row.Count ? row[at].Place : Place;

    /// <summary>Reads the cell under a heading if there is anything in it.</summary>
    public Field<T> Read<T>(string heading, ValueReader<T> read, Reading reading) => this[heading] is { } cell ? read(cell, reading) : Field<T>.Missing(PlaceOf(heading));
}
