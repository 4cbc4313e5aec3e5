using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Json;

/// <summary>The answer of <c>shopdays plan --json</c>.</summary>
internal static class PlanJson
{
    /// <summary>The plan as an object to be written.</summary>
    public static object Of(PlanAnswer.Planned answer, NodaTime.LocalDate? due, IReadOnlyList<Caution> cautions, IReadOnlyList<Remark> remarks) => new
    {
        Finish = new
        {
            Planned = JsonAnswer.Time(answer.Plan.Finish),
            P50 = JsonAnswer.Time(answer.Forecast.P50),
            P80 = JsonAnswer.Time(answer.Forecast.P80),
            P90 = JsonAnswer.Time(answer.Forecast.P90),
            Due = due is { } date ? JsonAnswer.Date(date) : null,
            answer.Forecast.ChanceOfDue,
        },
        LowerBound = JsonAnswer.Time(answer.Plan.LowerBound.At),
        LowerBoundReason = answer.Plan.LowerBound.Reason,
        Gap = Math.Round(answer.Plan.GapShare, 4, MidpointRounding.AwayFromZero),
        answer.Plan.ShopDays,
        Sessions = answer.Plan.Sessions.Select(SessionOf),
        Waits = answer.Plan.Waits.Select(wait => new
        {
            After = wait.After?.Name,
            Start = JsonAnswer.Time(wait.Start),
            End = JsonAnswer.Time(wait.End),
            wait.Reason,
        }),
        Deciding = answer.Forecast.Deciding.Select(one => new { Task = one.Task.Name, one.Share }),
        Cautions = cautions.Select(caution => new { caution.Kind, caution.Text, caution.SaidBy }),
        Remarks = remarks.Select(RemarkJson.Of),
        answer.Forecast.Trials,
        answer.Forecast.Unfinished,
        answer.Forecast.Overruns,
        answer.Forecast.Seed,
    };

    /// <summary>Why there is no plan, as an object to be written.</summary>
    public static object Of(PlanAnswer.CannotBePlanned answer) => new
    {
        CannotBePlanned = answer.Reasons.Select(one => new { Task = one.Task?.Name, one.Kind, one.Limit, one.Cure }),
    };

    private static object SessionOf(PlannedSession session) => new
    {
        Start = JsonAnswer.Time(session.Session.Start),
        End = JsonAnswer.Time(session.Session.End),
        WorkStart = JsonAnswer.Time(session.Session.WorkStart),
        WorkEnd = JsonAnswer.Time(session.Session.WorkEnd),
        session.Session.Worker,
        Tasks = session.Work.Select(work => new
        {
            Task = work.Task.Name,
            Operation = (work.Task.Timing as TaskTiming.ByOperation)?.Operation.Name,
            Method = (work.Task.Timing as TaskTiming.ByOperation)?.Method.Name,
            Part = work.Task.Parts.Count == 0 ? null : string.Join(", ", work.Task.Parts),
            work.Task.Board,
            Start = JsonAnswer.Time(work.Start),
            End = JsonAnswer.Time(work.End),
            Minutes = JsonAnswer.Minutes(work.HandsOn),
            Done = work.IsLastPiece,
        }),
    };
}
