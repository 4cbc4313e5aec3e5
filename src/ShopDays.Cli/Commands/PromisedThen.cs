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
    /// <param name="isRecorded">Whether the promise is on record; otherwise it is what would have been promised when the first time of the job was logged.</param>
    /// <returns>The causes; null where the rest cannot be planned, or the job as it was cannot be laid out any more.</returns>
    public static MovedFinish? Moved(Workings workings, TaskGraph graph, JobNow job, JobProgress progress, bool isRecorded)
    {
        if (job.Ahead is not PlanAnswer.Planned ahead)
        {
            return null;
        }

        var rates = workings.Rates.Before(workings.Read);
        var before = workings.Read.SawnBoards.Count == 0 ? workings : workings.BeforeSawing(rates);
        var then = before == workings ? graph : before.Missing.Count == 0 && before.Order is OrderOfWork.Made made ? made.Graph : null;
        return then is null ? null : workings.Moved(progress, JobOf(workings, before, progress.Promise, then, isRecorded ? RatesOf(workings, progress.Promise) : rates), job.Request, ahead);
    }

    /// <summary>
    /// The rates by which a promise was made. Where it does not know what the log held then, one of a whole job stands before
    /// all that is logged of it, even of what was done on an earlier date.
    /// </summary>
    private static LearnedRates RatesOf(Workings workings, Promise promise)
    {
        var (read, rates) = (workings.Read, workings.Rates);
        return rates.Behind.PriorOnly
            ? rates
            : LearnedRates.From(
                [.. rates.Entries.Where(entry => IsBefore(entry, promise, read) && (promise.RestFrom is not null || promise.LastEntry is not null || !string.Equals(entry.Job, read.LogName, StringComparison.Ordinal)))],
                read.Shop,
                read.Operations,
                promise.Made.InZone(read.Shop.Place.Zone).Date);
    }

    /// <summary>
    /// A promise keeps what was expected of each task. Drawn again by the rates of then its times are what they were, and are
    /// set to what was expected where those rates cannot be had any more: where it is a minute or more off.
    /// </summary>
    private static PromisedJob JobOf(Workings workings, Workings before, Promise promise, TaskGraph graph, LearnedRates rates)
    {
        var read = workings.Read;
        var standing = JobStanding.Of(graph, promise.RestFrom is null ? [] : workings.Rates.EntriesOf(read).Where(entry => IsBefore(entry, promise, read)));
        var zone = read.Shop.Place.Zone;
        var made = promise.Made.InZone(zone).Date;
        graph = graph.AsKnownOn(made);
        var left = RemainingWork.Of(graph, standing, workings.Calendars, read.Job.Start, promise.RestFrom ?? Instant.Min(promise.Made, zone.AtStartOfDay(read.Job.Start).ToInstant()), HeavyOn(made), HeavyOn(made.PlusDays(-1)));
        var draws = before.SpoilingOf(graph, left.Graph, rates.Model, rates.Spoiling).On(rates.Model.Draw(left.Graph.Tasks, Workings.Draws, workings.Seed, left.Spent));
        var likely = left.LikelyTimes(rates.Model, draws);
        var expected = promise.Tasks.ToDictionary(task => task.Name, task => task.Expected, StringComparer.Ordinal);
        double[] factors = [.. left.Graph.Tasks.Select(FactorOf)];
        return new(graph, standing, left, draws with { Minutes = [.. draws.Minutes.Select(trial => trial.Zip(factors, (minutes, factor) => minutes * factor).ToArray())] });

        Dictionary<string, WorkTime>? HeavyOn(LocalDate date) =>
            promise.RestFrom is null ? null : HeavyWork.By(workings.Rates.Entries.Where(entry => IsBefore(entry, promise, read)), read, graph, date);

        double FactorOf(ShopTask task)
        {
            var spent = standing.Tasks[left.Ids[task.Id]].Spent;
            return expected.TryGetValue(task.Name, out var time) ? FactorFor(time - spent, likely[left.Ids[task.Id]]) : 0;
        }
    }

    /// <summary>Older promises keep times that are not in whole minutes: less than one apart, they are the same.</summary>
    private static double FactorFor(WorkTime expected, WorkTime likely) => Math.Abs(expected.Minutes - likely.Minutes) < 1 ? 1 : Math.Max(0, expected / likely);

    /// <summary>
    /// Whether an entry was in the log when something was promised: by its number, for work of an earlier date may be
    /// typed in later. Where the promise does not know, by when it ended; one with its date alone when the next day begins.
    /// </summary>
    private static bool IsBefore(LogEntry entry, Promise promise, ShopAndJob read) => (promise.LastEntry, entry.On.Ended) switch
    {
        ({ } last, _) => entry.Id.Number <= last.Number,
        (null, { } ended) => ended <= promise.Made,
        _ => entry.On.Date < promise.Made.InZone(read.Shop.Place.Zone).Date,
    };
}
