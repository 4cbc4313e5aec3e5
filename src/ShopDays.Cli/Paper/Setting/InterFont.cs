using PdfSharp.Drawing;
using PdfSharp.Events;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace ShopDays.Cli.Paper.Setting;

/// <summary>Gives PDFsharp the weights of Inter, each as a family of its own, and no other font.</summary>
internal sealed class InterFont : IFontResolver
{
    private static readonly Lazy<InterFont> Only = new(() =>
    {
        var font = new InterFont();
        GlobalFontSettings.FontResolver = font;
        return font;
    });

    private static readonly XPdfFontOptions Embedded = new(PdfFontEncoding.Unicode, PdfFontEmbedding.TryComputeSubset);

    private InterFont()
    {
    }

    /// <summary>A font for drawing, at a size in points.</summary>
    public static XFont Of(Weight weight, double size)
    {
        _ = Only.Value;
        return new XFont(FamilyOf(weight), size, XFontStyleEx.Regular, Embedded);
    }

    /// <summary>Puts the figures of equal width in the place of the usual ones, just before a text is drawn.</summary>
    public static void SetFigures(object sender, RenderTextEventArgs text)
    {
        var face = FontFace.Of(WeightOf(text.Font.FontFamily.Name));
        foreach (ref var pair in text.CodePointGlyphIndexPairs.AsSpan())
        {
            if (pair.CodePoint is >= '0' and <= '9')
            {
                pair.GlyphIndex = face.GlyphOf(pair.CodePoint);
            }
        }
    }

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName) => FontFace.Of(WeightOf(faceName)).File;

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(familyName);

    private static string FamilyOf(Weight weight) => $"Inter {weight}";

    private static Weight WeightOf(string family) => Enum.Parse<Weight>(family.AsSpan("Inter ".Length));
}
