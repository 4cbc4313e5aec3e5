using Microsoft.Data.Sqlite;
using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Store;

/// <summary>An entry as the columns of a row and back.</summary>
internal static class EntryColumns
{
    /// <summary>The columns of what was done.</summary>
    public const string OfWork = "operation, method, unit, quantity, setups, besides, run, batch, factor, thickness, hardness, depth, width";

    /// <summary>All but the number and the key.</summary>
    public const string Names = $"job, task, {OfWork}, took, date, ended, worker, finished, setback, note, standing, stopped";

    /// <summary>The values that go into what was done.</summary>
    public const string WorkValues = "$operation, $method, $unit, $quantity, $setups, $besides, $run, $batch, $factor, $thickness, $hardness, $depth, $width";

    /// <summary>The values that go into them.</summary>
    public const string Values = $"$job, $task, {WorkValues}, $took, $date, $ended, $worker, $finished, $setback, $note, $standing, $stopped";

    /// <summary>How many columns what was done takes.</summary>
    public const int CountOfWork = 13;

    private const int WorkAt = 2;
    private const int TookAt = 15;

    private static readonly Covariate[] Covariates = [Covariate.Thickness, Covariate.Hardness, Covariate.Depth, Covariate.Width];

    /// <summary>The values of an entry.</summary>
    public static IEnumerable<(string Name, object? Value)> Of(LogEntry entry) =>
    [
        ("$job", entry.Job),
        ("$task", entry.Task),
        .. Of(entry.Work),
        ("$took", entry.Took.Minutes),
        ("$date", LogWords.Date.Format(entry.On.Date)),
        ("$ended", entry.On.Ended is { } ended ? LogWords.Moment.Format(ended) : null),
        ("$worker", entry.Worker),
        ("$finished", entry.Finished ? 1 : 0),
        ("$setback", LogWords.WordOf(LogWords.Setbacks, entry.Setback)),
        ("$note", entry.Note),
        ("$standing", LogWords.WordOf(LogWords.Standings, entry.Standing)),
        ("$stopped", entry.Stopped),
    ];

    /// <summary>The values of what was done.</summary>
    public static IEnumerable<(string Name, object? Value)> Of(LoggedWork? work) =>
    [
        ("$operation", work?.Operation),
        ("$method", work?.Method),
        ("$unit", work?.Unit),
        ("$quantity", work?.Quantity),
        ("$setups", work?.Setups),
        ("$besides", work?.Besides.Minutes),
        ("$run", work?.Run),
        ("$batch", work?.Batch),
        ("$factor", work?.Factor),
        .. Covariates.Select(one => ("$" + NameOf(one), work is not null && work.Covariates.TryGetValue(one, out var value) ? (object?)value : null)),
    ];

    /// <summary>Reads a row whose columns are some leading ones and then <see cref="Names"/>.</summary>
    /// <param name="row">The row.</param>
    /// <param name="number">The number of the entry.</param>
    /// <param name="lead">How many columns stand before.</param>
    public static LogEntry Read(SqliteDataReader row, long number, int lead) => new()
    {
        Id = new(number),
        Job = Text(row, lead),
        Task = row.GetString(lead + 1),
        Work = ReadWork(row, lead + WorkAt),
        Took = WorkTime.FromMinutes(row.GetDouble(lead + TookAt)),
        On = new(LogWords.Date.Parse(row.GetString(lead + TookAt + 1)).Value, Text(row, lead + TookAt + 2) is { } ended ? MomentOf(ended) : null),
        Worker = row.GetString(lead + TookAt + 3),
        Finished = row.GetInt64(lead + TookAt + 4) == 1,
        Setback = LogWords.ValueOf(LogWords.Setbacks, row.GetString(lead + TookAt + 5)),
        Note = row.GetString(lead + TookAt + 6),
        Standing = LogWords.ValueOf(LogWords.Standings, row.GetString(lead + TookAt + 7)),
        Stopped = row.GetString(lead + TookAt + 8),
    };

    /// <summary>Reads what was done from the columns of <see cref="OfWork"/>.</summary>
    public static LoggedWork? ReadWork(SqliteDataReader row, int at)
    {
        if (row.IsDBNull(at))
        {
            return null;
        }

        var covariates = new Dictionary<Covariate, double>();
        for (var index = 0; index < Covariates.Length; index++)
        {
            if (!row.IsDBNull(at + 9 + index))
            {
                covariates[Covariates[index]] = row.GetDouble(at + 9 + index);
            }
        }

        return new()
        {
            Operation = row.GetString(at),
            Method = row.GetString(at + 1),
            Unit = row.GetString(at + 2),
            Quantity = row.GetDouble(at + 3),
            Setups = row.GetDouble(at + 4),
            Besides = WorkTime.FromMinutes(row.GetDouble(at + 5)),
            Run = row.GetInt32(at + 6),
            Batch = row.GetInt32(at + 7),
            Factor = row.GetDouble(at + 8),
            Covariates = covariates,
        };
    }

    /// <summary>A moment as it is written in the file.</summary>
    public static Instant MomentOf(string text) => LogWords.Moment.Parse(text).Value;

    /// <summary>A text, or null where the column is empty.</summary>
    public static string? Text(SqliteDataReader row, int at) => row.IsDBNull(at) ? null : row.GetString(at);

    private static string NameOf(Covariate covariate) => covariate switch
    {
        Covariate.Thickness => "thickness",
        Covariate.Hardness => "hardness",
        Covariate.Depth => "depth",
        Covariate.Width => "width",
        _ => throw new ArgumentOutOfRangeException(nameof(covariate), covariate, "no column keeps this property"),
    };
}
