using NodaTime;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace ShopDays.Cli.Paper.Setting;

/// <summary>What a PDF file says about itself.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Subject">What it is about.</param>
/// <param name="Language">Of its text, as an IETF tag such as "en".</param>
/// <param name="Made">When it was made; passed in, so that the same input gives the same file.</param>
public sealed record Imprint(string Title, string Subject, string Language, Instant Made);

/// <summary>
/// A PDF file being made, page by page. The same calls with the same values give the same bytes, on one version of
/// the runtime and of PDFsharp: the compression inside is the runtime's and may differ from one version to the next.
/// </summary>
public sealed class Book : IDisposable
{
    private readonly PdfDocument document = new();
    private readonly Dictionary<(Weight, double), XFont> fonts = [];
    private readonly List<Surface> pages = [];
    private readonly Structure structure = new();
    private readonly List<PdfOutlineCollection> outlines;

    /// <summary>Begins a file without pages.</summary>
    public Book(Imprint imprint)
    {
        document.Info.Title = imprint.Title;
        document.Info.Subject = imprint.Subject;
        document.Info.Creator = "ShopDays";
        document.Info.CreationDate = imprint.Made.ToDateTimeUtc();
        document.Info.ModificationDate = imprint.Made.ToDateTimeUtc();
        document.Language = imprint.Language;
        document.Options.CompressContentStreams = true;
        document.Options.FlateEncodeMode = PdfFlateEncodeMode.BestCompression;
        document.RenderEvents.RenderTextEvent += InterFont.SetFigures;
        outlines = [document.Outlines];
    }

    /// <summary>The pages so far, in their order.</summary>
    public IReadOnlyList<Surface> Pages => pages;

    /// <summary>Adds a page behind the last.</summary>
    public Surface AddPage(PaperSize paper)
    {
        var page = document.AddPage();
        page.Width = XUnit.FromPoint(paper.Width);
        page.Height = XUnit.FromPoint(paper.Height);
        var surface = new Surface(page, FontOf, structure);
        pages.Add(surface);
        return surface;
    }

    /// <summary>Adds an entry to the list that a reader shows beside the pages.</summary>
    /// <param name="title">Its words.</param>
    /// <param name="page">Where it leads.</param>
    /// <param name="top">How far down the page, in points.</param>
    /// <param name="level">0 at the outermost; at most one deeper than the entry before.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no entry under which this level could hang.</exception>
    public void Bookmark(string title, Surface page, double top, int level = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(level);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(level, outlines.Count);
        var outline = new PdfOutline(title, page.Page, opened: level == 0)
        {
            PageDestinationType = PdfPageDestinationType.Xyz,
            Left = 0,
            Top = page.Whole.Height - top,
        };
        outlines[level].Add(outline);
        outlines.RemoveRange(level + 1, outlines.Count - level - 1);
        outlines.Add(outline.Outlines);
    }

    /// <summary>Ends the file; nothing can be drawn any more.</summary>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="InvalidOperationException">There is no page.</exception>
    public byte[] ToBytes()
    {
        foreach (var page in pages)
        {
            page.Close();
        }

        structure.WriteTo(document);
        using var written = new MemoryStream();
        document.Save(written, closeStream: false);
        return PackedObjects.Pack(Marks.Settle(StreamEnds.Complete(written.ToArray())));
    }

    /// <inheritdoc/>
    public void Dispose() => document.Dispose();

    private XFont FontOf(TextStyle style)
    {
        var key = (style.Weight, style.Size);
        if (!fonts.TryGetValue(key, out var font))
        {
            fonts[key] = font = InterFont.Of(style.Weight, style.Size);
        }

        return font;
    }
}
