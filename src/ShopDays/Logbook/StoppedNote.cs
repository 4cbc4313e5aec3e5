namespace ShopDays.Logbook;

/// <summary>Where a maker stopped in a job: what to know before going on.</summary>
/// <remarks>
/// A note belongs to a stretch of a task. It holds until that task is worked on again, whether that stretch has a note of its
/// own or not, and is over when the task is done. A note on the very stretch that finished its task speaks of what comes
/// next in the job, and holds until any work of the job is written down after it. Of several that hold the newest counts.
/// </remarks>
/// <param name="Task">The task by its name.</param>
/// <param name="Text">The note.</param>
/// <param name="On">When its stretch ended.</param>
public sealed record StoppedNote(string Task, string Text, WorkedOn On)
{
    /// <summary>The notes of a job that hold, the newest first.</summary>
    /// <param name="log">The job's entries, in any order; those of other jobs left out.</param>
    /// <param name="running">Work of the job that is begun and not logged, in the order in which it was begun.</param>
    public static IReadOnlyList<StoppedNote> Of(IEnumerable<LogEntry> log, IReadOnlyList<RunningWork> running)
    {
        List<LogEntry> entries = [.. WorkOrder.Of(log)];
        var done = entries.Where(entry => entry.Finished).Select(entry => entry.Task).ToHashSet(StringComparer.Ordinal);
        var last = entries.Index().GroupBy(one => one.Item.Task, StringComparer.Ordinal).Select(stretches => stretches.Last());
        var goingOn = running.Select(one => one.Task).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. running.Where(one => one.Stopped.Length > 0).OrderByDescending(one => one.On.Ended).Select(one => new StoppedNote(one.Task, one.Stopped, one.On)),
            .. last
                .Where(one => one.Item.Stopped.Length > 0 && !goingOn.Contains(one.Item.Task) && (!done.Contains(one.Item.Task) || IsLastOfAll(one.Index, one.Item)))
                .OrderByDescending(one => one.Index)
                .Select(one => new StoppedNote(one.Item.Task, one.Item.Stopped, one.Item.On)),
        ];

        bool IsLastOfAll(int at, LogEntry entry) => at == entries.Count - 1 && running.Count == 0 && entry.Finished;
    }
}
