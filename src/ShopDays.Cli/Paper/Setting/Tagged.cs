namespace ShopDays.Cli.Paper.Setting;

/// <summary>What a part of a page is to a program that reads it out (ISO 32000-1, 14.8.4).</summary>
internal enum Tag
{
    /// <summary>All of the file.</summary>
    Document,

    /// <summary>A heading; its level follows from those before it.</summary>
    Heading,

    /// <summary>A paragraph.</summary>
    Paragraph,

    /// <summary>Parts that belong together.</summary>
    Division,

    /// <summary>A list.</summary>
    List,

    /// <summary>An entry of a list.</summary>
    Entry,

    /// <summary>What stands before an entry of a list.</summary>
    EntrySign,

    /// <summary>The words of an entry of a list.</summary>
    EntryWords,

    /// <summary>A table.</summary>
    Table,

    /// <summary>A row of a table.</summary>
    Row,

    /// <summary>The name of a column.</summary>
    ColumnHead,

    /// <summary>The name of a row.</summary>
    RowHead,

    /// <summary>A field of a table.</summary>
    Field,

    /// <summary>A picture, with words for who cannot see it.</summary>
    Figure,
}

/// <summary>
/// A part of the file as it is read out. It comes into the file where something of it is first drawn, so that what is
/// only measured leaves no trace.
/// </summary>
/// <param name="tag">What it is.</param>
/// <param name="within">The part that it belongs to; null for the file itself.</param>
internal sealed class Tagged(Tag tag, Tagged? within = null)
{
    private readonly List<object> inside = [];

    /// <summary>What it is.</summary>
    public Tag Tag { get; } = tag;

    /// <summary>The part that it belongs to; null for the file itself.</summary>
    public Tagged? Within { get; } = within;

    /// <summary>Of a figure, what it shows, in words.</summary>
    public string? Alternative { get; init; }

    /// <summary>Of a figure, the place that it takes on its page.</summary>
    public Box? Place { get; init; }

    /// <summary>Of a heading, how far in it stands: 0 names the whole, 1 a section, 2 a part of one.</summary>
    public int Rank { get; init; }

    /// <summary>Of a field, how many columns it takes.</summary>
    public int Columns { get; init; } = 1;

    /// <summary>Of a heading, its level from 1, once it stands in the file.</summary>
    public int Level { get; set; }

    /// <summary>Whether it stands in the file.</summary>
    public bool IsPlaced { get; set; }

    /// <summary>What it is made of, as it is read: parts, and strokes of pages.</summary>
    public IReadOnlyList<object> Inside => inside;

    /// <summary>Its name in the file.</summary>
    public string Name => Tag switch
    {
        Tag.Document => "Document",
        Tag.Heading => $"H{(char)('0' + Level)}",
        Tag.Paragraph => "P",
        Tag.Division => "Div",
        Tag.List => "L",
        Tag.Entry => "LI",
        Tag.EntrySign => "Lbl",
        Tag.EntryWords => "LBody",
        Tag.Table => "Table",
        Tag.Row => "TR",
        Tag.ColumnHead or Tag.RowHead => "TH",
        Tag.Field => "TD",
        Tag.Figure => "Figure",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>Adds a part at its end.</summary>
    public void Add(Tagged part) => inside.Add(part);

    /// <summary>Adds strokes of a page at its end.</summary>
    public void Add(MarkedStrokes strokes) => inside.Add(strokes);
}

/// <summary>Strokes of a page that are marked as one.</summary>
/// <param name="Page">The page, from 0.</param>
/// <param name="Number">Which marked strokes of the page they are, from 0.</param>
internal readonly record struct MarkedStrokes(int Page, int Number);
