using ShopDays.Cli.Paper.Setting;

namespace ShopDays.Cli.Paper.Lists;

/// <summary>An empty sheet for times that are not on a day sheet.</summary>
internal static class LogPages
{
    private static readonly Column[] Columns =
    [
        Column.Fixed("Date", 50),
        Column.Shared("Task or mark", 1.6),
        Column.Fixed("Quantity", 52),
        Column.Fixed("Start", 42),
        Column.Fixed("Stop", 42),
        Column.Fixed("Took", 42),
        Column.Shared("Note", 1.2),
        Column.Fixed("Done", 26),
    ];

    /// <summary>The blocks: one page full of rows.</summary>
    /// <param name="room">The space of a page.</param>
    public static IEnumerable<Block> Of(Room room)
    {
        yield return new Heading("Log", TypeScale.Heading) { BookmarkLevel = 0 };
        yield return new Paragraph("Took is start to stop less what was paused. Done: tick it when the task is finished, leave it when it goes on another day.", TypeScale.Small);
        var style = TypeScale.Bench;
        var padding = 5.5;
        var rows = (int)((room.Height - 75) / (style.LineHeight + (2 * padding)));
        yield return new Table(
            Columns,
            [.. Enumerable.Repeat(Row.Of([.. Enumerable.Repeat<Cell>(new PencilCell(), 7), new TickCell()]), rows)],
            style) { Padding = padding };
    }
}
