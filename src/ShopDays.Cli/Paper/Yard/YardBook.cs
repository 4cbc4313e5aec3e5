using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Layouts;
using ShopDays.Parts;
using ShopDays.Work.Materials;

namespace ShopDays.Cli.Paper.Yard;

/// <summary>The list to take to the timber yard: what to buy, what is on the stack already, glue, finish and fittings; boxes to tick and room for a pencil.</summary>
internal static class YardBook
{
    // The roomiest first: the list takes the first that lets it stand on one side of a sheet.
    private static readonly double[] Sizes = [10.5, 9.5, 8.5];

    /// <summary>Sets it. The same values give the same bytes.</summary>
    /// <param name="told">The list.</param>
    /// <param name="made">When.</param>
    /// <returns>A PDF file.</returns>
    public static byte[] Set(ToldMaterials told, Instant made)
    {
        var title = $"{told.Read.Job.Name}: materials";
        using var book = new Book(new Imprint(title, $"Materials list, {told.Read.Shop.Name}", "en", made));
        var sheet = new Sheet(book, told.Read.Shop.Paper, Margins.Usual, new($"{told.Read.Job.Name}, {told.Read.Shop.Name}", "Materials", $"Made {DateWords.Long(told.Today)}"));
        var blocks = Densities.First(Sizes, size => [.. Blocks(told, size)], new(sheet.Area.Width, sheet.Area.Height)) ?? [.. Blocks(told, Sizes[0])];
        foreach (var block in blocks)
        {
            sheet.Add(block);
        }

        sheet.Finish();
        return book.ToBytes();
    }

    private static IEnumerable<Block> Blocks(ToldMaterials told, double size)
    {
        var (list, style) = (told.List, TypeScale.Body with { Size = size });
        yield return new Heading($"{told.Read.Job.Name}: materials", TypeScale.Title) { BookmarkLevel = 0, Above = 0 };
        yield return new Heading("Timber to buy", TypeScale.Heading) { BookmarkLevel = 1 };
        if (list.ToBuy.Count == 0)
        {
            yield return new Paragraph(list.NotToBeBought.Count == 0 ? "None: every part comes out of the stock." : "None that a yard has.", style);
        }
        else
        {
            yield return ToBuy(told, style);
            yield return new Paragraph(Wording.Signed(told.OfTimber), TypeScale.Small);
        }

        if (list.NotToBeBought.Count > 0)
        {
            yield return new NoteBox("Not to be had so", [.. UnplacedWords.Lines(list.NotToBeBought, told.Format)], style);
        }

        if (list.OnHand.Count > 0)
        {
            yield return new Heading("From the stack", TypeScale.Heading) { BookmarkLevel = 1 };
            yield return OnHand(told, style);
        }

        if (list.Adhesives.Count + list.Finishes.Count > 0)
        {
            yield return new Heading("Glue and finish", TypeScale.Heading) { BookmarkLevel = 1 };
            yield return Spread(told, [.. list.Adhesives, .. list.Finishes], style);
            yield return new Paragraph(ToldMaterials.OfQuantities, TypeScale.Small);
        }

        if (list.Hardware.Count > 0)
        {
            yield return new Heading("Fittings", TypeScale.Heading) { BookmarkLevel = 1 };
            yield return Fittings(list.Hardware, style);
        }

        if (list.OnOrder.Count > 0)
        {
            yield return new Heading("On order", TypeScale.Heading) { BookmarkLevel = 1 };
            yield return new Bullets([.. list.OnOrder.Select(ToldMaterials.Order)], style, ListSign.TickBox);
        }

        if (PaperNames.Remark([told.Read.Shop.Name, told.Read.Job.Name, .. told.Read.Job.Parts.Select(part => part.Name), .. list.OnHand.SelectMany(one => one.Boards).Select(board => board.Board.Name), .. list.Hardware.Select(one => one.Name), .. list.OnOrder.Select(one => one.What)]) is { } remark)
        {
            yield return new Paragraph(remark, TypeScale.Small);
        }
    }

    private static Table ToBuy(ToldMaterials told, TextStyle style) => new(
        [
            Column.Fixed("", 13),
            Column.Shared("Timber, rough", 1.1),
            Column.Shared("In the piece", 0.9),
            Column.Shared("To buy, with waste", 1.4),
            Column.Shared("Boards that do", 1.5),
            Column.Shared("Each at least", 1.1),
            Column.Fixed("Price", 44),
            Column.Fixed("Got", 52),
        ],
        [
            .. told.List.ToBuy.Select(one => Row.Of(
                new TickCell(),
                new TextCell(told.Timber(one.Species, one.Thickness)) { Style = style.In(Weight.SemiBold), Note = $"for {CountWords.Names([.. one.Parts.Select(part => part.Name)], 4)}" },
                Wording.Signed(told.Volume(one.Net)),
                Wording.Signed(told.WithWaste(one)),
                Wording.Signed(string.Join('\n', told.Boards(one))),
                told.Clear(one),
                new PencilCell(),
                new PencilCell())),
        ],
        style);

    private static Table OnHand(ToldMaterials told, TextStyle style) => new(
        [Column.Fixed("", 13), Column.Fixed("Board", 56), Column.Shared("Size", 1.2), Column.Shared("Parts", 2.2), Column.Fixed("Found", 52)],
        [.. told.List.OnHand.SelectMany(one => RowsOf(told, one))],
        style);

    private static IEnumerable<Row> RowsOf(ToldMaterials told, TimberOnHand one)
    {
        yield return new Row(RowKind.Group, new TextCell(Wording.Signed($"{told.Timber(one.Species, one.Thickness)}: {told.Found(one)}")));
        foreach (var board in one.Boards)
        {
            yield return Row.Of(new TickCell(), board.Board.Name, Wording.Sides(told.Format, board.Board.Length, board.Board.Width, board.Board.Thickness), Parts(board), new PencilCell());
        }
    }

    private static Table Spread(ToldMaterials told, IReadOnlyList<SpreadWanted> all, TextStyle style) => new(
        [Column.Fixed("", 13), Column.Shared("What", 1.4), Column.Shared("How much", 1.2), Column.Shared("For", 1.4), Column.Fixed("Price", 52), Column.Fixed("Got", 60)],
        [.. all.Select(one => Row.Of(new TickCell(), new TextCell(one.Name) { Style = style.In(Weight.SemiBold) }, told.Quantity(one), Wording.Signed(told.Surface(one)), new PencilCell(), new PencilCell()))],
        style);

    private static Table Fittings(IReadOnlyList<BoughtItem> all, TextStyle style) => new(
        [Column.Fixed("", 13), Column.Shared("What", 2.6), Column.Shared("How many", 1), Column.Shared("Reckoned at, each", 1.2), Column.Fixed("Price", 52), Column.Fixed("Got", 60)],
        [.. all.Select(one => Row.Of(new TickCell(), new TextCell(one.Name) { Style = style.In(Weight.SemiBold) }, CountWords.Number(one.Count), one.Each.ToString(), new PencilCell(), new PencilCell()))],
        style);

    private static string Parts(BoardLayout board) => CountWords.Names([.. board.Blanks.Select(blank => blank.Blank.Part.Name).Distinct(StringComparer.Ordinal)], 6);
}
