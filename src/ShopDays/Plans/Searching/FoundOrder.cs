using ShopDays.Plans.Bounds;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>An order of work that was looked for, in hours that hold all of it.</summary>
/// <param name="Hours">The hours.</param>
/// <param name="Problem">The problem in these hours.</param>
/// <param name="Blocks">The problem's blocks in their order of work; null when five years do not hold the work.</param>
/// <param name="Tried">How many schedules were made.</param>
internal sealed record FoundOrder(OpenHours Hours, ScheduleProblem Problem, int[]? Blocks, int Tried)
{
    /// <summary>When none can finish sooner, after how many moves that save no day and no turn the plan is good enough.</summary>
    private const int MovesInVain = 1000;

    /// <summary>Drawn courses in which other ways to keep dates are looked at before some are looked at closer, and how many are.</summary>
    private const int CoursesAtFirst = 150;
    private const int LookedAtCloser = 3;

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
        var alone = Searched(request with { Orders = [.. behind.Select(order => order with { GivesWay = false })], Budget = Part(request.Budget, 2) });
        var hours = OpenHours.FirstYear(request);
        while (true)
        {
            var problem = ProblemCompiler.Compile(request, hours);
            if (settled.Blocks is not null && alone.Blocks is not null)
            {
                var search = new BlockMoves(problem, settled.BlocksIn(problem, 0), alone.BlocksIn(problem, settled.Problem.Tasks.Length), request.Seed, BoutOf(request));
                if (search.Find(Part(request.Budget, 2)) is { } blocks)
                {
                    return new(hours, problem, Tidied(request, problem, blocks, settled.Problem.Blocks), settled.Tried + alone.Tried + search.Tried);
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
        var alone = request.Orders.Count == 1 ? [] : request.Orders.Select(order => Searched(request with { Orders = [order], Budget = Part(request.Budget, 4 * request.Orders.Count), Progress = null })).ToList();
        var hours = OpenHours.FirstYear(request);
        while (true)
        {
            var problem = ProblemCompiler.Compile(request, hours);
            var inTurn = new OrdersInTurn(problem, alone);
            var search = SearchFrom(alone.Count > 0 && alone.TrueForAll(one => one.Blocks is not null) ? inTurn.Blocks() : []);
            var budget = request.Budget - alone.Sum(one => one.Tried);
            var bred = search.Find(Math.Max(1, budget - Part(budget, 5)));
            if (bred is null && OrdersThatKeepTimes(problem, search.Known, request.Seed) is { Count: > 0 } known)
            {
                search = SearchFrom(known);
                bred = search.Find(Math.Max(1, budget - Part(budget, 5)));
            }

            if (bred is not null)
            {
                // Breeding cares for the finish; moves one at a time then find like work to put together.
                var moves = new BlockMoves(problem, [], bred, request.Seed, BoutOf(request));
                var left = Math.Max(1, budget - search.Tried);
                var blocks = moves.Find(left, search.IsAtBound ? MovesInVain : int.MaxValue)!;
                var tried = search.Tried + inTurn.Tried + moves.Tried + alone.Sum(one => one.Tried);
                var first = new FoundOrder(hours, problem, Likeliest(request, hours, problem, [blocks, .. moves.Alike]), tried);
                return alone.Count == 0 ? first : first.WithRoomForDates(request, inTurn.BlocksInEveryTurn());
            }

            if (hours.Longer(request) is not { } longer)
            {
                return new(hours, problem, null, search.Tried);
            }

            hours = longer;

            ScheduleSearch SearchFrom(IReadOnlyList<int[]> known) => new(problem, request.Seed)
            {
                Known = known,
                NoneBefore = NoneBefore(problem),
                Progress = request.Progress is { } progress ? point => progress.Report(StepOf(point, hours, problem)) : null,
            };
        }
    }

    /// <summary>What is fixed for a time first, with what must come before it as that was found by itself; then the rest, by the rules or as it is in other orders.</summary>
    private static IReadOnlyList<int[]> OrdersThatKeepTimes(ScheduleProblem problem, IReadOnlyList<int[]> others, int seed)
    {
        var first = new FixedTimes(problem, seed).Order();
        if (first.Count == 0)
        {
            return [];
        }

        var byRule = new int[problem.Blocks];
        new ScheduleOrders(problem).Write(byRule, 0, 0, new(seed));
        return [.. others.Prepend(byRule).Select(rest => first.Concat(rest.Except(first)).ToArray())];
    }

    /// <summary>
    /// Where a date is not kept in as many courses as is asked for, looks once more: first at other ways to do the orders one
    /// after another, then, from the best of these, with half as many schedules and dates that are nearer by the room it
    /// takes. What lacks least in the end is kept.
    /// </summary>
    /// <param name="request">What is asked for.</param>
    /// <param name="others">Other orders of all blocks that may keep dates better.</param>
    public FoundOrder WithRoomForDates(PlanRequest request, IReadOnlyList<int[]> others)
    {
        var drawn = new DrawnMinutes(request, Hours);
        var first = new KeptDates(request, drawn, Problem, Blocks!);
        var (blocks, kept) = (Blocks!, first);
        if (kept.Missing <= 0)
        {
            return this;
        }

        // Few courses tell which ways are worth a closer look.
        foreach (var other in others.Where(CanBeDone).OrderBy(other => new KeptDates(request, drawn, Problem, other, CoursesAtFirst)).Take(LookedAtCloser))
        {
            Take(other);
        }

        // From where the search ended as well as from there: the one has room for all, the other for those that weigh most.
        var tried = Tried + others.Count;
        foreach (var (from, dates) in ((int[], KeptDates)[])[(Blocks!, first), (blocks, kept)])
        {
            var nearer = dates.WithRoom(Problem);
            var search = new ScheduleSearch(nearer, request.Seed) { Known = [from] };
            Take(Tidied(request, nearer, search.Find(Part(request.Budget, 2))!));
            tried += search.Tried;
        }

        return this with { Blocks = blocks, Tried = tried };

        void Take(int[] other)
        {
            if (new KeptDates(request, drawn, Problem, other) is var dates && dates.CompareTo(kept) < 0)
            {
                (blocks, kept) = (other, dates);
            }
        }
    }

    /// <summary>
    /// Of orders that are equally good if all goes as expected, tidied, the one that keeps dates in most of a few drawn courses,
    /// the same for all; the first where there are no dates to keep, or no other keeps them better.
    /// </summary>
    private static int[] Likeliest(PlanRequest request, OpenHours hours, ScheduleProblem problem, IReadOnlyList<int[]> alike)
    {
        var first = Tidied(request, problem, alike[0]);
        if (request.Orders.All(order => order.Due is null))
        {
            return first;
        }

        var drawn = new DrawnMinutes(request, hours);
        var (best, kept) = (first, new KeptDates(request, drawn, problem, first, CoursesAtFirst));
        var most = problem.Orders.Sum(order => order.DueBy < CompiledCalendar.Never ? (double)order.Weight : 0);
        foreach (var other in alike.Skip(1).TakeWhile(_ => kept.Chances < most).Select(one => Tidied(request, problem, one)))
        {
            if (new KeptDates(request, drawn, problem, other, CoursesAtFirst) is var dates && dates.Chances > kept.Chances && dates.CompareTo(kept) <= 0)
            {
                (best, kept) = (other, dates);
            }
        }

        return best;
    }

    /// <summary>An order that is as good and easier to read: like work in the order of its numbers, and what others or glue wait for at the front of its session.</summary>
    private static int[] Tidied(PlanRequest request, ScheduleProblem problem, int[] blocks, int settled = 0) =>
        new WaitsFirst(problem, BoutOf(request)).Of(new RisingOrder(problem, KindsOf(request), BoutOf(request)).Of(blocks, settled), settled);

    /// <summary>Whether an order of all blocks can be done within the hours.</summary>
    public bool CanBeDone(int[] blocks) =>
        new ScheduleGenerator(Problem).Generate(blocks, Problem.Minutes.AsSpan(), new(Problem.Tasks.Length, Problem.Orders.Length));

    /// <summary>Each order's finish has a bound of its own, and so has the sum of them.</summary>
    private static long NoneBefore(ScheduleProblem problem) => Enumerable.Range(0, problem.Orders.Length).Sum(order => (long)problem.Orders[order].Weight * ScheduleBound.OfOrder(problem, order).Minute);

    private static SearchStep StepOf(SearchPoint point, OpenHours hours, ScheduleProblem problem) =>
        new(point.Tried, hours.At((int)(point.Best.Finish / problem.Orders.Sum(order => order.Weight))), point.Best.ShopDays);

    private static int BoutOf(PlanRequest request) => Math.Max(1, (int)request.Limits.Bout.Minutes);

    private static int Part(int budget, int parts) => Math.Max(1, budget / parts);

    /// <summary>The blocks of a larger problem, in the order found here for some of its orders by themselves.</summary>
    /// <param name="problem">The larger problem.</param>
    /// <param name="firstTask">The number in it of the first of their tasks.</param>
    public IReadOnlyList<int> BlocksIn(ScheduleProblem problem, int firstTask) => [.. Blocks!.Select(block => problem.BlockOf(firstTask + Problem.Members(block)[0]))];

    /// <summary>What each task is like but for its number: the same work on the same parts, in the same board.</summary>
    private static IReadOnlyList<string> KindsOf(PlanRequest request) => [.. new WorkInHand(request.Orders).Tasks.Select(KindOf)];

    private static string KindOf(TaskInHand one) => $"{one.Order}; {one.Task.SetupKey}; {one.Task.Board}; {string.Join(", ", one.Task.Parts)}";
}
