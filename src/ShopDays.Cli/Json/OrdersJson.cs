using ShopDays.Cli.Phrases;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Json;

/// <summary>The answer of <c>shopdays orders --json</c>.</summary>
internal static class OrdersJson
{
    /// <summary>The orders as an object to be written.</summary>
    /// <param name="told">The orders in hand.</param>
    /// <param name="another">When a new one could be promised; null when that was not asked.</param>
    public static object Of(ToldOrders told, ToldNewOrder? another) => new
    {
        told.Shop.Name,
        Today = JsonAnswer.Date(told.Today),
        Orders = told.Orders.Select(OrderOf),
        NewOrder = another is null ? null : NewOrderOf(told, another),
        Plan = told.Plan is { } plan ? PlanOf(plan) : null,
        NotPlanned = told.LeftOut.Select(job => new { job.Job, Name = job.Title, job.Why }),
        RoomForDates = told.Room,
        told.Notes,
        told.Behind.Entries,
        told.Behind.PriorOnly,
        Times = TimesJson.Of(told.Behind),
    };

    private static object OrderOf(ToldOrder order) => new
    {
        Job = order.Read.LogName,
        Name = order.Title,
        order.Read.Job.Priority,
        Start = JsonAnswer.Date(order.Start),
        Date = order.Date is { } date ? JsonAnswer.Date(date) : null,
        order.IsPromised,
        order.IsBegun,
        LeftMinutes = JsonAnswer.Minutes(order.Left),
        Finish = FinishOf(order.Forecast, JsonAnswer.Time(order.Planned)),
        order.DaysLate,
        order.ShopDays,
        Deciding = order.Forecast.Deciding.Select(one => new { one.Order, Task = one.Task.Name, one.Share, Awaited = one.Awaited is not null }),
        SessionsAtRisk = SessionAtRiskJson.Of(order.Forecast),
    };

    private static object NewOrderOf(ToldOrders told, ToldNewOrder another) => new
    {
        Like = another.Read.LogName,
        Name = another.Title,
        Start = JsonAnswer.Date(another.Start),
        LeftMinutes = JsonAnswer.Minutes(another.Left),
        Promise = another.Forecast.P80 is { } date ? JsonAnswer.Date(date.Date) : null,
        Finish = FinishOf(another.Forecast, JsonAnswer.Time(another.Behind.Plan.Finishes[^1])),
        AmongTheOthers = another.Among is { } among ? FinishOf(among.Forecasts[^1], JsonAnswer.Time(among.Plan.Finishes[^1])) : null,
        Others = told.Orders.Select((order, place) => new
        {
            Job = order.Read.LogName,
            Now = FinishOf(order.Forecast, JsonAnswer.Time(order.Planned)),
            Behind = FinishOf(another.Behind.Forecasts[place], JsonAnswer.Time(another.Behind.Plan.Finishes[place])),
            Among = another.Among is { } with ? FinishOf(with.Forecasts[place], JsonAnswer.Time(with.Plan.Finishes[place])) : null,
        }),
        Plan = PlanOf(another.Behind.Plan),
    };

    private static object FinishOf(FinishForecast forecast, string planned) => new
    {
        Planned = planned,
        P50 = JsonAnswer.Time(forecast.P50),
        P80 = JsonAnswer.Time(forecast.P80),
        P90 = JsonAnswer.Time(forecast.P90),
        ChanceOfDate = forecast.ChanceOfDue,
        forecast.Trials,
        forecast.Unfinished,
        forecast.Seed,
    };

    private static object PlanOf(Plan plan) => new
    {
        Finish = JsonAnswer.Time(plan.Finish),
        LowerBound = JsonAnswer.Time(plan.LowerBound.At),
        LowerBoundReason = plan.LowerBound.Reason,
        plan.ShopDays,
        plan.Changeovers,
        Visits = plan.Visits.Select(VisitJson.Of),
        plan.Schedules,
        Sessions = plan.Sessions.Select(session => new
        {
            Start = JsonAnswer.Time(session.Session.Start),
            End = JsonAnswer.Time(session.Session.End),
            session.Session.Worker,
            Tasks = session.Work.Select(work => new
            {
                work.Order,
                Task = work.Task.Name,
                Operation = (work.Task.Timing as TaskTiming.ByOperation)?.Operation.Name,
                Start = JsonAnswer.Time(work.Start),
                End = JsonAnswer.Time(work.End),
                Minutes = JsonAnswer.Minutes(work.HandsOn),
                Done = work.IsLastPiece,
            }),
        }),
        Waits = plan.Waits.Select(wait => new
        {
            wait.Order,
            After = wait.AfterWhat,
            Start = JsonAnswer.Time(wait.Start),
            End = JsonAnswer.Time(wait.End),
            wait.Reason,
            Awaited = WaitJson.AwaitedOf(wait),
            Nights = NightsJson.Of(wait.Slowed),
        }),
    };
}
