using System.Text;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// One page to draw on. Every length is in points (1/72 in), measured from the page's left and upper edges.
/// Later strokes cover earlier ones. What is drawn as no part of the file is for the eye alone: nobody reads it out.
/// </summary>
public sealed class Surface
{
    // As short as PDFsharp lets a stroke be (it must be above 0); round caps make a dot of it. In widths of the pen.
    private const double Dot = 0.05;
    private const double HatchDotWidth = 1.1;

    private readonly XGraphics graphics;
    private readonly Func<TextStyle, XFont> fontOf;
    private readonly StrokeMarks marks;

    internal Surface(PdfPage page, Func<TextStyle, XFont> fontOf, Structure structure)
    {
        Page = page;
        graphics = XGraphics.FromPdfPage(page);
        this.fontOf = fontOf;
        marks = new(graphics, structure);
    }

    /// <summary>The whole page, margins and all.</summary>
    public Box Whole => new(0, 0, Page.Width.Point, Page.Height.Point);

    internal PdfPage Page { get; }

    /// <summary>Sets a text in one line, its baseline at a height. Control characters are set as spaces,
    /// characters that the font does not hold as <see cref="FontFace.Substitute"/> in a frame.</summary>
    public void Text(string text, double x, double baseline, TextStyle style, Align align = Align.Left)
    {
        var plain = Plain(text, FontFace.Of(style.Weight));
        var left = align switch
        {
            Align.Left => x,
            Align.Centre => x - (style.WidthOf(plain) / 2),
            Align.Right => x - style.WidthOf(plain),
            _ => throw new ArgumentOutOfRangeException(nameof(align), align, null),
        };
        marks.BeforeWords();

        // What is read out one behind the other would run together without it; it shows nowhere.
        graphics.DrawString(marks.IsRead ? plain + " " : plain, fontOf(style), BrushOf(style.Grey), left, baseline);
        FrameSubstitutes(text, left, baseline, style);
    }

    /// <summary>Sets a text turned around its place, anticlockwise; 90 reads upwards.</summary>
    public void TurnedText(string text, Spot at, double degrees, TextStyle style, Align align = Align.Left)
    {
        marks.BeforeWords();
        Set(() =>
        {
            graphics.RotateAtTransform(-degrees, new XPoint(at.X, at.Y));
            Text(text, at.X, at.Y, style, align);
        });
    }

    /// <summary>Draws a straight line.</summary>
    public void Line(double x1, double y1, double x2, double y2, Pen pen)
    {
        marks.BeforeStrokes();
        graphics.DrawLine(StrokeOf(pen), x1, y1, x2, y2);
    }

    /// <summary>Draws a rectangle: its filling, then its outline, of which either may be missing.</summary>
    public void Rectangle(Box box, Pen? outline = null, Fill fill = default)
    {
        marks.BeforeStrokes();
        if (fill.Grey is { } grey)
        {
            graphics.DrawRectangle(BrushOf(grey), box.X, box.Y, box.Width, box.Height);
        }

        if (fill.Hatch != Hatch.None)
        {
            Clip(box, () => Lines(box, fill));
        }

        if (outline is { } pen)
        {
            graphics.DrawRectangle(StrokeOf(pen), box.X, box.Y, box.Width, box.Height);
        }
    }

    /// <summary>Draws a closed shape through three corners or more.</summary>
    public void Polygon(IReadOnlyList<Spot> corners, Pen? outline = null, Fill fill = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(corners.Count, 3);
        marks.BeforeStrokes();
        XPoint[] points = [.. corners.Select(corner => new XPoint(corner.X, corner.Y))];
        if (fill.Grey is { } grey)
        {
            graphics.DrawPolygon(BrushOf(grey), points, XFillMode.Alternate);
        }

        if (fill.Hatch != Hatch.None)
        {
            var path = new XGraphicsPath();
            path.AddPolygon(points);
            Set(() =>
            {
                graphics.IntersectClip(path);
                Lines(Box.Around(corners), fill);
            });
        }

        if (outline is { } pen)
        {
            graphics.DrawPolygon(StrokeOf(pen), points);
        }
    }

    /// <summary>Draws the round that fills a square: its filling, which is an even grey, then its outline.</summary>
    public void Disc(Box box, Pen? outline = null, Fill fill = default)
    {
        marks.BeforeStrokes();
        if (fill.Grey is { } grey)
        {
            graphics.DrawEllipse(BrushOf(grey), box.X, box.Y, box.Width, box.Height);
        }

        if (outline is { } pen)
        {
            graphics.DrawEllipse(StrokeOf(pen), box.X, box.Y, box.Width, box.Height);
        }
    }

    /// <summary>Draws a picture, its upper left corner at a place.</summary>
    public void Draw(Picture picture, Spot at)
    {
        marks.BeforeStrokes();
        Set(() =>
        {
            graphics.TranslateTransform(at.X, at.Y);
            foreach (var one in picture.Drawn)
            {
                Draw(one);
            }
        });
    }

    /// <summary>Draws something of which only what lies inside a rectangle is seen.</summary>
    public void Clip(Box box, Action draw)
    {
        marks.BeforeStrokes();
        Set(() =>
        {
            graphics.IntersectClip(new XRect(box.X, box.Y, box.Width, box.Height));
            draw();
        });
    }

    private void Draw(Drawn drawn)
    {
        switch (drawn)
        {
            case Drawn.Line line:
                Line(line.From.X, line.From.Y, line.To.X, line.To.Y, line.Pen);
                break;
            case Drawn.Rectangle rectangle:
                Rectangle(rectangle.Box, rectangle.Outline, rectangle.Fill);
                break;
            case Drawn.Polygon polygon:
                Polygon(polygon.Corners, polygon.Outline, polygon.Fill);
                break;
            case Drawn.Disc disc:
                Disc(disc.Box, disc.Outline, disc.Fill);
                break;
            case Drawn.Text { IsTurned: true } text:
                TurnedText(text.Words, text.At, 90, text.Style, text.Align);
                break;
            case Drawn.Text text:
                Text(text.Words, text.At.X, text.At.Y, text.Style, text.Align);
                break;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    /// <summary>Draws a part of the file, as which its words are read out; of a figure all its strokes belong to it.</summary>
    internal void As(Tagged part, Action draw) => marks.As(part, draw);

    /// <summary>Draws what is not read out, whatever it is.</summary>
    internal void Unread(Action draw) => marks.Unread(draw);

    /// <summary>Puts a part into the file even if nothing of it is drawn, an empty field say.</summary>
    internal void Place(Tagged part) => marks.Place(part);

    internal void Close()
    {
        marks.End();
        graphics.Dispose();
        StrokeMarks.Settle(Page);
    }

    private void Lines(Box area, Fill fill)
    {
        var pen = fill.Hatch == Hatch.Dots
            ? new XPen(ColourOf(0.2), HatchDotWidth) { LineCap = XLineCap.Round, DashPattern = [Dot, (fill.Spacing / HatchDotWidth) - Dot] }
            : new XPen(ColourOf(0.35), 0.5);
        foreach (var (from, to) in Hatching.Strokes(area, fill.Hatch, fill.Spacing))
        {
            graphics.DrawLine(pen, from.X, from.Y, to.X, to.Y);
        }
    }

    private void FrameSubstitutes(string text, double left, double baseline, TextStyle style)
    {
        var face = FontFace.Of(style.Weight);
        var x = left;
        foreach (var rune in text.EnumerateRunes())
        {
            var advance = style.WidthOf(rune.ToString());
            if (!face.Holds(rune.Value))
            {
                var above = 0.12 * style.Size;
                Rectangle(new Box(x, baseline - style.CapHeight - above, advance, style.CapHeight + (2 * above)).Inset(0.2, 0), new Pen(0.05 * style.Size, style.Grey));
            }

            x += advance;
        }
    }

    private void Set(Action draw)
    {
        var state = graphics.Save();
        draw();
        graphics.Restore(state);
    }

    // Spaces that do not break share the plain space's glyph; set as they are, reading back would confuse the two.
    private static string Plain(string text, FontFace face)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            plain.Append(Rune.IsControl(rune) || Rune.IsWhiteSpace(rune) ? " " : face.Holds(rune.Value) ? rune.ToString() : $"{FontFace.Substitute}");
        }

        return plain.ToString();
    }

    private static XColor ColourOf(double grey) => XColor.FromGrayScale(grey);

    private static XSolidBrush BrushOf(double grey) => new(ColourOf(grey));

    private static XPen StrokeOf(Pen pen) => new(ColourOf(pen.Grey), pen.Width)
    {
        LineCap = pen.Dash == Dash.Dotted ? XLineCap.Round : XLineCap.Flat,
        // PDFsharp counts dashes in widths of the pen.
        DashPattern = pen.Dash switch
        {
            Dash.Solid => [],
            Dash.Dashed => [4, 3],
            Dash.Dotted => [Dot, 2.5],
            _ => throw new ArgumentOutOfRangeException(nameof(pen), pen.Dash, null),
        },
    };
}
