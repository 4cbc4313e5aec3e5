namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// A note that stands out by a bar at its left. A caution has a thick black bar and a triangle; another note a thin
/// grey bar. It stays on one page, if one page can hold it.
/// </summary>
/// <param name="Title">Set heavier, above the text; nothing stands there if it is empty.</param>
/// <param name="Paragraphs">The text.</param>
/// <param name="Style">How the text is set.</param>
public sealed record NoteBox(string Title, IReadOnlyList<string> Paragraphs, TextStyle Style) : Block
{
    /// <summary>White above and below the text, in points.</summary>
    public double Padding { get; init; } = 6;

    /// <summary>Whether it warns of harm.</summary>
    public bool Caution { get; init; }

    internal override IReadOnlyList<Piece> Pieces(Room room)
    {
        var sign = Caution ? 1.5 * Style.Size : 0;
        var left = (Caution ? 5 : 2) + 9 + (Caution ? sign + 8 : 0);
        var width = room.Width - left - Padding;
        var note = new Tagged(Tag.Division);
        List<Piece> inside = [Piece.Space(Padding)];
        if (Title.Length > 0)
        {
            inside.AddRange(Read(Title, Style.In(Weight.SemiBold)));
        }

        foreach (var paragraph in Paragraphs)
        {
            inside.Add(Piece.Space(inside.Count > 1 ? 0.25 * Style.Size : 0));
            inside.AddRange(Read(paragraph, Style));
        }

        inside.Add(Piece.Space(Padding));
        var strips = inside.Select((piece, order) => piece with
        {
            Blank = false,
            Draw = (page, box) =>
            {
                DrawBar(page, box);
                if (Caution && order == 1)
                {
                    var place = new Box(box.X + 14, box.Y + ((Style.LineHeight - sign) / 2) + 1, sign, sign * 0.9);
                    page.As(new(Tag.Figure, note) { Alternative = "Caution", Place = place }, () => Signs.Caution(page, place));
                }

                piece.Draw(page, box with { X = box.X + left, Width = width });
            },
        });
        return [.. Kept(strips), Piece.Space(0.7 * Style.Size)];

        IEnumerable<Piece> Read(string text, TextStyle style)
        {
            var paragraph = new Tagged(Tag.Paragraph, note);
            return Paragraph.Lines(text, style, Align.Left, width).Select(line => line.As(paragraph));
        }
    }

    private void DrawBar(Surface page, Box box) => page.Rectangle(
        box with { Width = Caution ? 5 : 2 },
        null,
        Fill.Shade(Caution ? 0 : 0.5));
}
