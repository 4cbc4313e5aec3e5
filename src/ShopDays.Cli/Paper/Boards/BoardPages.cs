using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Layouts;

namespace ShopDays.Cli.Paper.Boards;

/// <summary>Every board that is cut: its picture, and its cuts in order.</summary>
internal static class BoardPages
{
    // So that two boards with a dozen cuts each share a page.
    private const double Tallest = 130;

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
        foreach (var layout in plan.Layout.Boards)
        {
            var picture = new BoardPicture(layout, plan.Format, plan.Job.Allowances.Kerf, room.Width, Tallest);
            List<Block> board =
            [
                new Heading(wording.Board(layout.Board) + (layout.IsBestFaceUp ? ", best face up" : ""), TypeScale.Subheading) { BookmarkLevel = 1 },
                new Drawing(picture.Height, (page, box) => page.Draw(picture.Drawn(), new(box.X, box.Y))),
            ];
            if (picture.Key.Count > 0)
            {
                board.Add(new Paragraph(KeyOf(picture, wording), TypeScale.Small));
            }

            // With its cuts on one page if one page can hold both; otherwise they go on behind it.
            var cuts = CutTable.Of(layout, wording);
            var whole = new Together([.. board, cuts]);
            if (whole.Pieces(room).Sum(piece => piece.Height) <= room.Height - (layout == plan.Layout.Boards[0] ? Above : 0))
            {
                yield return whole;
            }
            else
            {
                yield return new Together(board);
                yield return cuts;
            }
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
