using System.Buffers;
using System.Globalization;
using System.Text;
using ShopDays.Cli.Files;
using ShopDays.Logbook;
using ShopDays.Work;

namespace ShopDays.Cli.Store;

/// <summary>
/// The whole log as CSV (RFC 4180): every figure in full, entries with their keys, corrected and deleted ones as they were.
/// Nothing is bent for the sake of spreadsheets: a note that begins with an equals sign stays as it is.
/// </summary>
internal static class LogCsv
{
    /// <summary>The row of an entry; the rows of traces are called by what was done.</summary>
    public const string EntryRecord = "entry";

    private static readonly SearchValues<char> NeedQuotes = SearchValues.Create(",;\t\"\r\n");

    /// <summary>The columns of an export.</summary>
    public static readonly IReadOnlyList<string> Columns =
    [
        "record", "number", "key", "at", "why", "job", "task", "operation", "method", "unit", "quantity", "setups", "besides",
        "run", "batch", "factor", "thickness", "hardness", "depth", "width", "took", "date", "ended", "worker", "done",
        "setback", "note", "standing", "stopped",
    ];

    /// <summary>Columns that only a sheet of one's own has.</summary>
    public static readonly IReadOnlyList<string> SheetColumns = ["mark", "start", "stop", "species"];

    /// <summary>What an export is, to the reader of lists.</summary>
    public static CsvList List { get; } = new("the log", "time", 2_000_000) { LargestBytes = 500_000_000, MayBeEmpty = true };

    /// <summary>Writes all that there is: by number, each entry behind what it was before.</summary>
    public static string Write(IReadOnlyList<StoredEntry> entries, IReadOnlyList<TraceLine> traces)
    {
        var text = new StringBuilder();
        AddRow(text, Columns);
        var rows = traces
            .Select((trace, order) => (trace.Before.Id.Number, Order: order, Row: RowOf(trace)))
            .Concat(entries.Select(entry => (entry.Entry.Id.Number, Order: int.MaxValue, Row: RowOf(entry))));
        foreach (var row in rows.OrderBy(row => row.Number).ThenBy(row => row.Order))
        {
            AddRow(text, row.Row);
        }

        return text.ToString();
    }

    /// <summary>Adds one row; a field is put into quotes where it must be.</summary>
    public static void AddRow(StringBuilder text, IEnumerable<string> fields) =>
        text.AppendJoin(',', fields.Select(Quoted)).Append("\r\n");

    private static IEnumerable<string> RowOf(StoredEntry entry) => [EntryRecord, entry.Entry.Id.ToString(), entry.Key.ToString(), "", "", .. RowOf(entry.Entry)];

    private static IEnumerable<string> RowOf(TraceLine trace) =>
        [LogWords.WordOf(LogWords.Traces, trace.What), trace.Before.Id.ToString(), trace.Key.ToString(), LogWords.Moment.Format(trace.At), trace.Why, .. RowOf(trace.Before)];

    private static IEnumerable<string> RowOf(LogEntry entry)
    {
        var work = entry.Work;
        return
        [
            entry.Job ?? "",
            entry.Task,
            work?.Operation ?? "",
            work?.Method ?? "",
            work?.Unit ?? "",
            Number(work?.Quantity),
            Number(work?.Setups),
            Number(work?.Besides.Minutes),
            Number(work?.Run),
            Number(work?.Batch),
            Number(work?.Factor),
            Property(Covariate.Thickness),
            Property(Covariate.Hardness),
            Property(Covariate.Depth),
            Property(Covariate.Width),
            Number(entry.Took.Minutes),
            LogWords.Date.Format(entry.On.Date),
            entry.On.Ended is { } ended ? LogWords.Moment.Format(ended) : "",
            entry.Worker,
            entry.Finished ? "yes" : "no",
            LogWords.WordOf(LogWords.Setbacks, entry.Setback),
            entry.Note,
            LogWords.WordOf(LogWords.Standings, entry.Standing),
            entry.Stopped,
        ];

        string Property(Covariate covariate) => work is not null && work.Covariates.TryGetValue(covariate, out var value) ? Number(value) : "";
    }

    // The shortest text that reads back as the same number.
    private static string Number(double? number) => number?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    private static string Quoted(string field) => field.AsSpan().IndexOfAny(NeedQuotes) >= 0 || field != field.Trim()
        ? "\"" + field.Replace("\"", "\"\"", StringComparison.Ordinal) + "\""
        : field;
}
