using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;

namespace ShopDays.Plans;

/// <summary>Makes a plan of all orders in hand and their forecasts, or says why there is none.</summary>
public static class PlanMaker
{
    /// <summary>Makes a plan. The same request gives the same answer.</summary>
    /// <exception cref="ArgumentException">The request contradicts itself: times for other tasks, no worker, no trial.</exception>
    public static PlanAnswer Plan(PlanRequest request)
    {
        request.Check();
        var hours = OpenHours.FirstYear(request);
        if (Obstacles.InTheShop(request, hours) is { Count: > 0 } lacking)
        {
            return Cannot(request, lacking);
        }

        var problem = ProblemCompiler.Compile(request, hours);
        if (Obstacles.InTheHours(request, hours, problem) is { Count: > 0 } inTheWay)
        {
            return Cannot(request, inTheWay);
        }

        var found = FoundOrder.Of(request);
        if (found.Blocks is not { } order)
        {
            return Cannot(request, new AppointedTasks(request, found.Hours, found.Problem).NotKept() is { Count: > 0 } notKept
                ? notKept
                : [new TooLongWork(request, found.Hours, found.Problem).Reason()]);
        }

        (hours, problem) = (found.Hours, found.Problem);
        var schedule = new Schedule(problem.Tasks.Length, problem.Orders.Length);
        new ScheduleGenerator(problem).Generate(order, problem.Minutes.AsSpan(), schedule);
        var plan = new PlanWriter(request, hours, problem).Write(schedule, found.Tried);
        return new PlanAnswer.Planned(plan, ForecastTrials.Run(request, hours, problem, order, schedule));
    }

    /// <summary>
    /// What stands against a plan and can be seen without looking for one: what the shop does not have, and what fits into
    /// no session of a year. A plan may still fail for the sake of what must come before what.
    /// </summary>
    /// <exception cref="ArgumentException">The request contradicts itself.</exception>
    public static IReadOnlyList<Unplannable> Foresee(PlanRequest request)
    {
        request.Check();
        var hours = OpenHours.FirstYear(request);
        return Obstacles.InTheShop(request, hours) is { Count: > 0 } lacking ? lacking : Obstacles.InTheHours(request, hours, ProblemCompiler.Compile(request, hours));
    }

    private static PlanAnswer.CannotBePlanned Cannot(PlanRequest request, IReadOnlyList<Unplannable> reasons) =>
        new([.. reasons.Select(reason => reason with { Order = request.Orders.FirstOrDefault(order => order.Graph.Tasks.Any(task => ReferenceEquals(task, reason.Task)))?.Name })]);
}
