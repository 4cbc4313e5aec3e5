using System.Globalization;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Paper.Lists;

/// <summary>The boards that are cut, with what each weighs and cost, and the offcuts that go back on the stack.</summary>
internal static class StockPages
{
    private static readonly Column[] Columns =
    [
        Column.Fixed("", 11),
        Column.Fixed("Board", 36),
        Column.Shared("Timber", 1.15),
        Column.Fixed("Size", 108),
        Column.Shared("Weight", 1.1),
        Column.Fixed("Price", 60, Align.Right),
        Column.Fixed("Offcuts to keep", 84),
    ];

    /// <summary>The blocks.</summary>
    public static IEnumerable<Block> Of(PlanPaper plan)
    {
        var wording = new Wording(plan);
        var boards = plan.ToCut;
        List<Row> rows = [.. boards.Select(board => RowOf(board, plan.Shop.Limits, wording))];
        rows.Add(new Row(
            RowKind.Total,
            "",
            "",
            CountWords.Of(boards.Count, "board"),
            Volume(boards, plan.Shop.Units),
            wording.Weight(Weights.OfBoards(boards.Select(board => board.Board))),
            Price(boards),
            ""));
        yield return new Heading("Stock", TypeScale.Heading) { BookmarkLevel = 0 };
        yield return new Table(Columns, rows, TypeScale.Body with { Size = 9.5 });
        if (boards.Any(board => plan.Shop.Limits.IsForTwo(board.Board.Weight)))
        {
            yield return new NoteBox(
                "Two people or an aid",
                [$"Boards so marked weigh more than {wording.Weight(plan.Shop.Limits.LiftAlone)}, this shop's limit for one person. Weights are computed from the timber's density at its moisture; a wet board weighs more."],
                TypeScale.Body) { Caution = true };
        }

        if (plan.Verdicts.Count > 0)
        {
            yield return new Paragraph($"Dry enough for final sizes? {string.Join("; ", plan.Verdicts)}.", TypeScale.Body);
        }

        string[] left = [.. plan.Job.Boards.Where(board => plan.Layout.ToCut.All(used => used.Board.Name != board.Name)).Select(board => board.Name)];
        if (left.Length > 0)
        {
            yield return new Paragraph($"Not needed, and left on the stack: {string.Join(", ", left)}.", TypeScale.Body);
        }

        yield return CostOf(plan);
    }

    private static Together CostOf(PlanPaper plan)
    {
        var cost = plan.Layout.Cost;
        (string Name, Money Amount)[] lines = [.. CostWords.Lines(cost).Where(line => line.Amount.Amount != 0)];
        var remarks = new Together(
        [
            .. CostWords.Assumptions(cost, plan.Format)
                .Prepend(CostWords.Bound(cost))
                .Append(CostWords.Leaning(plan.Preference))
                .OfType<string>()
                .Select(remark => new Paragraph(remark, TypeScale.Small)),
        ]);
        return lines.Length == 0
            ? remarks
            : new(new Heading("What the layout decides, in money", TypeScale.Subheading), new SideBySide(22, Sums(lines), remarks));
    }

    private static Table Sums((string Name, Money Amount)[] lines) => new(
        [Column.Shared(""), Column.Fixed("", 76, Align.Right)],
        [.. lines.Select((line, order) => new Row(order < lines.Length - 1 ? RowKind.Entry : RowKind.Total, Wording.Capital(line.Name), line.Amount.ToString()))],
        TypeScale.Small);

    private static Row RowOf(BoardLayout layout, ShopLimits limits, Wording wording)
    {
        var board = layout.Board;
        string[] kept = [.. layout.Offcuts.Where(offcut => offcut.IsUseful).Select(offcut => wording.Sides(offcut.Region.Length, offcut.Region.Width))];
        return Row.Of(
            new TickCell(),
            board.Name,
            board.Species.Name,
            wording.Sides(board.Length, board.Width, board.Thickness),
            new TextCell(wording.Weight(board.Weight)) { Note = limits.IsForTwo(board.Weight) ? "two people or an aid" : null },
            board.Price?.Rounded().ToString() ?? "",
            kept.Length == 0 ? "" : string.Join('\n', kept));
    }

    private static string Volume(IReadOnlyList<BoardLayout> boards, LengthUnit units)
    {
        var all = boards.Aggregate(Measures.Volume.Zero, (sum, board) => sum + board.Board.Volume);
        return units is LengthUnit.Inch or LengthUnit.Foot
            ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round(all.BoardFeet, 1, MidpointRounding.AwayFromZero):0.#} board feet")
            : string.Create(CultureInfo.InvariantCulture, $"{Math.Round(all.CubicMetres, 3, MidpointRounding.AwayFromZero):0.###} m³");
    }

    private static string Price(IReadOnlyList<BoardLayout> boards)
    {
        Money[] prices = [.. boards.Select(board => board.Board.Price).OfType<Money>()];
        return prices.Length == 0 ? "" : prices.Skip(1).Aggregate(prices[0], (sum, price) => sum + price).Rounded().ToString();
    }
}
