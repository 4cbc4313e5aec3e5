using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>Heavy work that is logged: what a tired arm has behind it when the rest of a day is planned.</summary>
internal static class HeavyWork
{
    /// <summary>Heavy work of a date by worker, in whatever job it was.</summary>
    /// <param name="entries">The log.</param>
    /// <param name="read">The shop and the job that is planned.</param>
    /// <param name="graph">Its tasks.</param>
    /// <param name="date">The date.</param>
    public static Dictionary<string, WorkTime> By(IEnumerable<LogEntry> entries, ShopAndJob read, TaskGraph graph, LocalDate date)
    {
        var heavyTasks = graph.Tasks.Where(task => task.WorkClass == WorkClass.Heavy).Select(task => task.Name).ToHashSet(StringComparer.Ordinal);
        return entries
            .Where(entry => entry.On.Date == date && IsHeavy(entry))
            .GroupBy(entry => entry.Worker, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Aggregate(WorkTime.Zero, (sum, entry) => sum + entry.Took), StringComparer.Ordinal);

        bool IsHeavy(LogEntry entry) => entry.Work?.In(read.Operations) is { } timing
            ? timing.Method.WorkClass == WorkClass.Heavy
            : string.Equals(entry.Job, read.LogName, StringComparison.Ordinal) && heavyTasks.Contains(entry.Task);
    }
}
