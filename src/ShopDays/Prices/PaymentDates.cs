using NodaTime;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Prices;

/// <summary>When the stages of a payment fall, by the plan of the job.</summary>
/// <param name="planned">The plan of one job with its forecast.</param>
/// <param name="start">The first day on which the job may be worked on.</param>
public sealed class PaymentDates(PlanAnswer.Planned planned, LocalDate start)
{
    /// <summary>
    /// The date of a stage: on order the job's first day; at the dry fit, and before the finish, the day on which the plan has
    /// it; on delivery the date that can be promised, which four courses in five keep. Null where the plan has no such work, or
    /// the forecast no such date.
    /// </summary>
    public LocalDate? Of(StagePoint point) => point switch
    {
        StagePoint.Order => start,
        StagePoint.DryFit => FirstOf(Stage.Assembly),
        StagePoint.Finish => FirstOf(Stage.Finish),
        StagePoint.Delivery => planned.Forecast.P80?.Date,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private LocalDate? FirstOf(Stage stage) => planned.Plan.Sessions
        .SelectMany(session => session.Work)
        .Where(work => work.Task.Stage == stage)
        .Select(work => (LocalDate?)work.Start.Date)
        .Min();
}
