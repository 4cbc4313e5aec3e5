namespace ShopDays.Cli.Paper.Setting;

/// <summary>What stands in one field of a table.</summary>
public abstract record Cell
{
    private protected Cell()
    {
    }

    /// <summary>Makes a field of text.</summary>
    public static implicit operator Cell(string text) => new TextCell(text);

    /// <summary>The strips the field is made of, from its top.</summary>
    internal abstract IReadOnlyList<Piece> Strips(TextStyle style, Align align, double width);
}

/// <summary>Text, in as many lines as it needs.</summary>
/// <param name="Text">Its words.</param>
public sealed record TextCell(string Text) : Cell
{
    /// <summary>How it is set, if not as the rest of the table.</summary>
    public TextStyle? Style { get; init; }

    /// <summary>Whether the remark goes on behind the text where one line holds both.</summary>
    public bool NoteRunsOn { get; init; }

    /// <summary>A remark below, set small.</summary>
    public string? Note { get; init; }

    /// <summary>How the remark is set.</summary>
    public TextStyle NoteStyle { get; init; } = TypeScale.Small;

    internal override IReadOnlyList<Piece> Strips(TextStyle style, Align align, double width)
    {
        var own = Style ?? style;
        var lines = Paragraph.Lines(Text, own, align, width);
        var behind = own.WidthOf(Text) + (0.6 * own.Size);
        if (NoteRunsOn && Note is { } note && align == Align.Left && lines.Count == 1 && behind + NoteStyle.WidthOf(note) <= width)
        {
            return
            [
                lines[0] with
                {
                    Draw = (page, box) =>
                    {
                        lines[0].Draw(page, box);
                        page.Text(note, box.X + behind, box.Y + own.Baseline, NoteStyle);
                    },
                },
            ];
        }

        return Note is null ? lines : [.. lines, .. Paragraph.Lines(Note, NoteStyle, align, width)];
    }
}

/// <summary>An empty square for a pencil's tick, beside the first line.</summary>
public sealed record TickCell : Cell
{
    internal override IReadOnlyList<Piece> Strips(TextStyle style, Align align, double width) =>
        [new(style.LineHeight, (page, box) => Signs.TickBox(page, box.X, box.Middle.Y, style.Size))];
}

/// <summary>A field left blank for a pencil, with a light line to write on.</summary>
public sealed record PencilCell : Cell
{
    internal override IReadOnlyList<Piece> Strips(TextStyle style, Align align, double width) =>
    [
        new(style.LineHeight, (page, box) =>
        {
            var line = box.Y + style.Baseline + (0.2 * style.Size);
            page.Line(box.X, line, box.Right, line, new Pen(0.6, 0.5, Dash.Dotted));
        }),
    ];
}

/// <summary>A field with a drawing in it.</summary>
/// <param name="Height">In points.</param>
/// <param name="Draw">Draws it in the place it was given.</param>
public sealed record DrawnCell(double Height, Action<Surface, Box> Draw) : Cell
{
    internal override IReadOnlyList<Piece> Strips(TextStyle style, Align align, double width) => [new(Height, Draw)];
}
