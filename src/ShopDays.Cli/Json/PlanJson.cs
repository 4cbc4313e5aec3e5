using ShopDays.Cli.Phrases;
using ShopDays.Logbook;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Json;

/// <summary>The answer of <c>shopdays plan --json</c>.</summary>
internal static class PlanJson
{
    /// <summary>The plan as an object to be written.</summary>
    public static object Of(ToldPlan told) => Of(told, told.Answer);

    private static object Of(ToldPlan told, PlanAnswer.Planned answer) => new
    {
        Finish = new
        {
            Planned = JsonAnswer.Time(answer.Plan.Finish),
            P50 = JsonAnswer.Time(answer.Forecast.P50),
            P80 = JsonAnswer.Time(answer.Forecast.P80),
            P90 = JsonAnswer.Time(answer.Forecast.P90),
            Due = told.Due is { } date ? JsonAnswer.Date(date) : null,
            DueCannotBeKept = PlanWords.CannotKeep(answer.Plan, told.Due),
            answer.Forecast.ChanceOfDue,
        },
        LowerBound = JsonAnswer.Time(answer.Plan.LowerBound.At),
        LowerBoundReason = answer.Plan.LowerBound.Reason,
        Bound = BoundOf(answer.Plan.LowerBound, told.Marks),
        Gap = Math.Round(answer.Plan.GapShare, 4, MidpointRounding.AwayFromZero),
        BoundText = PlanWords.OfBound(answer.Plan),
        answer.Plan.ShopDays,
        answer.Plan.Changeovers,
        HeavyInARowMinutes = JsonAnswer.Minutes(answer.Plan.HeavyInARow),
        Visits = answer.Plan.Visits.Select(VisitJson.Of),
        answer.Plan.Schedules,
        SchedulesToLookAt = told.Budget,
        From = told.Rest is { } rest ? JsonAnswer.Time(rest.From) : null,
        Done = told.Rest?.Standing.In(TaskState.Done).Select(one => new { Task = one.Task.Name, Mark = told.Marks.Of(one.Task.Name), Minutes = JsonAnswer.Minutes(one.Spent) }),
        HalfDone = told.Rest?.Standing.In(TaskState.HalfDone).Select(one => new { Task = one.Task.Name, Mark = told.Marks.Of(one.Task.Name), Minutes = JsonAnswer.Minutes(one.Spent) }),
        Stopped = StoppedJson.Of(told.Rest?.Stopped, told.Marks),
        Moved = MovedJson.Of(told.Rest?.Moved, told.Rest?.Why ?? []),
        Sessions = answer.Plan.Sessions.Select(session => SessionOf(session, told.Marks)),
        Waits = answer.Plan.Waits.Select(wait => new
        {
            After = wait.AfterWhat,
            Start = JsonAnswer.Time(wait.Start),
            End = JsonAnswer.Time(wait.End),
            wait.Reason,
            Awaited = WaitJson.AwaitedOf(wait),
            Nights = NightsJson.Of(wait.Slowed),
        }),
        Deciding = answer.Forecast.Deciding.Select(one => new { Task = one.Task.Name, one.Share, Awaited = one.Awaited is not null }),
        Spoiling = answer.Spoiling is { } spoiling ? SpoilingJson.Of(spoiling, told.SpoilingNotes) : null,
        SessionsAtRisk = SessionAtRiskJson.Of(answer.Forecast),
        Finishes = answer.Forecast.Finishes.GroupBy(finish => finish.InZone(answer.Plan.Finish.Zone).Date).Select(day => new { Date = JsonAnswer.Date(day.Key), Trials = day.Count() }),
        Cautions = told.Cautions.Select(caution => new { caution.Kind, caution.Text, caution.SaidBy }),
        Remarks = told.Remarks.Select(RemarkJson.Of),
        told.Notes,
        MissingSpares = LayoutJson.UnplacedOf(told.Layout, told.Read.Located.Format),
        MatchesNotKept = LayoutJson.MatchesNotKept(told.Layout),
        NotHonoured = LayoutJson.NotHonoured(told.Layout),
        UnusedHours = UnusedJson.Of(told.Unused, told.Read.Shop),
        answer.Forecast.Trials,
        answer.Forecast.Unfinished,
        answer.Forecast.Overruns,
        answer.Forecast.Seed,
        told.Behind.Entries,
        told.Behind.PriorOnly,
        Times = TimesJson.Of(told.Behind),
        Promise = told.Kept is not { } kept ? null : new { Made = JsonAnswer.Time(kept.Promise.Made.InZone(told.Read.Shop.Place.Zone)), kept.Before },
    };

    /// <summary>Why there is no plan, as an object to be written.</summary>
    public static object Of(PlanAnswer.CannotBePlanned answer) => new
    {
        CannotBePlanned = answer.Reasons.Select(one => new { one.Order, Task = one.Task?.Name, one.Kind, one.Limit, one.Cure }),
    };

    private static object BoundOf(PlanBound bound, TaskMarks marks) => new
    {
        At = JsonAnswer.Time(bound.At),
        bound.Kind,
        Binds = bound.Binds.Select(one => new { one.Kind, Task = one.Task?.Name, Without = JsonAnswer.Time(one.Without) }),
        From = bound.From is { } from ? JsonAnswer.Time(from) : null,
        By = bound.By is { } by ? JsonAnswer.Time(by) : null,
        NeededMinutes = bound.Needed is { } needed ? JsonAnswer.Minutes(needed) : (double?)null,
        ThereMinutes = bound.There is { } there ? JsonAnswer.Minutes(there) : (double?)null,
        Tasks = bound.Tasks.Select(task => new { Task = task.Name, Mark = marks.Of(task.Name) }),
    };

    private static object SessionOf(PlannedSession session, TaskMarks marks) => new
    {
        Start = JsonAnswer.Time(session.Session.Start),
        End = JsonAnswer.Time(session.Session.End),
        WorkStart = JsonAnswer.Time(session.Session.WorkStart),
        WorkEnd = JsonAnswer.Time(session.Session.WorkEnd),
        session.Session.Worker,
        Tasks = session.Work.Select(work => new
        {
            Task = work.Task.Name,
            Mark = marks.Of(work.Task.Name),
            Operation = (work.Task.Timing as TaskTiming.ByOperation)?.Operation.Name,
            Method = (work.Task.Timing as TaskTiming.ByOperation)?.Method.Name,
            Part = work.Task.Parts.Count == 0 ? null : string.Join(", ", work.Task.Parts),
            work.Task.Board,
            Start = JsonAnswer.Time(work.Start),
            End = JsonAnswer.Time(work.End),
            Minutes = JsonAnswer.Minutes(work.HandsOn),
            work.Task.Crew,
            Bouts = work.Bouts is { } bouts ? new { bouts.Count, Minutes = JsonAnswer.Minutes(bouts.Each), Between = bouts.Between?.Name } : null,
            Done = work.IsLastPiece,
        }),
    };
}
