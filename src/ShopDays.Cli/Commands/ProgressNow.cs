using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Logbook;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>How a job stands against what was promised of it, or would have been.</summary>
internal static class ProgressNow
{
    /// <summary>Works it out.</summary>
    /// <param name="workings">The job.</param>
    /// <param name="graph">Its whole order of work.</param>
    /// <param name="job">How it stands.</param>
    /// <param name="now">The moment.</param>
    /// <param name="unrecorded">What would have been promised, where it was worked out before; it is worked out where no promise is on record and this is null.</param>
    /// <returns>What is to be told; null where the job could never be planned.</returns>
    public static ToldProgress? Of(Workings workings, TaskGraph graph, JobNow job, Instant now, Promise? unrecorded = null)
    {
        var promises = job.Record.Promises;
        if ((promises.Count > 0 ? promises[0] : unrecorded ?? PromiseThen.Of(workings)) is not { } promise)
        {
            return null;
        }

        var progress = job.Against(promise, workings);
        // What is over is looked at as it was when its last task was done: neither its finish nor what moved it changes with the days since.
        if (progress.IsDone && EndOf(job, workings.Read.Shop.Place.Zone) is var end && end < now)
        {
            job = new(workings, graph, job.Record, end);
            progress = job.Against(promise, workings);
        }

        return new()
        {
            Read = workings.Read,
            Progress = progress,
            Moved = PromisedThen.Moved(workings, graph, job, progress, promises.Count > 0),
            Stopped = job.Stopped,
            Ahead = job.Ahead as PlanAnswer.Planned,
            Marks = new(graph.Tasks.Select(task => task.Name)),
            IsRecorded = promises.Count > 0,
            Later = [.. promises.Skip(1)],
            Behind = workings.Rates.Behind,
            Now = now,
            SessionsGone = job.SessionsGone,
        };
    }

    /// <summary>When the last of a job's tasks was done; of one whose time of day is not known the last minute of its date.</summary>
    private static Instant EndOf(JobNow job, DateTimeZone zone) => job.Standing.Tasks
        .Select(task => task.Last)
        .OfType<WorkedOn>()
        .DefaultIfEmpty(WorkedOn.At(job.At, zone))
        .Max(last => last.Ended ?? (zone.AtStartOfDay(last.Date.PlusDays(1)).ToInstant() - Duration.FromMinutes(1)));
}
