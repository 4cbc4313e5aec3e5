using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Paper.Lists;

/// <summary>Every task once, in the order of the plan, with what must come before it and why.</summary>
internal static class OrderPages
{
    private static readonly Column[] Columns =
    [
        Column.Fixed("", 16, Align.Right),
        Column.Fixed("Mark", 22),
        Column.Shared("Task", 1),
        Column.Fixed("Begins", 74),
        Column.Shared("Comes after", 2.3),
    ];

    /// <summary>The blocks.</summary>
    public static IEnumerable<Block> Of(PlanPaper plan)
    {
        yield return new Heading("Order of work, and why", TypeScale.Heading) { BookmarkLevel = 0 };
        var begins = Begins(plan.Plan);
        var before = plan.Graph.Precedences.ToLookup(one => one.After);
        var ordered = plan.Graph.Tasks.OrderBy(task => begins.TryGetValue(task.Id, out var at) ? at.ToInstant() : NodaTime.Instant.MaxValue).ThenBy(task => task.Id);
        yield return new Table(
            Columns,
            [.. ordered.Select((task, order) => Row.Of(
                CountWords.Number(order + 1),
                plan.Marks.Of(task.Name),
                task.Name,
                begins.TryGetValue(task.Id, out var at) ? DateWords.When(at) : "",
                Reasons(plan.Graph, task, before[task.Id])))],
            TypeScale.Body with { Size = 8 }) { Distance = 5, Padding = 1.1 };
    }

    private static string Reasons(TaskGraph graph, ShopTask task, IEnumerable<Precedence> precedences) => string.Join('\n', precedences
        .GroupBy(one => one.Reason, StringComparer.Ordinal)
        .Select(group => $"{CountWords.Names([.. group.Select(one => graph.Tasks[one.Before].Name)], 3)}: {group.Key}")
        .Concat(graph.Awaited.Where(one => !one.HasCome && one.Holds.Contains(task.Id)).Select(one => one.Reason)));

    private static Dictionary<int, NodaTime.ZonedDateTime> Begins(Plan plan)
    {
        Dictionary<int, NodaTime.ZonedDateTime> begins = [];
        foreach (var work in plan.Sessions.SelectMany(session => session.Work).OrderBy(work => work.Start.ToInstant()))
        {
            begins.TryAdd(work.Task.Id, work.Start);
        }

        return begins;
    }
}
