using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Logbook;
using ShopDays.Plans;

namespace ShopDays.Cli.Json;

/// <summary>The answer of <c>shopdays progress --json</c>.</summary>
internal static class ProgressJson
{
    /// <summary>The progress as an object to be written.</summary>
    public static object Of(ToldProgress told) => new
    {
        AsOf = JsonAnswer.Time(told.Now.InZone(told.Zone)),
        Finished = told.FinishedOn is { } date ? JsonAnswer.Date(date) : null,
        DifferenceMinutes = JsonAnswer.Minutes(told.Progress.Difference),
        Done = StateOf(told.Progress, TaskState.Done),
        HalfDone = StateOf(told.Progress, TaskState.HalfDone),
        ToDo = StateOf(told.Progress, TaskState.ToDo),
        SpentMinutes = JsonAnswer.Minutes(told.Progress.Spent),
        SessionMinutes = JsonAnswer.Minutes(told.SessionsGone),
        PromisedMinutes = JsonAnswer.Minutes(told.Progress.Promised),
        NowMinutes = JsonAnswer.Minutes(told.Progress.Now),
        LeftMinutes = told.Progress.LeftTime is { } left ? EstimateJson.RangeOf(left) : null,
        Finish = told.Ahead is not { } ahead || told.IsOver ? null : new
        {
            Planned = JsonAnswer.Time(ahead.Plan.Finish),
            P50 = JsonAnswer.Time(ahead.Forecast.P50),
            P80 = JsonAnswer.Time(ahead.Forecast.P80),
            P90 = JsonAnswer.Time(ahead.Forecast.P90),
            Due = told.Read.Job.Due is { } due ? JsonAnswer.Date(due) : null,
            ahead.Forecast.ChanceOfDue,
        },
        Stopped = StoppedJson.Of(told.Stopped, told.Marks),
        Moved = MovedJson.Of(told.Moved, told.Why),
        Promise = PromiseOf(told.Progress.Promise, told.Zone),
        PromiseIsRecorded = told.IsRecorded,
        LaterPromises = told.Later.Select(later => PromiseOf(later, told.Zone)),
        Tasks = told.Progress.Changes.Select(change => TaskOf(change, told)),
        Operations = OperationChange.Of(told.Progress).Select(one => new
        {
            one.Operation,
            one.Tasks,
            PromisedMinutes = JsonAnswer.Minutes(one.Promised),
            NowMinutes = JsonAnswer.Minutes(one.Now),
            DifferenceMinutes = JsonAnswer.Minutes(one.Difference),
        }),
        PassedOver = told.Progress.Left.PassedOver.Select(one => one.Task.Name),
        Strays = told.Progress.Standing.Strays.Select(stray => new { stray.Task, Minutes = JsonAnswer.Minutes(stray.Spent) }),
        Waits = told.Progress.Left.UnderWay.Waits.Select(wait => new
        {
            After = wait.AfterWhat,
            Start = JsonAnswer.Time(wait.Start.InZone(told.Zone)),
            End = JsonAnswer.Time(wait.Until.InZone(told.Zone)),
            wait.Reason,
        }),
        Awaited = told.Ahead?.Plan.Waits.Select(WaitJson.AwaitedOf).OfType<object>(),
        told.Notes,
        told.Behind.Entries,
        told.Behind.PriorOnly,
        Times = TimesJson.Of(told.Behind),
    };

    private static object StateOf(JobProgress progress, TaskState state)
    {
        List<TaskChange> some = [.. progress.Changes.Where(one => one.State == state && one.Kind is (ChangeKind.SameTask or ChangeKind.CameIn))];
        return new
        {
            Tasks = some.Count,
            PromisedMinutes = JsonAnswer.Minutes(JobProgress.Sum(some, one => one.Promised)),
            SpentMinutes = JsonAnswer.Minutes(JobProgress.Sum(some, one => one.Spent)),
            LeftMinutes = JsonAnswer.Minutes(JobProgress.Sum(some, one => one.Left)),
        };
    }

    private static object PromiseOf(Promise promise, DateTimeZone zone) => new
    {
        Made = JsonAnswer.Time(promise.Made.InZone(zone)),
        Planned = JsonAnswer.Time(promise.Planned.InZone(zone)),
        P50 = JsonAnswer.Time(promise.P50?.InZone(zone)),
        P80 = JsonAnswer.Time(promise.P80?.InZone(zone)),
        P90 = JsonAnswer.Time(promise.P90?.InZone(zone)),
        promise.ChanceOfDue,
        HandsOnMinutes = EstimateJson.RangeOf(promise.HandsOn),
        Tasks = promise.Tasks.Count,
    };

    private static object TaskOf(TaskChange change, ToldProgress told) => new
    {
        change.Task,
        Mark = change.Kind is ChangeKind.SameTask or ChangeKind.CameIn ? told.Marks.Of(change.Task) : null,
        change.Operation,
        change.State,
        change.Kind,
        PromisedMinutes = JsonAnswer.Minutes(change.Promised),
        SpentMinutes = JsonAnswer.Minutes(change.Spent),
        LeftMinutes = JsonAnswer.Minutes(change.Left),
        DifferenceMinutes = JsonAnswer.Minutes(change.Difference),
    };
}
