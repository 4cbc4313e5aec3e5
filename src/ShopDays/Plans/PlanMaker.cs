namespace ShopDays.Plans;

/// <summary>Makes a plan of all orders in hand and their forecasts, or says why there is none.</summary>
public static class PlanMaker
{
    /// <summary>Makes a plan. The same request gives the same answer.</summary>
    /// <exception cref="ArgumentException">The request contradicts itself: times for other tasks, no worker, no trial.</exception>
    public static PlanAnswer Plan(PlanRequest request) => FoundPlan.Of(request, out var inTheWay) is { } found
        ? Planned(found, found.Forecasts)
        : Against(request, inTheWay);

    /// <summary>What stands against a plan, each with the order that it is about.</summary>
    internal static PlanAnswer.CannotBePlanned Against(PlanRequest request, IReadOnlyList<Unplannable> inTheWay) => new([.. inTheWay.Select(reason => reason with { Order = request.Orders.FirstOrDefault(order => order.Graph.Tasks.Any(task => ReferenceEquals(task, reason.Task)))?.Name })]);

    /// <summary>A plan that was found, as an answer.</summary>
    internal static PlanAnswer.Planned Planned(FoundPlan found, IReadOnlyList<FinishForecast> forecasts) =>
        new(found.Plan, forecasts) { Spoiling = found.Spoiling(forecasts[0]) };

    /// <summary>
    /// What stands against a plan and can be seen without looking for one: what the shop does not have, and what fits into
    /// no session of a year. A plan may still fail for the sake of what must come before what.
    /// </summary>
    /// <exception cref="ArgumentException">The request contradicts itself.</exception>
    public static IReadOnlyList<Unplannable> Foresee(PlanRequest request)
    {
        request.Check();
        return Obstacles.Of(request, OpenHours.FirstYear(request));
    }
}
