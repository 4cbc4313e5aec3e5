using Microsoft.Data.Sqlite;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Logbook;

namespace ShopDays.Cli.Store;

/// <summary>The log of a shop: what was worked, when, and how long it took. What a call has returned is safe on the disk.</summary>
internal sealed class ShopLog : IDisposable
{
    /// <summary>The file in the shop's folder.</summary>
    public const string FileName = "shop.db";

    private const string InOrder = "order by date, ended, number";
    private const string NewestFirst = "order by date desc, ended desc, number desc";
    private const string Select = $"select number, key, {EntryColumns.Names} from entry";
    private const string Insert = $"insert into entry (number, key, {EntryColumns.Names}) values ($number, $key, {EntryColumns.Values})";

    private ShopLog(LogFile file) => File = file;

    /// <summary>The file, for other tables of it.</summary>
    public LogFile File { get; }

    /// <summary>Tasks that are begun and not yet logged.</summary>
    public BegunTasks Begun => new(File);

    /// <summary>What was promised of jobs.</summary>
    public Promises Promises => new(File);

    /// <summary>Opens the log to write in it; where there is none it is begun.</summary>
    /// <exception cref="FileTroubleException">The file cannot be written, is no log, or is of a newer program.</exception>
    public static ShopLog Open(ShopFolder folder) => new(LogFile.Open(PathIn(folder)));

    /// <summary>Opens the log to read it.</summary>
    /// <returns>The log; null where nothing was ever logged: no file is made.</returns>
    /// <exception cref="FileTroubleException">The file cannot be read, is no log, or is of a newer program.</exception>
    public static ShopLog? OpenToRead(ShopFolder folder)
    {
        LogFile? file = null;
        try
        {
            file = LogFile.OpenToRead(PathIn(folder));
            if (file is null)
            {
                return null;
            }

            var log = new ShopLog(file);
            file = null;
            return log;
        }
        finally
        {
            file?.Dispose();
        }
    }

    /// <summary>A number that is another one as soon as anybody else has written into the file since this was opened.</summary>
    public long Version => File.Version;

    /// <summary>All entries in the order in which they were; of one date those without a time of day first.</summary>
    public IReadOnlyList<LogEntry> All() => File.Read(file => file.Rows($"{Select} {InOrder}", Entry));

    /// <summary>All entries again: only those are read that were added since, unless one was changed or written down for an earlier date.</summary>
    /// <param name="before">What was read before.</param>
    public EntriesRead AllAfter(EntriesRead before) => File.Read(file =>
    {
        var mark = file.Rows("select coalesce(max(number), 0), (select coalesce(max(place), 0) from trace), count(*) from entry", row => new EntriesMark(row.GetInt64(0), row.GetInt64(1), row.GetInt32(2))).Single();
        if (mark == before.Mark)
        {
            return before;
        }

        if (mark.Changes == before.Mark.Changes && mark.Last > before.Mark.Last)
        {
            var added = file.Rows($"{Select} where number > $last {InOrder}", Entry, ("$last", before.Mark.Last));
            if (before.All.Count + added.Count == mark.Count && (before.All is not [.., var last] || IsInOrder(last, added[0])))
            {
                return new([.. before.All, .. added], mark);
            }
        }

        return new(file.Rows($"{Select} {InOrder}", Entry), mark);
    });

    /// <summary>All entries of a job, in order.</summary>
    public IReadOnlyList<LogEntry> Of(string job) => File.Read(file => file.Rows($"{Select} where job = $job {InOrder}", Entry, ("$job", job)));

    /// <summary>The last so many entries, in order.</summary>
    /// <param name="most">How many at most.</param>
    /// <param name="job">Of which job; null for all.</param>
    public IReadOnlyList<LogEntry> Last(int most, string? job = null)
    {
        var last = File.Read(file => job is null
            ? file.Rows($"{Select} {NewestFirst} limit $most", Entry, ("$most", most))
            : file.Rows($"{Select} where job = $job {NewestFirst} limit $most", Entry, ("$most", most), ("$job", job)));
        last.Reverse();
        return last;
    }

    /// <summary>Some entries, the newest first.</summary>
    /// <param name="most">How many at most.</param>
    /// <param name="after">How many newer ones are passed over.</param>
    public IReadOnlyList<LogEntry> Newest(int most, int after) => File.Read(file => file.Rows($"{Select} {NewestFirst} limit $most offset $after", Entry, ("$most", most), ("$after", after)));

    /// <summary>How many entries there are.</summary>
    /// <param name="job">Of which job; null for all.</param>
    public int Count(string? job = null) => File.Read(file => file
        .Rows("select count(*) from entry where $job is null or job = $job", row => row.GetInt32(0), ("$job", job))
        .Single());

    /// <summary>The entry of a number; null where there is none, or it was deleted.</summary>
    public LogEntry? Find(EntryId number) => File.Read(file => Stored(file, number)?.Entry);

    /// <summary>The names of tasks of a job that the log has seen, in ordinal order.</summary>
    public IReadOnlyList<string> TasksOf(string job) => File.Read(file => file
        .Rows("select distinct task from entry where job = $job union select task from begun where job = $job order by 1", row => row.GetString(0), ("$job", job)));

    /// <summary>Adds an entry.</summary>
    /// <param name="entry">The entry; its number does not count.</param>
    /// <param name="now">The moment of logging.</param>
    /// <returns>Its number.</returns>
    public EntryId Add(LogEntry entry, Instant now) => AddAll([entry], now)[0];

    /// <summary>Adds entries, all or none.</summary>
    /// <inheritdoc cref="Add"/>
    public IReadOnlyList<EntryId> AddAll(IReadOnlyList<LogEntry> entries, Instant now) =>
        File.Write(file => (IReadOnlyList<EntryId>)[.. entries.Select(entry => Put(file, null, NewKey(now), entry))]);

    /// <summary>Adds entries that belong together, all or none, and once: the first is known by a key that was given to them before.</summary>
    /// <param name="key">The key.</param>
    /// <param name="entries">The entries, at least one; their numbers do not count.</param>
    /// <param name="now">The moment of logging.</param>
    /// <returns>Whether they were added; otherwise the log has seen the key.</returns>
    public bool AddSheet(Guid key, IReadOnlyList<LogEntry> entries, Instant now) => File.Write(file =>
    {
        if (HasSeen(file, key))
        {
            return false;
        }

        foreach (var (place, entry) in entries.Index())
        {
            Put(file, null, place == 0 ? key : NewKey(now), entry);
        }

        return true;
    });

    /// <summary>Whether an entry has or had that key.</summary>
    public bool HasSeen(Guid key) => File.Read(file => HasSeen(file, key));

    /// <summary>The entries of a date, in order.</summary>
    public IReadOnlyList<LogEntry> Of(LocalDate date) => File.Read(file => OfDate(file, date));

    /// <summary>Changes an entry and keeps what it was.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="change">What to make of it.</param>
    /// <param name="now">When.</param>
    /// <param name="why">The reason; may be empty.</param>
    /// <returns>What it was and what it is; null where there is no such entry.</returns>
    public (LogEntry Before, LogEntry After)? Change(EntryId number, Func<LogEntry, LogEntry> change, Instant now, string why) => File.Write<(LogEntry, LogEntry)?>(file =>
    {
        if (Stored(file, number) is not { } stored)
        {
            return null;
        }

        var after = change(stored.Entry) with { Id = number };
        if (after == stored.Entry)
        {
            return (stored.Entry, after);
        }

        Traces.Put(file, new(TraceKind.Corrected, now, why, stored.Key, stored.Entry));
        Remove(file, number);
        Put(file, number, stored.Key, after);
        return (stored.Entry, after);
    });

    /// <summary>Takes an entry out; it stays in the trace and can be put back.</summary>
    /// <returns>The entry; null where there is no such one.</returns>
    public LogEntry? Delete(EntryId number, Instant now, string why) => File.Write(file =>
    {
        if (Stored(file, number) is not { } stored)
        {
            return null;
        }

        Traces.Put(file, new(TraceKind.Deleted, now, why, stored.Key, stored.Entry));
        Remove(file, number);
        return stored.Entry;
    });

    /// <summary>Puts a deleted entry back as it was, under its number.</summary>
    /// <returns>The entry; null where no entry of that number was deleted.</returns>
    public LogEntry? Restore(EntryId number, Instant now, string why) => File.Write(file =>
    {
        if (Stored(file, number) is not null || Traces.Of(file, number).LastOrDefault(line => line.What == TraceKind.Deleted) is not { } deleted)
        {
            return null;
        }

        Traces.Put(file, deleted with { What = TraceKind.Restored, At = now, Why = why });
        Put(file, number, deleted.Key, deleted.Before);
        return deleted.Before;
    });

    /// <summary>What became of an entry, oldest first.</summary>
    public IReadOnlyList<TraceLine> TraceOf(EntryId number) => File.Read(file => Traces.Of(file, number));

    /// <summary>All that there is, for an export: the entries by number, and all traces, oldest first.</summary>
    public (IReadOnlyList<StoredEntry> Entries, IReadOnlyList<TraceLine> Traces) Everything() => File.Read(file => (
        (IReadOnlyList<StoredEntry>)file.Rows($"{Select} order by number", row => new StoredEntry(Guid.Parse(row.GetString(1)), Entry(row))),
        Traces.All(file)));

    /// <inheritdoc/>
    public void Dispose() => File.Dispose();

    /// <summary>A key that nothing else has: moment and chance (UUID version 7, RFC 9562).</summary>
    internal static Guid NewKey(Instant now) => Guid.CreateVersion7(now.ToDateTimeOffset());

    internal static EntryId Put(SqliteConnection file, EntryId? number, Guid key, LogEntry entry)
    {
        using var insert = file.Statement(
            $"{Insert} returning number",
            [("$number", number?.Number), ("$key", key.ToString()), .. EntryColumns.Of(entry)]);
        return new((long)insert.ExecuteScalar()!);
    }

    internal static bool HasSeen(SqliteConnection file, Guid key) => file
        .Rows("select exists (select 1 from entry where key = $key) or exists (select 1 from trace where key = $key)", row => row.GetBoolean(0), ("$key", key.ToString()))
        .Single();

    internal static List<LogEntry> OfDate(SqliteConnection file, LocalDate date) =>
        file.Rows($"{Select} where date = $date {InOrder}", Entry, ("$date", LogWords.Date.Format(date)));

    /// <summary>Whether one stands before the other in <see cref="InOrder"/>, the other having the greater number.</summary>
    private static bool IsInOrder(LogEntry one, LogEntry other) =>
        one.On.Date != other.On.Date ? one.On.Date < other.On.Date
        : one.On.Ended is not { } ended || (other.On.Ended is { } otherEnded && ended <= otherEnded);

    private static void Remove(SqliteConnection file, EntryId number) => file.Run("delete from entry where number = $number", ("$number", number.Number));

    private static StoredEntry? Stored(SqliteConnection file, EntryId number) => file
        .Rows($"{Select} where number = $number", row => new StoredEntry(Guid.Parse(row.GetString(1)), Entry(row)), ("$number", number.Number))
        .SingleOrDefault();

    private static LogEntry Entry(SqliteDataReader row) => EntryColumns.Read(row, row.GetInt64(0), lead: 2);

    private static string PathIn(ShopFolder folder) => Path.Combine(folder.Path, FileName);
}
