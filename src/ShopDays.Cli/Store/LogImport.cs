using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Data.Sqlite;
using NodaTime;
using ShopDays.Logbook;

namespace ShopDays.Cli.Store;

/// <summary>What came of an import.</summary>
/// <param name="Added">The entries that are new in the log, with their numbers.</param>
/// <param name="AlreadyThere">How many rows the log had before, or had and deleted.</param>
/// <param name="Traces">How many traces of changed and deleted entries came with them.</param>
internal sealed record Imported(IReadOnlyList<LogEntry> Added, int AlreadyThere, int Traces);

/// <summary>
/// Puts rows into the log, all or none, and none twice. Entries of an export are known by their keys and keep their numbers
/// where these are still free; a row of a maker's own gets a key made of what stands in it, so that the same sheet typed back
/// again is known, even where the entry was corrected or deleted in the meantime.
/// </summary>
internal static class LogImport
{
    /// <summary>Imports.</summary>
    /// <param name="log">The log.</param>
    /// <param name="rows">The rows in the order of the file.</param>
    public static Imported Into(ShopLog log, IReadOnlyList<SheetRow> rows) => log.File.Write(file =>
    {
        var known = KnownKeys(file);
        var highest = HighestNumber(file);
        var own = PutOwn(file, rows, known);
        var exported = rows.OfType<SheetRow.Exported>().Where(row => !known.Contains(row.Stored.Key)).Select(row => row.Stored).ToList();
        var traces = rows.OfType<SheetRow.ExportedTrace>().Where(row => !known.Contains(row.Line.Key)).Select(row => row.Line).ToList();
        highest = Math.Max(highest, HighestNumber(file));
        var numbers = new Dictionary<Guid, EntryId>();
        var added = new List<LogEntry>(own);
        var twice = 0;
        var byKey = exported.ToLookup(stored => stored.Key);
        var order = exported.Select(stored => (stored.Key, stored.Entry.Id.Number)).Concat(traces.Select(line => (line.Key, line.Before.Id.Number))).OrderBy(one => one.Number).Select(one => one.Key).Distinct();
        var wanted = exported.Select(stored => (stored.Key, stored.Entry.Id.Number)).Concat(traces.Select(line => (line.Key, line.Before.Id.Number)))
            .GroupBy(one => one.Key).ToDictionary(one => one.Key, one => one.First().Number);
        foreach (var key in order)
        {
            var number = new EntryId(wanted[key] > highest ? wanted[key] : highest + 1);
            highest = number.Number;
            numbers.Add(key, number);
            if (byKey[key].FirstOrDefault() is { } stored)
            {
                ShopLog.Put(file, number, key, stored.Entry);
                added.Add(stored.Entry with { Id = number });
                twice += byKey[key].Count() - 1;
            }
        }

        foreach (var line in traces)
        {
            Traces.Put(file, line with { Before = line.Before with { Id = numbers[line.Key] } });
        }

        Reserve(file, highest);
        var there = rows.Count(row => row is SheetRow.Own) - own.Count + rows.OfType<SheetRow.Exported>().Count() - exported.Count + twice;
        return new Imported(added, there, traces.Count);
    });

    private static List<LogEntry> PutOwn(SqliteConnection file, IReadOnlyList<SheetRow> rows, HashSet<Guid> known)
    {
        var added = new List<LogEntry>();
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        var logged = new Dictionary<LocalDate, Dictionary<string, int>>();
        foreach (var entry in rows.OfType<SheetRow.Own>().Select(row => row.Entry))
        {
            var content = ContentOf(entry);
            var before = seen.GetValueOrDefault(content);
            seen[content] = before + 1;
            if (!logged.TryGetValue(entry.On.Date, out var ofDate))
            {
                ofDate = ShopLog.OfDate(file, entry.On.Date).GroupBy(ContentOf, StringComparer.Ordinal).ToDictionary(one => one.Key, one => one.Count(), StringComparer.Ordinal);
                logged.Add(entry.On.Date, ofDate);
            }

            var key = KeyOf(content, before);
            if (before >= ofDate.GetValueOrDefault(content) && !known.Contains(key))
            {
                added.Add(entry with { Id = ShopLog.Put(file, null, key, entry) });
            }
        }

        return added;
    }

    /// <summary>What makes two rows the same: all but the figures of the work, which the job may have changed since, and the standing.</summary>
    private static string ContentOf(LogEntry entry) => string.Join('\u001f', new[]
    {
        entry.Job ?? "",
        entry.Task,
        entry.Took.Minutes.ToString("R", CultureInfo.InvariantCulture),
        LogWords.Date.Format(entry.On.Date),
        entry.On.Ended is { } ended ? LogWords.Moment.Format(ended) : "",
        entry.Worker,
        entry.Finished ? "done" : "half",
        LogWords.WordOf(LogWords.Setbacks, entry.Setback),
        entry.Note,
        entry.Job is null && entry.Work is { } work ? string.Create(CultureInfo.InvariantCulture, $"{work.Method} {work.Quantity:R}") : "",
    }) + (entry.Stopped.Length == 0 ? "" : "\u001f" + entry.Stopped);

    /// <summary>A key of a row's content and of how many like it stand before it (UUID version 8, RFC 9562: made as the maker of it likes).</summary>
    private static Guid KeyOf(string content, int before)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(FormattableString.Invariant($"{before}\u001f{content}")));
        hash[6] = (byte)((hash[6] & 0x0F) | 0x80);
        hash[8] = (byte)((hash[8] & 0x3F) | 0x80);
        return new(hash.AsSpan(0, 16), bigEndian: true);
    }

    private static HashSet<Guid> KnownKeys(SqliteConnection file) =>
        [.. file.Rows("select key from entry union select key from trace", row => Guid.Parse(row.GetString(0)))];

    private static long HighestNumber(SqliteConnection file) => file
        .Rows("select max(coalesce((select seq from sqlite_sequence where name = 'entry'), 0), coalesce((select max(number) from trace), 0))", row => row.GetInt64(0))
        .Single();

    /// <summary>Sees to it that no number up to this one is given again.</summary>
    private static void Reserve(SqliteConnection file, long highest)
    {
        if (file.Run("update sqlite_sequence set seq = max(seq, $highest) where name = 'entry'", ("$highest", highest)) == 0)
        {
            file.Run("insert into sqlite_sequence (name, seq) values ('entry', $highest)", ("$highest", highest));
        }
    }
}
