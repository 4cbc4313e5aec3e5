using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Paper.Lists;

/// <summary>Every task once, in the order of the plan, with what must come before it and why.</summary>
internal static class OrderPages
{
    private const double MarkWidth = 22;

    private static readonly Column[] Columns =
    [
        Column.Fixed("", 16, Align.Right),
        Column.Fixed("Mark", MarkWidth),
        Column.Shared("Task", 1),
        Column.Fixed("Begins", 78),
        Column.Shared("Comes after", 2.3),
    ];

    private static readonly TextStyle Style = TypeScale.Body with { Size = 8 };

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
                MarkOf(plan, task),
                task.Name,
                begins.TryGetValue(task.Id, out var at) ? DateWords.When(at) : "",
                Reasons(plan.Graph, task, before[task.Id])))],
            Style) { Distance = 5, Padding = 1.1 };
    }

    // The few marks of four letters are set smaller, not broken.
    private static TextCell MarkOf(PlanPaper plan, ShopTask task)
    {
        var mark = plan.Marks.Of(task.Name);
        return new(mark) { Style = Style.Fitted(mark, MarkWidth, 6) };
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
