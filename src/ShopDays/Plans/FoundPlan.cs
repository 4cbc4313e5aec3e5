using NodaTime;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using ShopDays.Times;

namespace ShopDays.Plans;

/// <summary>The best order of work that was found for a request, with the schedule that it gives; what is asked of it is worked out only then.</summary>
internal sealed class FoundPlan
{
    private readonly PlanRequest request;
    private readonly FoundOrder found;
    private readonly ScheduleProblem problem;
    private readonly Schedule schedule;

    private FoundPlan(PlanRequest request, FoundOrder found)
    {
        (this.request, this.found) = (request, found);
        schedule = new(found.Problem.Tasks.Length, found.Problem.Orders.Length);
        new ScheduleGenerator(found.Problem).Generate(found.Blocks!, found.Problem.Minutes.AsSpan(), schedule);
        problem = found.Problem;
        if (schedule.CallDays > 0 && FewerVisits.Of(problem, found.Blocks!, schedule) is var fewer && fewer.Problem != problem && KeepsChances(fewer.Problem, fewer.Plan))
        {
            (problem, schedule) = fewer;
        }
    }

    /// <summary>The plan with its bound, which takes a while to find.</summary>
    public Plan Plan => new PlanWriter(request, found.Hours, problem).Write(schedule, found.Tried, found.Problem);

    /// <summary>The sessions of the plan.</summary>
    public IReadOnlyList<PlannedSession> Sessions => new PlanWriter(request, found.Hours, problem).SessionsOf(schedule);

    /// <summary>The waits of the plan.</summary>
    public IReadOnlyList<PlannedWait> Waits => new PlanWriter(request, found.Hours, problem).WaitsOf(schedule);

    /// <summary>The end of the last task and of all waits at the end.</summary>
    public ZonedDateTime Finish => found.Hours.At(schedule.Finish);

    /// <summary>What may become of each order.</summary>
    public IReadOnlyList<FinishForecast> Forecasts => ForecastTrials.Run(request, found.Hours, problem, found.Blocks!, schedule);

    /// <summary>Looks for one.</summary>
    /// <param name="request">What is asked for.</param>
    /// <param name="inTheWay">What stands against a plan; none where one was found.</param>
    /// <returns>What was found; null when something stands against it.</returns>
    /// <exception cref="ArgumentException">The request contradicts itself.</exception>
    public static FoundPlan? Of(PlanRequest request, out IReadOnlyList<Unplannable> inTheWay)
    {
        request.Check();
        inTheWay = Obstacles.Of(request, OpenHours.FirstYear(request));
        if (inTheWay.Count > 0)
        {
            return null;
        }

        var found = FoundOrder.Of(request);
        if (found.Blocks is not null)
        {
            return new(request, found);
        }

        inTheWay = new AppointedTasks(request, found.Hours, found.Problem).NotKept();
        if (inTheWay.Count == 0)
        {
            inTheWay = [new TooLongWork(request, found.Hours, found.Problem).Reason()];
        }

        return null;
    }

    /// <summary>The same order of work with other drawn times of the first order's tasks.</summary>
    /// <param name="draws">The times, of the same tasks.</param>
    /// <returns>When four courses in five are finished; null when not within the years looked at.</returns>
    public ZonedDateTime? SafeFinish(TimeDraws draws) => ForecastWith(draws).P80;

    /// <summary>What of the first order's finish is for what may be spoiled, and which spare blanks would help; null where nothing may be, or nothing is known of it.</summary>
    /// <param name="forecast">Its forecast.</param>
    public SpoilingForecast? Spoiling(FinishForecast forecast) => request.Orders[0] is { Spoiling: { } spoiling, Draws: { Reworks: not null } draws }
        ? SpoilingForecast.Of(forecast, spoiling, draws, ForecastWith)
        : null;

    /// <summary>
    /// The same with the last order brought forward: all of its work comes before what is done last of the others, which
    /// follow each other as before.
    /// </summary>
    /// <param name="place">After how many parts of the others' work it comes, 0 or more.</param>
    /// <param name="places">How many parts there are, more than that.</param>
    /// <returns>The plan; null when it cannot be done so.</returns>
    public FoundPlan? WithTheLastAt(int place, int places)
    {
        var last = request.Orders.Count - 1;
        var of = found.Blocks!.ToLookup(block => found.Problem.Tasks[found.Problem.Members(block)[0]].Order == last);
        var before = of[false].Count() * place / places;
        var brought = found with { Blocks = [.. of[false].Take(before), .. of[true], .. of[false].Skip(before)] };
        return brought.CanBeDone(brought.Blocks)
            ? new(request with { Orders = [.. request.Orders.SkipLast(1), request.Orders[last] with { GivesWay = false }] }, brought)
            : null;
    }

    /// <summary>A helper who is not called in cannot help where work takes longer: no order may be promised later for it.</summary>
    private bool KeepsChances(ScheduleProblem fewer, Schedule plan) => ForecastTrials.Run(request, found.Hours, fewer, found.Blocks!, plan)
        .Zip(Forecasts)
        .All(one => IsNoLater(one.First.P50, one.Second.P50) && IsNoLater(one.First.P80, one.Second.P80));

    private static bool IsNoLater(ZonedDateTime? one, ZonedDateTime? other) => other is not { } then || one?.Date <= then.Date;

    private FinishForecast ForecastWith(TimeDraws draws)
    {
        var drawn = request with { Orders = [request.Orders[0] with { Draws = draws }, .. request.Orders.Skip(1)] };
        drawn.Check();
        return ForecastTrials.Run(drawn, found.Hours, problem, found.Blocks!, schedule)[0];
    }
}
