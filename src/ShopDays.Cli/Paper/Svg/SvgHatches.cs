using System.Globalization;
using System.Xml;
using ShopDays.Cli.Paper.Setting;

namespace ShopDays.Cli.Paper.Svg;

/// <summary>The fillings of a drawing: an even grey as a colour, each hatch as a pattern of its own that is written once.</summary>
internal sealed class SvgHatches(string id)
{
    /// <summary>A grey as a colour: 0 is black, 1 is white.</summary>
    public static string Colour(double grey)
    {
        var shade = (int)Math.Round(Math.Clamp(grey, 0, 1) * 255, MidpointRounding.AwayFromZero);
        return string.Create(CultureInfo.InvariantCulture, $"#{shade:x2}{shade:x2}{shade:x2}");
    }

    /// <summary>What a shape is filled with.</summary>
    public string PaintOf(Fill fill) => fill switch
    {
        { Hatch: not Hatch.None } => $"url(#{NameOf(fill)})",
        { Grey: { } grey } => Colour(grey),
        _ => "none",
    };

    /// <summary>Writes the patterns that some shapes need.</summary>
    public void WriteTo(XmlWriter xml, IEnumerable<Drawn> drawn)
    {
        xml.WriteStartElement("defs");
        foreach (var fill in drawn.Select(FillOf).OfType<Fill>().Where(fill => fill.Hatch != Hatch.None).Distinct())
        {
            WriteTo(xml, fill);
        }

        xml.WriteEndElement();
    }

    private static Fill? FillOf(Drawn drawn) => drawn switch
    {
        Drawn.Rectangle rectangle => rectangle.Fill,
        Drawn.Polygon polygon => polygon.Fill,
        Drawn.Disc disc => disc.Fill,
        _ => null,
    };

    private string NameOf(Fill fill) => string.Create(CultureInfo.InvariantCulture, $"{id}-{fill.Hatch}-{fill.Spacing:0.##}").ToLowerInvariant();

    private void WriteTo(XmlWriter xml, Fill fill)
    {
        // Slanted lines come round again after the step along a side, which is longer than the distance between them.
        var side = fill.Hatch is Hatch.Rising or Hatch.Falling or Hatch.Crossed ? fill.Spacing * Math.Sqrt(2) : fill.Spacing;
        var whole = Number(side);
        xml.WriteStartElement("pattern");
        xml.WriteAttributeString("id", NameOf(fill));
        xml.WriteAttributeString("width", whole);
        xml.WriteAttributeString("height", whole);
        xml.WriteAttributeString("patternUnits", "userSpaceOnUse");
        if (fill.Grey is { } grey)
        {
            xml.WriteStartElement("rect");
            xml.WriteAttributeString("width", whole);
            xml.WriteAttributeString("height", whole);
            xml.WriteAttributeString("fill", Colour(grey));
            xml.WriteEndElement();
        }

        xml.WriteStartElement("path");
        xml.WriteAttributeString("d", PathOf(fill.Hatch, side));
        xml.WriteAttributeString("stroke", Colour(fill.Hatch == Hatch.Dots ? 0.2 : 0.35));
        xml.WriteAttributeString("stroke-width", fill.Hatch == Hatch.Dots ? "1.1" : "0.5");
        xml.WriteAttributeString("stroke-linecap", fill.Hatch == Hatch.Dots ? "round" : "square");
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static string PathOf(Hatch hatch, double side)
    {
        var (whole, half) = (Number(side), Number(side / 2));
        return hatch switch
        {
            Hatch.Rising => $"M0 {whole}L{whole} 0",
            Hatch.Falling => $"M0 0L{whole} {whole}",
            Hatch.Crossed => $"M0 {whole}L{whole} 0M0 0L{whole} {whole}",
            Hatch.Level => $"M0 {half}H{whole}",
            Hatch.Upright => $"M{half} 0V{whole}",
            Hatch.Dots => $"M{half} {half}h0.01",
            _ => throw new ArgumentOutOfRangeException(nameof(hatch), hatch, null),
        };
    }

    private static string Number(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
