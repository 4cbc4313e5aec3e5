namespace ShopDays.Cli.Paper.Setting;

/// <summary>What a row of a table is for.</summary>
public enum RowKind
{
    /// <summary>One entry.</summary>
    Entry,

    /// <summary>Names the rows below it; its one field is as wide as the table, and it never stands last on a page.</summary>
    Group,

    /// <summary>Sums up the rows above it, and stays with the last of them.</summary>
    Total,
}

/// <summary>A row of a table.</summary>
/// <param name="Kind">What it is for.</param>
/// <param name="Cells">From the left: one for every column, or the one of a group.</param>
public sealed record Row(RowKind Kind, params IReadOnlyList<Cell> Cells)
{
    /// <summary>A row with one entry.</summary>
    public static Row Of(params IReadOnlyList<Cell> cells) => new(RowKind.Entry, cells);
}

/// <summary>
/// A table. Its head is repeated on every page, a row that fits on one page is never broken, the first row stands on
/// the page of the head, and the last one with the one before it.
/// </summary>
/// <param name="Columns">From the left.</param>
/// <param name="Rows">From the top.</param>
/// <param name="Style">How its text is set.</param>
public sealed record Table(IReadOnlyList<Column> Columns, IReadOnlyList<Row> Rows, TextStyle Style) : Block
{
    /// <summary>White between two columns, in points.</summary>
    public double Distance { get; init; } = 10;

    /// <summary>Distance below, in points.</summary>
    public double After { get; init; } = Style.Size;

    /// <summary>White above and below the text of a row, in points.</summary>
    public double Padding { get; init; } = 0.28 * Style.Size;

    internal override IReadOnlyList<Piece> Pieces(Room room)
    {
        var places = Column.Places(Columns, room.Width, Distance);
        var table = new Tagged(Tag.Table);
        var head = Head(places, table);
        List<Piece> pieces = head is null ? [] : [head];
        var tallest = room.Height - (head?.Height ?? 0);
        for (var order = 0; order < Rows.Count; order++)
        {
            // The last row does not stand alone on a page where it has company.
            var isKept = Rows[order].Kind == RowKind.Group || order == Rows.Count - 2 || (order + 1 < Rows.Count && Rows[order + 1].Kind == RowKind.Total);
            pieces.AddRange(Parts(Rows[order], places, room.Width, tallest, RowTags(Rows[order], table, head is not null, Columns.Count)).Select(part =>
                part with { Head = head, KeepWithNext = isKept }));
        }

        pieces.Add(Piece.Space(After));
        return pieces;
    }

    // Where no column has a name, the first words of a row name what stands behind them.
    private static Tagged[] RowTags(Row row, Tagged table, bool named, int columns)
    {
        var whole = new Tagged(Tag.Row, table);
        if (row.Kind == RowKind.Group)
        {
            return [new(Tag.RowHead, whole) { Columns = columns }];
        }

        var name = named ? -1 : row.Cells.TakeWhile(cell => cell is not TextCell { Text.Length: > 0 }).Count();
        return [.. row.Cells.Select((_, order) => new Tagged(order == name ? Tag.RowHead : Tag.Field, whole))];
    }

    private Piece? Head(IReadOnlyList<(double Left, double Width)> places, Tagged table)
    {
        if (Columns.All(column => column.Head.Length == 0))
        {
            return null;
        }

        var fields = Columns
            .Select((column, order) => Paragraph.Lines(column.Head, TypeScale.Label, column.Align, places[order].Width))
            .ToArray();
        var text = fields.Max(lines => lines.Sum(line => line.Height));
        var row = new Tagged(Tag.Row, table);
        Tagged[] names = [.. Columns.Select(column => new Tagged(column.Head.Length > 0 ? Tag.ColumnHead : Tag.Field, row))];
        return new Piece(text + 5, (page, box) =>
        {
            for (var order = 0; order < fields.Length; order++)
            {
                // The names stand on the rule, however many lines each needs.
                var top = box.Y + text - fields[order].Sum(line => line.Height);
                Stack(page, names[order], fields[order], box with { X = box.X + places[order].Left, Y = top, Width = places[order].Width });
            }

            page.Line(box.X, box.Bottom - 1, box.Right, box.Bottom - 1, new Pen(1));
        }) { KeepWithNext = true };
    }

    private IEnumerable<Piece> Parts(Row row, IReadOnlyList<(double Left, double Width)> places, double width, double tallest, Tagged[] tags)
    {
        var wide = row.Kind == RowKind.Group;
        if (row.Cells.Count != (wide ? 1 : Columns.Count))
        {
            throw new ArgumentException($"A row has {row.Cells.Count} fields; expected {(wide ? 1 : Columns.Count)}.");
        }

        var style = row.Kind == RowKind.Entry ? Style : Style.In(Weight.SemiBold);
        Box[] fields = wide ? [new(5, 0, width - 10, 0)] : [.. places.Select(place => new Box(place.Left, 0, place.Width, 0))];
        var rests = row.Cells
            .Select((cell, order) => new Queue<Piece>(cell.Strips(style, wide ? Align.Left : Columns[order].Align, fields[order].Width)))
            .ToArray();
        do
        {
            IReadOnlyList<Piece>[] taken = [.. rests.Select(rest => Take(rest, tallest - (2 * Padding)))];
            var height = taken.Max(strips => strips.Sum(strip => strip.Height)) + (2 * Padding);
            var last = rests.All(rest => rest.Count == 0);
            yield return new Piece(height, (page, box) =>
            {
                if (wide)
                {
                    page.Rectangle(box.Inset(0, 0.5), null, Fill.Shade(0.9));
                }

                if (row.Kind == RowKind.Total)
                {
                    page.Line(box.X, box.Y, box.Right, box.Y, Pen.Fine);
                }

                for (var order = 0; order < fields.Length; order++)
                {
                    Stack(page, tags[order], taken[order], fields[order] with { X = box.X + fields[order].X, Y = box.Y + Padding });
                }

                if (last && !wide)
                {
                    page.Line(box.X, box.Bottom, box.Right, box.Bottom, Pen.Hair);
                }
            });
        }
        while (rests.Any(rest => rest.Count > 0));
    }

    // At least one strip, so that what is too tall for a page still comes to an end.
    private static List<Piece> Take(Queue<Piece> rest, double height)
    {
        var taken = new List<Piece>();
        while (rest.TryPeek(out var strip) && (taken.Count == 0 || taken.Sum(piece => piece.Height) + strip.Height <= height))
        {
            taken.Add(rest.Dequeue());
        }

        return taken;
    }

    private static void Stack(Surface page, Tagged field, IReadOnlyList<Piece> strips, Box place)
    {
        page.Place(field);
        var top = place.Y;
        foreach (var strip in strips)
        {
            page.As(field, () => strip.Draw(page, place with { Y = top, Height = strip.Height }));
            top += strip.Height;
        }
    }
}
