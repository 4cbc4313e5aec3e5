using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>
/// One order after another, each as it would be done alone and in the time that those before it leave: the way to keep a
/// near date that a search over all tasks at once loses in the crowd.
/// </summary>
/// <param name="problem">The problem of all orders.</param>
/// <param name="alone">Each order planned by itself, in their order; each with an answer.</param>
internal sealed class OrdersInTurn(ScheduleProblem problem, IReadOnlyList<FoundOrder> alone)
{
    private const int MostInEveryTurn = 4;

    /// <summary>How many schedules were made.</summary>
    public int Tried { get; private set; }

    /// <summary>The blocks in some turns that are worth a trial.</summary>
    public IReadOnlyList<int[]> Blocks() => [.. Turns().Select(InTurn)];

    /// <summary>The blocks in every turn there is; of many orders in those that are worth a trial.</summary>
    public IReadOnlyList<int[]> BlocksInEveryTurn() => alone.Count is > 1 and <= MostInEveryTurn && alone.All(one => one.Blocks is not null)
        ? [.. Permuted([.. Enumerable.Range(0, alone.Count)]).Select(InTurn)]
        : alone.All(one => one.Blocks is not null) ? Blocks() : [];

    private int[] InTurn(IEnumerable<int> turn) => [.. turn.SelectMany(order => alone[order].BlocksIn(problem, FirstTaskOf(order)))];

    private static IEnumerable<int[]> Permuted(int[] orders) => orders.Length <= 1
        ? [orders]
        : orders.SelectMany(first => Permuted([.. orders.Where(other => other != first)]), (first, rest) => (int[])[first, .. rest]);

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
