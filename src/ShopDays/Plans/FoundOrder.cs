namespace ShopDays.Plans;

/// <summary>An order of work that was looked for, in hours that hold all of it.</summary>
/// <param name="Hours">The hours.</param>
/// <param name="Problem">The problem in these hours.</param>
/// <param name="Blocks">The problem's blocks in their order of work; null when five years do not hold the work.</param>
/// <param name="Tried">How many schedules were made.</param>
internal sealed record FoundOrder(OpenHours Hours, ScheduleProblem Problem, int[]? Blocks, int Tried)
{
    /// <summary>
    /// Looks for the order of all work of a request. What gives way is put behind the rest as that would be done alone, so
    /// that it cannot move any of it; then the place of each of its blocks among themselves is looked for.
    /// </summary>
    public static FoundOrder Of(PlanRequest request)
    {
        List<OrderInHand> first = [.. request.Orders.TakeWhile(order => !order.GivesWay)];
        if (first.Count == 0 || first.Count == request.Orders.Count)
        {
            return Searched(request);
        }

        List<OrderInHand> behind = [.. request.Orders.Skip(first.Count)];
        var settled = Searched(request with { Orders = first });
        var alone = Searched(request with { Orders = [.. behind.Select(order => order with { GivesWay = false })], Budget = Math.Max(1, request.Budget / 2) });
        var hours = OpenHours.FirstYear(request);
        while (true)
        {
            var problem = ProblemCompiler.Compile(request, hours);
            if (settled.Blocks is not null && alone.Blocks is not null)
            {
                var search = new BehindSearch(problem, BlocksIn(problem, settled, 0), BlocksIn(problem, alone, settled.Problem.Tasks.Length), request.Seed);
                if (search.Find(Math.Max(1, request.Budget / 2)) is { } blocks)
                {
                    blocks = new RisingOrder(problem, KindsOf(request)).Of(blocks, settled.Problem.Blocks);
                    return new(hours, problem, blocks, settled.Tried + alone.Tried + search.Tried);
                }
            }

            if (hours.Longer(request) is not { } longer)
            {
                return new(hours, problem, null, settled.Tried + alone.Tried);
            }

            hours = longer;
        }
    }

    private static FoundOrder Searched(PlanRequest request)
    {
        var hours = OpenHours.FirstYear(request);
        while (true)
        {
            var problem = ProblemCompiler.Compile(request, hours);
            var search = new ScheduleSearch(problem, request.Seed);
            if (search.Find(request.Budget) is { } blocks)
            {
                return new(hours, problem, new RisingOrder(problem, KindsOf(request)).Of(blocks), search.Tried);
            }

            if (hours.Longer(request) is not { } longer)
            {
                return new(hours, problem, null, search.Tried);
            }

            hours = longer;
        }
    }

    /// <summary>The blocks of a problem in which some of its orders were planned by themselves, in the order found then.</summary>
    private static int[] BlocksIn(ScheduleProblem problem, FoundOrder found, int firstTask) =>
        [.. found.Blocks!.Select(block => problem.BlockOf(firstTask + found.Problem.Members(block)[0]))];

    /// <summary>What each task is like but for its number: the same work on the same parts, in the same board.</summary>
    private static IReadOnlyList<string> KindsOf(PlanRequest request) => [.. new WorkInHand(request.Orders).Tasks.Select(KindOf)];

    private static string KindOf(TaskInHand one) => $"{one.Order}; {one.Task.SetupKey}; {one.Task.Board}; {string.Join(", ", one.Task.Parts)}";
}
