using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Measures;
using ShopDays.Plans;

namespace ShopDays.Cli.Paper.Lists;

/// <summary>Every wait of the plan, numbered from 1 in the order in which they begin, as on the calendar.</summary>
internal static class WaitPages
{
    private static readonly Column[] Columns =
    [
        Column.Fixed("", 18, Align.Right),
        Column.Fixed("From", 83),
        Column.Fixed("Until", 83),
        Column.Fixed("How long", 50),
        Column.Shared("Why", 1.7),
        Column.Shared("After"),
    ];

    // Sizes of the letters, and the white above and below a row, the roomiest first: waits take the first that lets them stand on one page.
    private static readonly (double Size, double Padding)[] Ways = [(8.5, 1.8), (8.5, 1.2), (8, 0.9)];

    /// <summary>The blocks.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="room">The space between the margins of a page.</param>
    public static IReadOnlyList<Block> Of(PlanPaper plan, Room room) =>
        Densities.First(Ways, way => [.. At(plan, way.Size, way.Padding)], room) ?? [.. At(plan, Ways[0].Size, Ways[0].Padding)];

    private static IEnumerable<Block> At(PlanPaper plan, double size, double padding)
    {
        var waits = plan.Plan.Waits;
        yield return new Heading("Waits", TypeScale.Heading) { BookmarkLevel = 0 };
        if (waits.Count == 0)
        {
            yield return new Paragraph("Nothing in this plan has to wait.", TypeScale.Body);
            yield break;
        }

        yield return new Paragraph("In clock time, nights and closed days included.", TypeScale.Small);
        yield return new Table(Columns, [.. waits.Select((wait, order) => RowOf(wait, order + 1))], TypeScale.Body with { Size = size }) { Distance = 7, Padding = padding };
    }

    private static Row RowOf(PlannedWait wait, int number) => Row.Of(
        CountWords.Number(number),
        DateWords.When(wait.Start),
        DateWords.When(wait.End),
        WaitText.Write(wait.End - wait.Start),
        AwaitedWords.Reason(wait),
        wait.AfterWhat ?? (wait.Awaited is { One.BeginsWithTheJob: false } ? "" : "the beginning of the job"));
}
