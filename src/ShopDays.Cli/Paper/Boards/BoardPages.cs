using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Layouts;

namespace ShopDays.Cli.Paper.Boards;

/// <summary>Every board that is cut: its picture, and its cuts in order.</summary>
internal static class BoardPages
{
    // So that a wide slab with a dozen cuts has its page to itself, and two boards with few cuts share one.
    private const double Tallest = 150;

    // The largest picture with its cuts well apart, then closer, then a smaller picture.
    private static readonly (double Tallest, bool IsClose)[] Ways = [(Tallest, false), (Tallest, true), (54, true)];

    // The heading of the section and its legend, above the first board.
    private const double Above = 55;

    /// <summary>The blocks.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="room">The space of a page.</param>
    public static IEnumerable<Block> Of(PlanPaper plan, Room room)
    {
        yield return new Heading("Boards", TypeScale.Heading) { BookmarkLevel = 0 };
        yield return Swatch.Legend;
        var wording = new Wording(plan);
        foreach (var layout in plan.ToCut)
        {
            // With its cuts on one page if one page can hold both, set closely if need be; otherwise they go on behind it.
            var left = new Room(room.Width, room.Height - (layout == plan.ToCut[0] ? Above : 0));
            if (Densities.First(Ways, way => [new Together([.. Picture(way.Tallest), CutTable.Of(layout, wording, way.IsClose)])], left) is { } whole)
            {
                yield return whole[0];
            }
            else
            {
                yield return new Together([.. Picture(Tallest)]);
                yield return CutTable.Of(layout, wording);
            }

            IEnumerable<Block> Picture(double tallest)
            {
                var picture = new BoardPicture(layout, plan.Format, plan.Job.Allowances.Kerf, room.Width, tallest);
                yield return new Heading(wording.Board(layout.Board) + (layout.IsBestFaceUp ? ", best face up" : ""), TypeScale.Subheading) { BookmarkLevel = 1 };
                yield return new Drawing(picture.Height, Meaning.Picture(picture.Description), (page, box) => page.Draw(picture.Drawn(), new(box.X, box.Y)));
                if (picture.Key.Count > 0)
                {
                    yield return new Paragraph(KeyOf(picture, wording), TypeScale.Small);
                }
            }
        }

        List<BoardLayout> sawn = [.. plan.Layout.Sawn, .. plan.Layout.ToCut.Except(plan.ToCut)];
        if (sawn.Count > 0)
        {
            yield return new Together(
                new Heading("Already sawn", TypeScale.Subheading),
                new Bullets([.. sawn.Select(board => $"{board.Board.Name}: {SawnWords.Blanks(board)}")], TypeScale.Body));
        }

        if (plan.Layout.Unplaced.Count > 0)
        {
            yield return new NoteBox("No board yields these", [.. plan.Layout.Unplaced.Select(NameOf)], TypeScale.Body) { Caution = true };
        }
    }

    private static string KeyOf(BoardPicture picture, Wording wording) =>
        string.Join(";  ", picture.Key.Select(entry => $"{entry.Letter}: {entry.Blank.Label}, {wording.Blank(entry.Blank)}"));

    private static string NameOf(Unplaced unplaced) => unplaced.Number > unplaced.Part.Count
        ? $"{unplaced.Part.Name} {CountWords.Number(unplaced.Number)}, a spare"
        : $"{unplaced.Part.Name} {CountWords.Number(unplaced.Number)}";
}
