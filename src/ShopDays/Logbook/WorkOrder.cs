namespace ShopDays.Logbook;

/// <summary>
/// The order in which stretches of work were done. The date decides. Of a task's stretches of one date their moments do, if
/// each has one; where one was typed without a time of day, as from a sheet, they count in the order in which they were written
/// down, which is that of their numbers: what ended a task is written down after what began it.
/// </summary>
public static class WorkOrder
{
    /// <summary>Puts entries in order; those of each date task by task.</summary>
    /// <param name="entries">The entries, in any order.</param>
    public static IEnumerable<LogEntry> Of(IEnumerable<LogEntry> entries) => entries
        .GroupBy(entry => (entry.On.Date, entry.Job, Task: entry.Job is null ? null : entry.Task))
        .Select(InOrder)
        .OrderBy(stretches => stretches[0].On.Date)
        .ThenBy(stretches => stretches.Min(entry => entry.On.Ended))
        .ThenBy(stretches => stretches.Min(entry => entry.Id.Number))
        .SelectMany(stretches => stretches);

    private static List<LogEntry> InOrder(IEnumerable<LogEntry> ofOneTaskAndDate)
    {
        var stretches = ofOneTaskAndDate.OrderBy(entry => entry.Id.Number).ToList();
        return stretches.TrueForAll(entry => entry.On.Ended is not null) ? [.. stretches.OrderBy(entry => entry.On.Ended)] : stretches;
    }
}
