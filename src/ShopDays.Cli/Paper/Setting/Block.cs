namespace ShopDays.Cli.Paper.Setting;

/// <summary>The space that blocks are set in: the width of the text and the height of an empty page, in points.</summary>
/// <param name="Width">From margin to margin.</param>
/// <param name="Height">From margin to margin.</param>
internal readonly record struct Room(double Width, double Height);

/// <summary>
/// A strip of a page that is never broken, as wide as the text. A block is a run of such strips.
/// </summary>
/// <param name="Height">In points.</param>
/// <param name="Draw">Draws it in the place it was given.</param>
internal sealed record Piece(double Height, Action<Surface, Box> Draw)
{
    /// <summary>Whether it may not be the last on its page while the next piece stands on the following one.</summary>
    public bool KeepWithNext { get; init; }

    /// <summary>Whether it is only distance, of no use at the top of a page.</summary>
    public bool Blank { get; init; }

    /// <summary>What is repeated above it when it begins a page.</summary>
    public Piece? Head { get; init; }

    /// <summary>Where it hangs in the list of bookmarks, with its words.</summary>
    public (string Title, int Level)? Bookmark { get; init; }

    /// <summary>The same, read out as a part of the file.</summary>
    public Piece As(Tagged part)
    {
        var draw = Draw;
        return this with { Draw = (page, box) => page.As(part, () => draw(page, box)) };
    }

    /// <summary>Distance.</summary>
    public static Piece Space(double height, bool keep = false) =>
        new(height, (_, _) => { }) { Blank = true, KeepWithNext = keep };
}

/// <summary>Something that flows down the pages of a <see cref="Sheet"/>.</summary>
public abstract record Block
{
    private protected Block()
    {
    }

    internal abstract IReadOnlyList<Piece> Pieces(Room room);

    private protected static IReadOnlyList<Piece> Kept(IEnumerable<Piece> pieces)
    {
        Piece[] all = [.. pieces];
        return [.. all.Select((piece, order) => order < all.Length - 1 ? piece with { KeepWithNext = true } : piece)];
    }
}

/// <summary>Distance between two blocks, in points; dropped at the top of a page.</summary>
/// <param name="Height">In points.</param>
public sealed record Gap(double Height) : Block
{
    internal override IReadOnlyList<Piece> Pieces(Room room) => [Piece.Space(Height)];
}

/// <summary>A line from margin to margin.</summary>
/// <param name="Pen">What it is drawn with.</param>
public sealed record Rule(Pen Pen) : Block
{
    internal override IReadOnlyList<Piece> Pieces(Room room) =>
        [new(Pen.Width, (page, box) => page.Line(box.X, box.Middle.Y, box.Right, box.Middle.Y, Pen))];
}

/// <summary>A drawing as wide as the text, never broken.</summary>
/// <param name="Height">In points; cut down to the height of a page.</param>
/// <param name="Meaning">What it is to who has it read out.</param>
/// <param name="Draw">Draws it in the place it was given.</param>
public sealed record Drawing(double Height, Meaning Meaning, Action<Surface, Box> Draw) : Block
{
    /// <summary>Where it hangs in the list of bookmarks, with its words.</summary>
    internal (string Title, int Level)? Bookmark { get; init; }

    internal override IReadOnlyList<Piece> Pieces(Room room) =>
        [new(Math.Min(Height, room.Height), (page, box) => Meaning.Draw(page, box, () => Draw(page, box))) { Bookmark = Bookmark }];
}

/// <summary>Blocks that stay on one page, if one page can hold them.</summary>
/// <param name="Blocks">From the top.</param>
public sealed record Together(params IReadOnlyList<Block> Blocks) : Block
{
    internal override IReadOnlyList<Piece> Pieces(Room room) => Kept(Blocks.SelectMany(block => block.Pieces(room)));
}

/// <summary>Blocks beside each other in equal shares of the width; they stay on one page and must fit it.</summary>
/// <param name="Distance">Between two of them, in points.</param>
/// <param name="Blocks">From the left.</param>
public sealed record SideBySide(double Distance, params IReadOnlyList<Block> Blocks) : Block
{
    /// <summary>Blocks in two columns of heights as even as their order lets them be, read down the left one first.</summary>
    internal static SideBySide Balanced(double distance, IReadOnlyList<Block> blocks, Room room)
    {
        var column = room with { Width = (room.Width - distance) / 2 };
        double[] heights = [.. blocks.Select(block => block.Pieces(column).Sum(piece => piece.Height))];
        var left = Enumerable.Range(0, blocks.Count + 1).Reverse().MinBy(count => Math.Max(heights.Take(count).Sum(), heights.Skip(count).Sum()));
        return new(distance, new Together([.. blocks.Take(left)]), new Together([.. blocks.Skip(left)]));
    }

    internal override IReadOnlyList<Piece> Pieces(Room room)
    {
        var width = (room.Width - (Distance * (Blocks.Count - 1))) / Blocks.Count;
        IReadOnlyList<Piece>[] columns = [.. Blocks.Select(block => block.Pieces(room with { Width = width }))];
        return
        [
            new(columns.Max(column => column.Sum(piece => piece.Height)), (page, box) =>
            {
                for (var order = 0; order < columns.Length; order++)
                {
                    var top = box.Y;
                    foreach (var piece in columns[order])
                    {
                        piece.Draw(page, new Box(box.X + (order * (width + Distance)), top, width, piece.Height));
                        top += piece.Height;
                    }
                }
            }),
        ];
    }
}
