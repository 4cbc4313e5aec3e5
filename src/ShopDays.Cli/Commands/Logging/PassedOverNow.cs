using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Logbook;
using ShopDays.Work;

namespace ShopDays.Cli.Commands.Logging;

/// <summary>What was passed over by work that has just been logged or begun: while the maker still knows, it is asked about at once.</summary>
internal static class PassedOverNow
{
    /// <summary>Says it; nothing where nothing was passed over, or the job cannot be planned any more.</summary>
    /// <param name="answers">Where it is said.</param>
    /// <param name="tasks">The job's tasks.</param>
    /// <param name="clock">Tells how long work goes on that is begun.</param>
    /// <param name="logged">The names of the tasks that were just logged or begun.</param>
    public static void Say(Screen answers, JobTasks tasks, IClock clock, IEnumerable<string> logged)
    {
        if (tasks.Workings is not { Order: OrderOfWork.Made { Graph: var graph } } workings)
        {
            return;
        }

        using var log = ShopLog.OpenToRead(workings.Read.Folder);
        var entries = (log?.All() ?? []).Where(entry => string.Equals(entry.Job, tasks.Job, StringComparison.Ordinal));
        var standing = JobStanding.Of(graph, entries, OnRecord.Of(workings.Read, clock.GetCurrentInstant()).Running);
        var now = logged.ToHashSet(StringComparer.Ordinal);
        var passed = PassedOver.In(graph, standing).Where(one => now.Contains(one.By.Task.Name)).ToList();
        if (PassedOverWords.Of(passed, new(graph.Tasks.Select(task => task.Name)), tasks.Job) is { } said)
        {
            answers.Wrapped(said);
        }
    }
}
