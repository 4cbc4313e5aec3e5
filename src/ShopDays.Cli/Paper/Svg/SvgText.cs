using System.Globalization;
using System.Text;
using System.Xml;
using ShopDays.Cli.Paper.Setting;

namespace ShopDays.Cli.Paper.Svg;

/// <summary>
/// Writes pictures as a scalable drawing for a page (SVG 1.1, W3C Recommendation 2011): shapes and text only, no script
/// and nothing from elsewhere. It has no size of its own but fills the width that it is given.
/// </summary>
internal sealed class SvgText
{
    // Used where it is there; each text says how wide it must be, so that any other letters take the same room.
    private const string Letters = "Inter, Arial, Helvetica, sans-serif";

    private readonly StringBuilder text = new();
    private readonly XmlWriter xml;
    private readonly SvgHatches hatches;

    private SvgText(string id)
    {
        hatches = new(id);
        xml = XmlWriter.Create(text, new XmlWriterSettings { Indent = true, NewLineChars = "\n", OmitXmlDeclaration = true });
    }

    /// <summary>A whole drawing.</summary>
    /// <param name="id">Letters, digits and hyphens that no other drawing on the same page has.</param>
    /// <param name="title">Its name, for who cannot see it.</param>
    /// <param name="description">What it shows, for who cannot see it.</param>
    /// <param name="size">Its width and height.</param>
    /// <param name="pictures">What it shows, with the places of their upper left corners.</param>
    public static byte[] Of(string id, string title, string description, Spot size, IReadOnlyList<(Picture Picture, Spot At)> pictures)
    {
        var svg = new SvgText(id);
        svg.Write(id, title, description, size, pictures);
        return Encoding.UTF8.GetBytes(svg.text.Append('\n').ToString());
    }

    private void Write(string id, string title, string description, Spot size, IReadOnlyList<(Picture Picture, Spot At)> pictures)
    {
        xml.WriteStartElement("svg", "http://www.w3.org/2000/svg");
        Attributes(
            ("viewBox", $"0 0 {Number(size.X)} {Number(size.Y)}"),
            ("role", "img"),
            ("aria-labelledby", $"{id}-title {id}-desc"),
            ("font-family", Letters));
        Words("title", $"{id}-title", title);
        Words("desc", $"{id}-desc", description);
        hatches.WriteTo(xml, pictures.SelectMany(one => one.Picture.Drawn));
        Element("rect", ("width", Number(size.X)), ("height", Number(size.Y)), ("fill", "#ffffff"));
        foreach (var (picture, at) in pictures)
        {
            xml.WriteStartElement("g");
            Attributes(("transform", $"translate({Number(at.X)} {Number(at.Y)})"));
            foreach (var drawn in picture.Drawn)
            {
                Write(drawn);
            }

            xml.WriteEndElement();
        }

        xml.WriteEndElement();
        xml.Flush();
    }

    private void Write(Drawn drawn)
    {
        switch (drawn)
        {
            case Drawn.Line line:
                Element("path", [("d", $"M{Place(line.From)}L{Place(line.To)}"), .. Stroke(line.Pen)]);
                break;
            case Drawn.Rectangle { Box: var box } rectangle:
                Element("rect", [("x", Number(box.X)), ("y", Number(box.Y)), ("width", Number(box.Width)), ("height", Number(box.Height)), .. Look(rectangle.Outline, rectangle.Fill)]);
                break;
            case Drawn.Polygon polygon:
                Element("polygon", [("points", string.Join(' ', polygon.Corners.Select(Place))), .. Look(polygon.Outline, polygon.Fill)]);
                break;
            case Drawn.Disc { Box: var box } disc:
                Element("circle", [("cx", Number(box.Middle.X)), ("cy", Number(box.Middle.Y)), ("r", Number(box.Width / 2)), .. Look(disc.Outline, disc.Fill)]);
                break;
            case Drawn.Text words:
                Write(words);
                break;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private void Write(Drawn.Text words)
    {
        var plain = Plain(words.Words);
        var (at, style) = (words.At, words.Style);
        xml.WriteStartElement("text");
        Attributes(
            ("x", Number(at.X)),
            ("y", Number(at.Y)),
            ("font-size", Number(style.Size)),
            ("font-weight", style.Weight switch { Weight.Regular => "400", Weight.Medium => "500", Weight.SemiBold => "600", _ => "700" }),
            ("text-anchor", words.Align switch { Align.Left => "start", Align.Centre => "middle", _ => "end" }),
            ("fill", SvgHatches.Colour(style.Grey)),
            ("textLength", Number(style.WidthOf(plain))),
            ("lengthAdjust", "spacingAndGlyphs"));
        if (words.IsTurned)
        {
            Attributes(("transform", $"rotate(-90 {Place(at)})"));
        }

        xml.WriteString(plain);
        xml.WriteEndElement();
    }

    private IEnumerable<(string Name, string Value)> Look(Pen? outline, Fill fill) =>
        [("fill", hatches.PaintOf(fill)), .. outline is { } pen ? Stroke(pen) : []];

    private static IEnumerable<(string Name, string Value)> Stroke(Pen pen)
    {
        yield return ("stroke", SvgHatches.Colour(pen.Grey));
        yield return ("stroke-width", Number(pen.Width));
        if (pen.Dash != Dash.Solid)
        {
            yield return ("stroke-dasharray", pen.Dash == Dash.Dashed ? $"{Number(4 * pen.Width)} {Number(3 * pen.Width)}" : $"0 {Number(2.5 * pen.Width)}");
            yield return ("stroke-linecap", pen.Dash == Dash.Dashed ? "butt" : "round");
        }
    }

    private void Words(string element, string id, string words)
    {
        xml.WriteStartElement(element);
        Attributes(("id", id));
        xml.WriteString(Plain(words));
        xml.WriteEndElement();
    }

    private void Element(string name, params IEnumerable<(string Name, string Value)> attributes)
    {
        xml.WriteStartElement(name);
        Attributes(attributes);
        xml.WriteEndElement();
    }

    private void Attributes(params IEnumerable<(string Name, string Value)> attributes)
    {
        foreach (var (name, value) in attributes)
        {
            xml.WriteAttributeString(name, value);
        }
    }

    private static string Place(Spot spot) => $"{Number(spot.X)} {Number(spot.Y)}";

    /// <summary>To a hundredth of a point.</summary>
    private static string Number(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);

    // Control characters and halves of characters have no place in XML; those two noncharacters neither.
    private static string Plain(string words) => string.Concat(words.EnumerateRunes().Select(rune =>
        Rune.IsControl(rune) ? " " : rune.Value is 0xFFFE or 0xFFFF ? "\uFFFD" : rune.ToString()));
}
