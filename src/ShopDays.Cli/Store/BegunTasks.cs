using Microsoft.Data.Sqlite;
using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Store;

/// <summary>The tasks of the log that are begun and not yet logged: they stand on the disk from the moment they are begun.</summary>
internal sealed class BegunTasks(LogFile log)
{
    private const string Select = $"select worker, began, paused_at, paused_minutes, job, task, {EntryColumns.OfWork}, stopped, gone_on from begun";
    private const string Same = "worker = $worker and task = $task and job is $job";

    /// <summary>All of them, in the order in which they were begun.</summary>
    public IReadOnlyList<BegunWork> All() => log.Read(file => file.Rows($"{Select} order by place", Row));

    /// <summary>What a worker has begun of a task; null for nothing.</summary>
    public BegunWork? Find(string worker, string? job, string task) =>
        All().FirstOrDefault(one => one.Worker == worker && one.Job == job && one.Task == task);

    /// <summary>Begins a task, or goes on with one that was laid aside.</summary>
    /// <returns>The task as it stands now; the one that is in the way where its worker is on another.</returns>
    public (BegunWork Work, bool IsBegun) Start(BegunWork work) => log.Write(file =>
    {
        var theirs = Of(file, work.Worker);
        if (theirs.FirstOrDefault(one => one.PausedAt is null) is { } atIt)
        {
            return (atIt, false);
        }

        if (theirs.FirstOrDefault(one => (one.Job, one.Task) == (work.Job, work.Task)) is not { PausedAt: { } laidAside } paused)
        {
            file.Run(
                $"insert into begun (worker, job, task, {EntryColumns.OfWork}, began) values ($worker, $job, $task, {EntryColumns.WorkValues}, $began)",
                [("$worker", work.Worker), ("$job", work.Job), ("$task", work.Task), .. EntryColumns.Of(work.Work), ("$began", LogWords.Moment.Format(work.Began))]);
            return (work, true);
        }

        // A clock that was put back must not make a pause that is shorter than nothing.
        var minutes = Math.Max(0, (work.Began - laidAside).TotalMinutes);
        var gone = paused with { PausedAt = null, Paused = paused.Paused + WorkTime.FromMinutes(minutes), GoneOn = work.Began };
        file.Run(
            $"update begun set paused_at = null, paused_minutes = $minutes, gone_on = $now where {Same}",
            ("$minutes", gone.Paused.Minutes),
            ("$now", LogWords.Moment.Format(work.Began)),
            ("$worker", work.Worker),
            ("$job", work.Job),
            ("$task", work.Task));
        return (gone, true);
    });

    /// <summary>Lays aside what a worker is on.</summary>
    /// <param name="worker">Who.</param>
    /// <param name="now">When.</param>
    /// <param name="stopped">Where it was stopped; null where that is not said, and what was said before stays.</param>
    /// <returns>The task; null where the worker is on none.</returns>
    public BegunWork? Pause(string worker, Instant now, string? stopped = null) => log.Write(file =>
    {
        if (Of(file, worker).FirstOrDefault(one => one.PausedAt is null) is not { } atIt)
        {
            return null;
        }

        file.Run(
            "update begun set paused_at = $now, stopped = coalesce($stopped, stopped) where worker = $worker and paused_at is null",
            ("$now", LogWords.Moment.Format(now)),
            ("$stopped", stopped),
            ("$worker", worker));
        return atIt with { PausedAt = now, Stopped = stopped ?? atIt.Stopped };
    });

    /// <summary>Ends a begun task and logs it, in one go.</summary>
    /// <param name="work">The task.</param>
    /// <param name="entry">What to log; null for nothing, as when it was begun by mistake.</param>
    /// <param name="now">When.</param>
    /// <param name="key">The key of the entry; null for a new one.</param>
    /// <returns>The number of the entry; null where nothing was logged.</returns>
    public EntryId? End(BegunWork work, LogEntry? entry, Instant now, Guid? key = null) => log.Write<EntryId?>(file =>
    {
        var ended = file.Run($"delete from begun where {Same}", ("$worker", work.Worker), ("$job", work.Job), ("$task", work.Task));
        return ended == 0 || entry is null ? null : ShopLog.Put(file, null, key ?? ShopLog.NewKey(now), entry);
    });

    private static List<BegunWork> Of(SqliteConnection file, string worker) =>
        file.Rows($"{Select} where worker = $worker order by place", Row, ("$worker", worker));

    private static BegunWork Row(SqliteDataReader row) => new()
    {
        Worker = row.GetString(0),
        Began = EntryColumns.MomentOf(row.GetString(1)),
        PausedAt = EntryColumns.Text(row, 2) is { } paused ? EntryColumns.MomentOf(paused) : null,
        Paused = WorkTime.FromMinutes(row.GetDouble(3)),
        Job = EntryColumns.Text(row, 4),
        Task = row.GetString(5),
        Work = EntryColumns.ReadWork(row, 6),
        Stopped = row.GetString(6 + EntryColumns.CountOfWork),
        GoneOn = EntryColumns.Text(row, 7 + EntryColumns.CountOfWork) is { } goneOn ? EntryColumns.MomentOf(goneOn) : null,
    };
}
