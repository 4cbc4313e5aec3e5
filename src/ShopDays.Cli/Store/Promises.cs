using Microsoft.Data.Sqlite;
using NodaTime;
using ShopDays.Measures;
using ShopDays.Plans;

namespace ShopDays.Cli.Store;

/// <summary>The promises that are on record: the first of a job stays its first, later ones stand behind it.</summary>
internal sealed class Promises(LogFile log)
{
    private const string Columns = "job, made, planned, p50, p80, p90, chance_of_due, minutes_p10, minutes_p50, minutes_p80, minutes_p90, minutes_mean, rest_from";
    private const string LastEntry = "select coalesce(max(seq), 0) from sqlite_sequence where name = 'entry'";

    /// <summary>The promises of a job, in the order in which they were made.</summary>
    public IReadOnlyList<Promise> Of(string job) => log.Read(file => (IReadOnlyList<Promise>)
    [
        .. file.Rows($"select number, {Columns}, last_entry from promise where job = $job order by number", row => (Number: row.GetInt64(0), Promise: Row(row)), ("$job", job))
            .Select(one => one.Promise with { Tasks = TasksOf(file, one.Number) }),
    ]);

    /// <summary>Keeps a promise.</summary>
    /// <returns>How many of the job were on record before it.</returns>
    public int Keep(Promise promise) => log.Write(file =>
    {
        var before = file.Rows("select count(*) from promise where job = $job", row => row.GetInt32(0), ("$job", promise.Job)).Single();
        using var insert = file.Statement(
            $"insert into promise ({Columns}, last_entry) values ($job, $made, $planned, $p50, $p80, $p90, $chance, $low, $likely, $safe, $high, $mean, $rest, ({LastEntry})) returning number",
            ("$job", promise.Job),
            ("$made", LogWords.Moment.Format(promise.Made)),
            ("$planned", LogWords.Moment.Format(promise.Planned)),
            ("$p50", Text(promise.P50)),
            ("$p80", Text(promise.P80)),
            ("$p90", Text(promise.P90)),
            ("$chance", promise.ChanceOfDue),
            ("$low", promise.HandsOn.P10.Minutes),
            ("$likely", promise.HandsOn.P50.Minutes),
            ("$safe", promise.HandsOn.P80.Minutes),
            ("$high", promise.HandsOn.P90.Minutes),
            ("$mean", promise.HandsOn.Mean.Minutes),
            ("$rest", Text(promise.RestFrom)));
        var number = (long)insert.ExecuteScalar()!;
        foreach (var (place, task) in promise.Tasks.Index())
        {
            file.Run(
                "insert into promised_task (promise, place, task, operation, board, minutes) values ($promise, $place, $task, $operation, $board, $minutes)",
                ("$promise", number),
                ("$place", place),
                ("$task", task.Name),
                ("$operation", task.Operation),
                ("$board", task.Board),
                ("$minutes", task.Expected.Minutes));
        }

        return before;
    });

    private static List<PromisedTask> TasksOf(SqliteConnection file, long promise) => file.Rows(
        "select task, operation, board, minutes from promised_task where promise = $promise order by place",
        row => new PromisedTask(row.GetString(0), EntryColumns.Text(row, 1), EntryColumns.Text(row, 2), WorkTime.FromMinutes(row.GetDouble(3))),
        ("$promise", promise));

    private static Promise Row(SqliteDataReader row) => new()
    {
        Job = row.GetString(1),
        Made = EntryColumns.MomentOf(row.GetString(2)),
        Planned = EntryColumns.MomentOf(row.GetString(3)),
        P50 = Moment(row, 4),
        P80 = Moment(row, 5),
        P90 = Moment(row, 6),
        ChanceOfDue = row.IsDBNull(7) ? null : row.GetDouble(7),
        HandsOn = new(Minutes(row, 8), Minutes(row, 9), Minutes(row, 10), Minutes(row, 11), Minutes(row, 12)),
        RestFrom = Moment(row, 13),
        LastEntry = row.IsDBNull(14) ? null : new(row.GetInt64(14)),
        Tasks = [],
    };

    private static string? Text(Instant? moment) => moment is { } known ? LogWords.Moment.Format(known) : null;

    private static Instant? Moment(SqliteDataReader row, int at) => EntryColumns.Text(row, at) is { } text ? EntryColumns.MomentOf(text) : null;

    private static WorkTime Minutes(SqliteDataReader row, int at) => WorkTime.FromMinutes(row.GetDouble(at));
}
