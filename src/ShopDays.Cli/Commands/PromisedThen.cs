using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>A job as it was when it was promised, and why its finish is not there any more.</summary>
internal static class PromisedThen
{
    /// <summary>Why the finish moved.</summary>
    /// <param name="workings">The job.</param>
    /// <param name="graph">Its order of work as it is now.</param>
    /// <param name="job">The job as it stands.</param>
    /// <param name="progress">The same against its promise.</param>
    /// <returns>The causes; null where the rest cannot be planned, or the job as it was cannot be laid out any more.</returns>
    public static MovedFinish? Moved(Workings workings, TaskGraph graph, JobNow job, JobProgress progress)
    {
        if (job.Ahead is not PlanAnswer.Planned ahead)
        {
            return null;
        }

        var rates = workings.Rates.Before(workings.Read);
        var before = workings.Read.SawnBoards.Count == 0 ? workings : workings.BeforeSawing(rates);
        var then = before == workings ? graph : before.Missing.Count == 0 && before.Order is OrderOfWork.Made made ? made.Graph : null;
        return then is null ? null : workings.Moved(progress, JobOf(workings, progress.Promise, then, rates), job.Request, ahead);
    }

    /// <summary>
    /// A promise keeps what was expected of each task; the plan was made with the middle of its drawn times, a little off
    /// that. Drawn again by the rates of then, they are what they were.
    /// </summary>
    private static PromisedJob JobOf(Workings workings, Promise promise, TaskGraph graph, LearnedRates rates)
    {
        var standing = JobStanding.Of(graph, promise.RestFrom is null ? [] : workings.Rates.EntriesOf(workings.Read).Where(entry => IsBefore(entry, promise.Made, workings.Read)));
        var expected = promise.Tasks.ToDictionary(task => task.Name, task => task.Expected, StringComparer.Ordinal);
        var drawn = promise.RestFrom is null ? rates.Model.Draw(graph.Tasks, Workings.Draws, workings.Seed).OfEach() : null;
        return new(graph, [.. graph.Tasks.Select(TimeOf)], standing, promise.RestFrom ?? workings.Read.Shop.Place.Zone.AtStartOfDay(workings.Read.Job.Start).ToInstant());

        WorkTime TimeOf(ShopTask task) => (expected.TryGetValue(task.Name, out var time), drawn) switch
        {
            (true, { } draws) => draws[task.Id].P50 * (time / rates.Model.LikelyTime(task)),
            (true, null) => time,
            _ => WorkTime.Zero,
        };
    }

    /// <summary>Of an entry with its date alone the day counts as over when the next one begins.</summary>
    private static bool IsBefore(LogEntry entry, Instant made, ShopAndJob read) => entry.On.Ended is { } ended
        ? ended <= made
        : entry.On.Date < made.InZone(read.Shop.Place.Zone).Date;
}
