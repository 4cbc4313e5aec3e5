using ShopDays.Cli.Paper.Setting;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Paper.Boards;

/// <summary>
/// A board to scale, as it is marked out: what is sawn from it with names and sizes, the cuts with their order,
/// running dimensions from the reference end and the reference edge, what is kept and what is lost.
/// </summary>
internal sealed class BoardPicture
{
    private const double Below = 18;
    private const double Right = 8;
    private const double CaptionIndent = 11;

    private static readonly Pen Reaching = new(2.4);
    private static readonly Pen Struck = new(0.9, 0, Dash.Dashed);
    private static readonly TextStyle Caption = new(7.5, Weight.Regular, 0.25);

    private readonly BoardLayout layout;
    private readonly LengthFormat format;
    private readonly Length kerf;
    private readonly double scale;
    private readonly double left;
    private readonly double above;
    private readonly List<(Blank Blank, string Letter)> key = [];

    /// <summary>Makes the largest picture that goes into a space.</summary>
    /// <param name="layout">How the board is cut.</param>
    /// <param name="format">How lengths are written.</param>
    /// <param name="kerf">Width of the slot the saw leaves.</param>
    /// <param name="width">From side to side, in points, dimensions included.</param>
    /// <param name="tallest">The most that the board itself may take from top to bottom, in points.</param>
    public BoardPicture(BoardLayout layout, LengthFormat format, Length kerf, double width, double tallest)
    {
        (this.layout, this.format, this.kerf) = (layout, format, kerf);
        left = Ruler.RoomFor(Across, format);
        above = Ruler.RoomFor(Along, format) + BoardOutline.Wave;
        scale = BoardFrame.LargestScale(layout.Board, width - left - Right, tallest);
        Frame = FrameAt(default);
        (Labels, Numbers) = Settled();
    }

    /// <summary>Its height in all, in points.</summary>
    public double Height => above + Frame.Outline.Height + BoardOutline.Wave + Math.Max(Below, Overhang);

    /// <summary>Its width in all, in points.</summary>
    public double Width => Math.Max(Frame.Outline.Right + Right, left + CaptionIndent + Caption.WidthOf(Reference));

    /// <summary>The letters that stand for names too long for their pieces, in their order.</summary>
    public IReadOnlyList<(Blank Blank, string Letter)> Key => key;

    /// <summary>What it shows, for who cannot see it; the cuts themselves stand in the table below it.</summary>
    public string Description
    {
        get
        {
            List<string> said = [$"Board {layout.Board.Name} to scale, along from the reference end and across from the reference edge."];
            said.AddRange(layout.Blanks.Select(placed => $"{placed.Blank.Label}, {Size(placed)}, at {At(placed.Region)}."));
            said.AddRange(layout.Offcuts.Where(offcut => offcut.IsUseful).Select(offcut => $"An offcut to keep, {Sides(offcut.Region)}, at {At(offcut.Region)}."));
            said.AddRange(layout.Board.Flaws.Select(flaw => Region.Of(flaw).Common(Region.Whole(layout.Board))).Select(flaw => $"A flaw, left out, {Sides(flaw)}, at {At(flaw)}."));
            said.Add("The rest is lost.");
            return string.Join(' ', said);

            string At(Region region) => $"{format.Write(region.X)} along and {format.Write(region.Y)} across";
        }
    }

    /// <summary>Where the board lies when the picture stands in the upper left corner.</summary>
    internal BoardFrame Frame { get; }

    /// <summary>What is written on the pieces when the picture stands in the upper left corner.</summary>
    internal IReadOnlyList<PieceLabel> Labels { get; }

    /// <summary>Where the number of each cut stands then.</summary>
    internal IReadOnlyList<Box> Numbers { get; }

    private IReadOnlyList<Length> Along => Marks(CutKind.Crosscut, layout.Board.Length);

    private IReadOnlyList<Length> Across => Marks(CutKind.Rip, layout.Board.Width);

    // Figures at the left that need more height than the board has hang over its lower edge.
    private double Overhang => ((Across.Count - 1) * Ruler.Apart) - Frame.Outline.Height + 8;

    /// <summary>Draws it.</summary>
    public Picture Drawn()
    {
        var picture = new Picture();
        var shape = BoardOutline.Of(layout.Board, Frame.Outline);
        picture.Polygon(shape, null, Swatch.Lost);
        foreach (var offcut in layout.Offcuts.Where(offcut => offcut.IsUseful))
        {
            picture.Rectangle(Frame.Of(offcut.Region), Pen.Fine, Swatch.Kept);
        }

        foreach (var placed in layout.Blanks)
        {
            picture.Rectangle(Frame.Of(placed.Region), new Pen(1), Fill.Shade(1));
        }

        foreach (var flaw in layout.Board.Flaws)
        {
            DrawFlaw(picture, Frame.Of(Region.Of(flaw).Common(Region.Whole(layout.Board))));
        }

        picture.Polygon(shape, Pen.Strong);

        DrawReference(picture);
        foreach (var label in Labels)
        {
            label.Draw(picture);
        }

        CutLines.Draw(picture, Frame, layout.Cuts, kerf, Numbers);
        Ruler.Above(picture, Frame, Along, format);
        Ruler.Beside(picture, Frame, Across, format);
        return picture;
    }

    private BoardFrame FrameAt(Spot corner) => BoardFrame.At(layout.Board, new(corner.X + left, corner.Y + above), scale);

    // Numbers go where they hide least of the labels; a label that is hidden even so makes way, or a letter stands for it.
    private (IReadOnlyList<PieceLabel> Labels, IReadOnlyList<Box> Numbers) Settled()
    {
        var first = layout.Blanks.Select(placed => (Placed: placed, Label: Fitted(placed, Frame))).ToList();
        var keeps = KeepLabels(Frame).ToList();
        var written = first.Select(one => one.Label?.Place).OfType<Box>()
            .Concat(keeps.Select(keep => keep.Label.Place))
            .Concat(layout.Board.Flaws.Select(flaw => Frame.Of(Region.Of(flaw).Common(Region.Whole(layout.Board)))));
        var numbers = CutLines.NumbersOf(Frame, layout.Cuts, kerf, written.Select(place => place.Grown(1.5)));
        List<PieceLabel> labels = [];
        foreach (var (placed, label) in first)
        {
            var piece = Frame.Of(placed.Region);
            var clear = label is null ? null : label.Moved(piece, numbers) ?? PieceLabel.Clear(placed.Blank.Label, Size(placed), piece, numbers);
            if (clear is null)
            {
                key.Add((placed.Blank, LetterOf(key.Count)));
                var letter = PieceLabel.Letter(key[^1].Letter, piece);
                clear = letter.Moved(piece, numbers) ?? letter;
            }

            labels.Add(clear);
        }

        // Words on what is left over can be done without.
        labels.AddRange(keeps.Select(keep => keep.Label.Moved(keep.Piece, numbers)).OfType<PieceLabel>());
        return (labels, numbers);
    }

    private PieceLabel? Fitted(PlacedBlank placed, BoardFrame frame) =>
        PieceLabel.Fitted(placed.Blank.Label, Size(placed), frame.Of(placed.Region));

    private IEnumerable<(PieceLabel Label, Box Piece)> KeepLabels(BoardFrame frame)
    {
        foreach (var piece in layout.Offcuts.Where(offcut => offcut.IsUseful).Select(offcut => offcut.Region))
        {
            if (PieceLabel.Fitted("keep", Sides(piece), frame.Of(piece)) is { } label)
            {
                yield return (label with { Style = label.Style.In(Weight.Regular), HasGround = true }, frame.Of(piece));
            }
        }
    }

    private string Size(PlacedBlank placed) => placed.Blank.IsResawn ? Sides(placed.Region) + ", resawn" : Sides(placed.Region);

    private string Sides(Region region) => Wording.Sides(format, region.Length, region.Width);

    private IReadOnlyList<Length> Marks(CutKind kind, Length whole) =>
    [
        .. layout.Cuts
            .Where(cut => cut.Kind == kind || (kind == CutKind.Rip && cut.Kind == CutKind.Straighten))
            .Select(cut => format.Rounded(cut.At))
            .Append(format.Rounded(whole))
            .Distinct(),
    ];

    private static void DrawFlaw(Picture picture, Box flaw)
    {
        picture.Rectangle(flaw, new Pen(1), Swatch.Flawed);
        picture.Line(flaw.X, flaw.Y, flaw.Right, flaw.Bottom, new Pen(1.2));
        picture.Line(flaw.X, flaw.Bottom, flaw.Right, flaw.Y, new Pen(1.2));
    }

    // What is measured from is drawn heavily; a live edge has no line to measure from, so that one is struck where the board
    // is narrowest.
    private void DrawReference(Picture picture)
    {
        var (x, y) = (Frame.Outline.X, Frame.Outline.Bottom);
        picture.Line(x, Frame.Outline.Y, x, y, Reaching);
        picture.Line(x, y, Frame.Outline.Right, y, IsLive ? Struck : Reaching);
        var below = y + BoardOutline.Wave + 3;
        picture.Polygon([new(x, below), new(x + 7, below + 3.5), new(x, below + 7)], null, Fill.Shade(0));
        picture.Text(Reference, x + CaptionIndent, below + 6.5, Caption);
    }

    private bool IsLive => layout.Board.Edges == BoardEdges.Live;

    private string Reference => IsLive
        ? "along from this end, across from the dashed line; the saw goes beyond each figure"
        : "along from this end, across from this edge; the saw goes beyond each figure";

    // a to z, then aa, ab: no board holds so many pieces that two letters do not do.
    private static string LetterOf(int order) => order < 26 ? $"{(char)('a' + order)}" : LetterOf((order / 26) - 1) + LetterOf(order % 26);
}
