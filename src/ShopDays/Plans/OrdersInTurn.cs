namespace ShopDays.Plans;

/// <summary>
/// One order after another, each as it would be done alone and in the time that those before it leave: the way to keep a
/// near date that a search over all tasks at once loses in the crowd. The best turn of a few is then made better.
/// </summary>
/// <param name="problem">The problem of all orders.</param>
/// <param name="alone">Each order planned by itself, none without an answer, in their order.</param>
internal sealed class OrdersInTurn(ScheduleProblem problem, IReadOnlyList<FoundOrder> alone)
{
    /// <summary>The score of what was found.</summary>
    public ScheduleScore Score { get; private set; } = ScheduleScore.None;

    /// <summary>How many schedules were made.</summary>
    public int Tried { get; private set; }

    /// <summary>Looks for it.</summary>
    /// <param name="budget">Schedules to make beside one for each turn, 1 or more.</param>
    /// <param name="seed">Where chance comes from.</param>
    /// <returns>The blocks in their order; null when there is none that fits the calendars.</returns>
    public int[]? Find(int budget, int seed)
    {
        if (alone.Any(one => one.Blocks is null))
        {
            return null;
        }

        var generator = new ScheduleGenerator(problem);
        var trial = new Schedule(problem.Tasks.Length, problem.Orders.Length);
        (int[] Blocks, ScheduleScore Score)? best = null;
        foreach (var turn in Turns())
        {
            int[] blocks = [.. turn.SelectMany(order => alone[order].BlocksIn(problem, FirstTaskOf(order)))];
            Tried++;
            if (generator.Generate(blocks, problem.Minutes.AsSpan(), trial) && (best is null || trial.Score < best.Value.Score))
            {
                best = (blocks, trial.Score);
            }
        }

        if (best is not { } begin)
        {
            return null;
        }

        var search = new BehindSearch(problem, [], begin.Blocks, seed);
        var found = search.Find(budget);
        (Score, Tried) = (search.Best, Tried + search.Tried);
        return found;
    }

    /// <summary>By date; by what is left between an order's finish alone and its date; by weight, then date; the shortest first.</summary>
    private IEnumerable<int[]> Turns()
    {
        var orders = Enumerable.Range(0, alone.Count).ToList();
        int[] finishes = [.. orders.Select(FinishAlone)];
        yield return [.. orders.OrderBy(order => problem.Orders[order].DueBy)];
        yield return [.. orders.OrderBy(order => problem.Orders[order].DueBy - finishes[order])];
        yield return [.. orders.OrderByDescending(order => problem.Orders[order].Weight).ThenBy(order => problem.Orders[order].DueBy)];
        yield return [.. orders.OrderBy(order => finishes[order] / problem.Orders[order].Weight)];
    }

    private int FinishAlone(int order)
    {
        var trial = new Schedule(problem.Tasks.Length, problem.Orders.Length);
        Tried++;
        new ScheduleGenerator(problem).Generate([.. alone[order].BlocksIn(problem, FirstTaskOf(order))], problem.Minutes.AsSpan(), trial);
        return Enumerable.Range(FirstTaskOf(order), alone[order].Problem.Tasks.Length).Select(task => trial.End[task]).DefaultIfEmpty().Max();
    }

    private int FirstTaskOf(int order) => alone.Take(order).Sum(one => one.Problem.Tasks.Length);
}
