using System.Globalization;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Paper.Lists;

/// <summary>The cut list: every part with its finished size, the blanks that are sawn for it, and boxes to tick.</summary>
internal static class CutListPages
{
    private const double Tick = 9;

    private static readonly Column[] Columns =
    [
        Column.Shared("Part", 1.2),
        Column.Fixed("Count", 32, Align.Right),
        Column.Shared("Finished", 1.5),
        Column.Shared("Timber", 0.9),
        Column.Shared("Blanks: label, length × width, board", 2.4),
        Column.Fixed("Weight each", 44, Align.Right),
        Column.Fixed("Sawn", 56),
        Column.Fixed("Planed", 56),
    ];

    private static readonly Column[] Moving =
    [
        Column.Shared("Part", 1.2),
        Column.Fixed("Width", 60, Align.Right),
        Column.Shared("Made at", 1.3),
        Column.Fixed("Shrinks", 60, Align.Right),
        Column.Fixed("Swells", 60, Align.Right),
        Column.Fixed("Groove, each side", 66, Align.Right),
        Column.Fixed("Slot", 60, Align.Right),
        Column.Shared("Top, each edge", 1.2),
        Column.Fixed("Drawer gap", 60, Align.Right),
    ];

    /// <summary>The blocks.</summary>
    public static IEnumerable<Block> Of(PlanPaper plan)
    {
        var wording = new Wording(plan);
        yield return new Heading("Cut list", TypeScale.Heading) { BookmarkLevel = 0 };
        yield return new Paragraph("Finished sizes are length along the grain × width × thickness. A blank has its allowances on it. Weights are of the finished part.", TypeScale.Small);
        yield return new Table(Columns, [.. plan.Job.Parts.Select(part => RowOf(plan, part, wording))], TypeScale.Body with { Size = 9.5 });
        if (plan.Movements.Count > 0)
        {
            yield return new Together(
            [
                new Heading("Movement over the year", TypeScale.Subheading),
                new Paragraph(MovementWords.Range(plan.Job), TypeScale.Small),
                new Table(Moving, [.. plan.Movements.Select(one => MovementOf(one, plan.Format))], TypeScale.Body with { Size = 9.5 }),
                .. MovementWords.Meaning.Select(line => new Paragraph(line, TypeScale.Small)),
            ]);
        }
    }

    private static Row MovementOf(Movement one, LengthFormat format) => Row.Of(
        one.Part.Name,
        format.Write(one.Part.Width),
        MovementWords.Made(one),
        MovementWords.By(one.Shrinks, format),
        MovementWords.By(one.Swells, format),
        MovementWords.By(one.Swells / 2, format),
        MovementWords.By(one.InAll, format),
        $"{MovementWords.By(one.Shrinks / 2, format)} in, {MovementWords.By(one.Swells / 2, format)} out",
        MovementWords.By(one.Swells, format));

    private static Row RowOf(PlanPaper plan, Part part, Wording wording)
    {
        var blanks = BlanksOf(plan.Layout, part);
        return Row.Of(
            new TextCell(part.Name) { Style = TypeScale.Body with { Size = 9.5, Weight = Weight.SemiBold }, Note = NoteOf(part) },
            CountWords.Number(part.Count),
            wording.Finished(part),
            part.Species.Name,
            blanks.Count == 0 ? "none: no board yields it" : string.Join('\n', blanks.Select(blank => $"{blank.Label}: {wording.Blank(blank.Blank)}, {blank.Board}")),
            wording.Weight(Weights.OfPart(part, plan.Layout)),
            Ticks(blanks.Count),
            Ticks(part.Count + part.Spare));
    }

    private static string? NoteOf(Part part)
    {
        List<string> notes = [];
        if (part.IsPanel)
        {
            notes.Add("panel");
        }

        if (part.Spare > 0)
        {
            notes.Add($"{CountWords.Number(part.Spare)} spare");
        }

        if (part.Matched is { } matched)
        {
            notes.Add($"matched: {matched}");
        }

        if (part.Ends == PartEnds.Mitred)
        {
            notes.Add("ends mitred");
        }

        if (part.Ends == PartEnds.Angled)
        {
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"ends {part.EndAngle:0.#}° off square"));
        }

        return notes.Count == 0 ? null : string.Join(", ", notes);
    }

    private static List<(string Label, Blank Blank, string Board)> BlanksOf(Layout layout, Part part) =>
    [
        .. layout.Boards
            .SelectMany(board => board.Blanks.Where(placed => placed.Blank.Part == part).Select(placed => (placed.Blank.Label, placed.Blank, board.IsSawn ? board.Board.Name + ", sawn" : board.Board.Name)))
            .OrderBy(blank => blank.Blank.Numbers[0])
            .ThenBy(blank => blank.Blank.Strip),
    ];

    private static DrawnCell Ticks(int count)
    {
        const int ARow = 5;
        var rows = Math.Max(1, (count + ARow - 1) / ARow);
        return new((rows * (Tick + 2)) + 1, (page, box) =>
        {
            for (var order = 0; order < count; order++)
            {
                Signs.TickBox(page, box.X + (order % ARow * (Tick + 2)), box.Y + 6 + (order / ARow * (Tick + 2)), Tick);
            }
        });
    }
}
