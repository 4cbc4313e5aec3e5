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
            return new PlanAnswer.CannotBePlanned(lacking);
        }

        var problem = ProblemCompiler.Compile(request, hours);
        if (Obstacles.InTheHours(request, problem) is { Count: > 0 } inTheWay)
        {
            return new PlanAnswer.CannotBePlanned(inTheWay);
        }

        var search = new ScheduleSearch(problem, request.Seed);
        var order = search.Find(request.Budget);
        while (order is null)
        {
            if (hours.Longer(request) is not { } longer)
            {
                return new PlanAnswer.CannotBePlanned([TooLong(request, problem)]);
            }

            hours = longer;
            problem = ProblemCompiler.Compile(request, hours);
            search = new(problem, request.Seed);
            order = search.Find(request.Budget);
        }

        order = new RisingOrder(problem, [.. new WorkInHand(request.Orders).Tasks.Select(KindOf)]).Of(order);
        var schedule = new Schedule(problem.Tasks.Length, problem.Orders.Length);
        new ScheduleGenerator(problem).Generate(order, problem.Minutes.AsSpan(), schedule);
        var plan = new PlanWriter(request, hours, problem).Write(schedule, search.Tried);
        return new PlanAnswer.Planned(plan, ForecastTrials.Run(request, hours, problem, order, schedule));
    }

    /// <summary>What is alike but for its number: the same work on the same parts, in the same board.</summary>
    private static string KindOf(TaskInHand one) => $"{one.Order}; {one.Task.SetupKey}; {one.Task.Board}; {string.Join(", ", one.Task.Parts)}";

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
