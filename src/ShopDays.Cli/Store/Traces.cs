using Microsoft.Data.Sqlite;
using ShopDays.Logbook;

namespace ShopDays.Cli.Store;

/// <summary>The table of what entries were before they were changed.</summary>
internal static class Traces
{
    private const string Select = $"select what, at, why, number, key, {EntryColumns.Names} from trace";
    private const string Insert = $"insert into trace (what, at, why, number, key, {EntryColumns.Names}) values ($what, $at, $why, $number, $key, {EntryColumns.Values})";

    /// <summary>Keeps what an entry was.</summary>
    public static void Put(SqliteConnection file, TraceLine line) => file.Run(
        Insert,
        [
            ("$what", LogWords.WordOf(LogWords.Traces, line.What)),
            ("$at", LogWords.Moment.Format(line.At)),
            ("$why", line.Why),
            ("$number", line.Before.Id.Number),
            ("$key", line.Key.ToString()),
            .. EntryColumns.Of(line.Before),
        ]);

    /// <summary>What became of one entry, oldest first.</summary>
    public static List<TraceLine> Of(SqliteConnection file, EntryId number) =>
        file.Rows($"{Select} where number = $number order by place", Line, ("$number", number.Number));

    /// <summary>All of it, oldest first.</summary>
    public static List<TraceLine> All(SqliteConnection file) => file.Rows($"{Select} order by place", Line);

    private static TraceLine Line(SqliteDataReader row) => new(
        LogWords.ValueOf(LogWords.Traces, row.GetString(0)),
        EntryColumns.MomentOf(row.GetString(1)),
        row.GetString(2),
        Guid.Parse(row.GetString(4)),
        EntryColumns.Read(row, row.GetInt64(3), lead: 5));
}
