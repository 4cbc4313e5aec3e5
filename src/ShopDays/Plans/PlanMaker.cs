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
        if (Obstacles.InTheHours(request, problem) is { Count: > 0 } inTheWay)
        {
            return Cannot(request, inTheWay);
        }

        var found = FoundOrder.Of(request);
        if (found.Blocks is not { } order)
        {
            return Cannot(request, [TooLong(request, found.Problem)]);
        }

        (hours, problem) = (found.Hours, found.Problem);
        var schedule = new Schedule(problem.Tasks.Length, problem.Orders.Length);
        new ScheduleGenerator(problem).Generate(order, problem.Minutes.AsSpan(), schedule);
        var plan = new PlanWriter(request, hours, problem).Write(schedule, found.Tried);
        return new PlanAnswer.Planned(plan, ForecastTrials.Run(request, hours, problem, order, schedule));
    }

    private static PlanAnswer.CannotBePlanned Cannot(PlanRequest request, IReadOnlyList<Unplannable> reasons) =>
        new([.. reasons.Select(reason => reason with { Order = request.Orders.FirstOrDefault(order => order.Graph.Tasks.Any(task => ReferenceEquals(task, reason.Task)))?.Name })]);

    /// <summary>The first task that finds no place when the work is done in its own order, if it is one that holds all up.</summary>
    private static Unplannable TooLong(PlanRequest request, ScheduleProblem problem)
    {
        var schedule = new Schedule(problem.Tasks.Length, problem.Orders.Length);
        new ScheduleGenerator(problem).Generate([.. Enumerable.Range(0, problem.Blocks)], problem.Minutes.AsSpan(), schedule);
        var task = schedule.Unplaced < 0 ? null : new WorkInHand(request.Orders).Tasks[schedule.Unplaced].Task;
        return new(
            UnplannableKind.TooLong,
            task,
            task is null
                ? "the work is not done within five years of these sessions"
                : "when what must come before it is done, no session within five years has room for it",
            "more or longer sessions, or less work");
    }
}
