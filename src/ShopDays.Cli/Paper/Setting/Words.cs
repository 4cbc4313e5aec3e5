namespace ShopDays.Cli.Paper.Setting;

/// <summary>A heading: it never stands last on a page.</summary>
/// <param name="Text">Its words.</param>
/// <param name="Style">One of the headings of <see cref="TypeScale"/>.</param>
public sealed record Heading(string Text, TextStyle Style) : Block
{
    /// <summary>Its level in the list of bookmarks, 0 at the outermost; none if it is not listed.</summary>
    public int? BookmarkLevel { get; init; }

    /// <summary>Distance above, in points.</summary>
    public double Above { get; init; } = 0.9 * Style.Size;

    internal override IReadOnlyList<Piece> Pieces(Room room)
    {
        var heading = new Tagged(Tag.Heading) { Rank = Rank };
        List<Piece> pieces = [Piece.Space(Above, keep: true)];
        pieces.AddRange(Paragraph.Lines(Text, Style, Align.Left, room.Width).Select(line => line.As(heading) with { KeepWithNext = true }));
        pieces.Add(Piece.Space(Style.Size * 0.3, keep: true));
        if (BookmarkLevel is { } level)
        {
            pieces[1] = pieces[1] with { Bookmark = (Text, level) };
        }

        return pieces;
    }

    private int Rank => Style.Size >= TypeScale.Title.Size ? 0 : Style.Size >= TypeScale.Heading.Size ? 1 : 2;
}

/// <summary>A paragraph, broken into lines; neither its first line nor its last stands alone on a page.</summary>
/// <param name="Text">Its words; a line feed begins a new line.</param>
/// <param name="Style">How it is set.</param>
/// <param name="Align">Which side is even.</param>
public sealed record Paragraph(string Text, TextStyle Style, Align Align = Align.Left) : Block
{
    /// <summary>Distance below, in points.</summary>
    public double After { get; init; } = 0.45 * Style.Size;

    internal override IReadOnlyList<Piece> Pieces(Room room)
    {
        var lines = Lines(Text, Style, Align, room.Width);
        var paragraph = new Tagged(Tag.Paragraph);
        return
        [
            .. lines.Select((line, order) =>
                line.As(paragraph) with { KeepWithNext = order < lines.Count - 1 && (order == 0 || order == lines.Count - 2) }),
            Piece.Space(After),
        ];
    }

    internal static IReadOnlyList<Piece> Lines(string text, TextStyle style, Align align, double width) =>
        [.. LineBreaks.Of(text, style, width).Select(line => Line(line, style, align))];

    private static Piece Line(string text, TextStyle style, Align align) => new(style.LineHeight, (page, box) =>
    {
        var x = align switch
        {
            Align.Left => box.X,
            Align.Centre => box.Middle.X,
            Align.Right => box.Right,
            _ => throw new ArgumentOutOfRangeException(nameof(align), align, null),
        };
        page.Text(text, x, box.Y + style.Baseline, style, align);
    });
}

/// <summary>What stands before each entry of a list.</summary>
public enum ListSign
{
    /// <summary>A round dot.</summary>
    Dot,

    /// <summary>An empty square for a pencil's tick.</summary>
    TickBox,

    /// <summary>1, 2, 3.</summary>
    Number,
}

/// <summary>A list; an entry that needs several lines is set in under its first.</summary>
/// <param name="Entries">From the top.</param>
/// <param name="Style">How they are set.</param>
/// <param name="Sign">What stands before each.</param>
public sealed record Bullets(IReadOnlyList<string> Entries, TextStyle Style, ListSign Sign = ListSign.Dot) : Block
{
    internal override IReadOnlyList<Piece> Pieces(Room room)
    {
        var list = new Tagged(Tag.List);
        return [.. Entries.SelectMany((entry, order) => Entry(list, entry, order + 1, room.Width)), Piece.Space(0.3 * Style.Size)];
    }

    private IEnumerable<Piece> Entry(Tagged list, string entry, int number, double width)
    {
        var whole = new Tagged(Tag.Entry, list);
        var (sign, words) = (new Tagged(Tag.EntrySign, whole), new Tagged(Tag.EntryWords, whole));
        var indent = Style.Size * (Sign == ListSign.Dot ? 1.1 : 1.8);
        var lines = Paragraph.Lines(entry, Style, Align.Left, width - indent);
        for (var order = 0; order < lines.Count; order++)
        {
            var line = lines[order];
            var first = order == 0;
            yield return line with
            {
                KeepWithNext = order < lines.Count - 1,
                Draw = (page, box) =>
                {
                    if (first)
                    {
                        page.As(sign, () => DrawSign(page, box, number));
                    }

                    page.As(words, () => line.Draw(page, box with { X = box.X + indent, Width = box.Width - indent }));
                },
            };
        }

        yield return Piece.Space(0.25 * Style.Size);
    }

    private void DrawSign(Surface page, Box box, int number)
    {
        switch (Sign)
        {
            case ListSign.Dot:
                page.Text("•", box.X + (0.1 * Style.Size), box.Y + Style.Baseline, Style);
                break;
            case ListSign.TickBox:
                Signs.TickBox(page, box.X, box.Y + (Style.LineHeight / 2), Style.Size);
                break;
            case ListSign.Number:
                page.Text($"{number}.", box.X + (1.4 * Style.Size), box.Y + Style.Baseline, Style, Align.Right);
                break;
            default:
                throw new InvalidOperationException($"No sign is drawn for {Sign}.");
        }
    }
}
