using PdfSharp.Pdf;

namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// The parts of a file in the order in which they are read out (ISO 32000-1, 14.7 and 14.8), beside its pages. PDFsharp can
/// make such a tree too, but only of the page in hand, and without saying what the head of a table is for.
/// </summary>
internal sealed class Structure
{
    // The file knows H1 to H6.
    private const int DeepestHeading = 6;

    private readonly Tagged whole = new(Tag.Document) { IsPlaced = true };
    private readonly List<List<Tagged>> pages = [];
    private readonly Stack<int> headings = [];

    /// <summary>Makes room for a page behind the last.</summary>
    /// <returns>Its place, from 0.</returns>
    public int AddPage()
    {
        pages.Add([]);
        return pages.Count - 1;
    }

    /// <summary>Puts a part into the file, behind what is there, if it is not there yet.</summary>
    public void Place(Tagged part)
    {
        if (part.IsPlaced)
        {
            return;
        }

        var within = part.Within ?? whole;
        Place(within);
        within.Add(part);
        part.IsPlaced = true;
        if (part.Tag == Tag.Heading)
        {
            part.Level = LevelOf(part.Rank);
        }
    }

    /// <summary>Takes the strokes that follow on a page for a part.</summary>
    /// <returns>Which marked strokes of the page they are, from 0.</returns>
    public int Mark(Tagged part, int page)
    {
        Place(part);
        var strokes = new MarkedStrokes(page, pages[page].Count);
        pages[page].Add(part);
        part.Add(strokes);
        return strokes.Number;
    }

    /// <summary>Writes it into a document whose pages are drawn.</summary>
    public void WriteTo(PdfDocument document)
    {
        var root = Indirect(document);
        var places = new Dictionary<Tagged, PdfDictionary>(ReferenceEqualityComparer.Instance);
        root.Elements.SetName("/Type", "/StructTreeRoot");
        root.Elements.SetReference("/K", Written(document, whole, root, places));
        var numbers = new PdfArray(document);
        for (var page = 0; page < pages.Count; page++)
        {
            numbers.Elements.Add(new PdfInteger(page));
            numbers.Elements.Add(new PdfArray(document, [.. pages[page].Select(part => places[part].ReferenceNotNull)]));
            document.Pages[page].Elements.SetInteger("/StructParents", page);
            document.Pages[page].Elements.SetName("/Tabs", "/S");
        }

        var tree = Indirect(document);
        tree.Elements.SetObject("/Nums", numbers);
        root.Elements.SetReference("/ParentTree", tree);
        root.Elements.SetInteger("/ParentTreeNextKey", pages.Count);
        var catalog = document.Internals.Catalog;
        catalog.Elements.SetReference("/StructTreeRoot", root);
        var marked = new PdfDictionary(document);
        marked.Elements.SetBoolean("/Marked", true);
        catalog.Elements.SetObject("/MarkInfo", marked);
        document.ViewerPreferences.DisplayDocTitle = true;
    }

    // A level is never left out: a part of a section that has no heading counts as a section.
    private int LevelOf(int rank)
    {
        while (headings.TryPeek(out var above) && above >= rank)
        {
            headings.Pop();
        }

        headings.Push(rank);
        return Math.Min(headings.Count, DeepestHeading);
    }

    private static PdfDictionary Written(PdfDocument document, Tagged part, PdfDictionary above, Dictionary<Tagged, PdfDictionary> places)
    {
        var written = Indirect(document);
        places.Add(part, written);
        written.Elements.SetName("/S", "/" + part.Name);
        written.Elements.SetReference("/P", above);
        if (part.Alternative is { } words)
        {
            written.Elements.SetValue("/Alt", new PdfString(words, PdfStringEncoding.Unicode));
        }

        if (AttributesOf(document, part) is { } attributes)
        {
            written.Elements.SetObject("/A", attributes);
        }

        var page = part.Inside.OfType<MarkedStrokes>().Select(strokes => (int?)strokes.Page).FirstOrDefault();
        if (page is { } first)
        {
            written.Elements.SetReference("/Pg", document.Pages[first]);
        }

        PdfItem[] inside = [.. part.Inside.Select(one => one is Tagged below
            ? Written(document, below, written, places).ReferenceNotNull
            : ItemOf(document, (MarkedStrokes)one, page))];
        if (inside.Length == 1)
        {
            written.Elements.SetValue("/K", inside[0]);
        }
        else if (inside.Length > 1)
        {
            written.Elements.SetObject("/K", new PdfArray(document, inside));
        }

        return written;
    }

    private static PdfItem ItemOf(PdfDocument document, MarkedStrokes strokes, int? page)
    {
        if (strokes.Page == page)
        {
            return new PdfInteger(strokes.Number);
        }

        var elsewhere = new PdfDictionary(document);
        elsewhere.Elements.SetName("/Type", "/MCR");
        elsewhere.Elements.SetReference("/Pg", document.Pages[strokes.Page]);
        elsewhere.Elements.SetInteger("/MCID", strokes.Number);
        return elsewhere;
    }

    private static PdfDictionary? AttributesOf(PdfDocument document, Tagged part)
    {
        var attributes = new PdfDictionary(document);
        switch (part.Tag)
        {
            case Tag.ColumnHead or Tag.RowHead:
                attributes.Elements.SetName("/O", "/Table");
                attributes.Elements.SetName("/Scope", part.Tag == Tag.ColumnHead ? "/Column" : "/Row");
                if (part.Columns > 1)
                {
                    attributes.Elements.SetInteger("/ColSpan", part.Columns);
                }

                return attributes;
            case Tag.Figure when part.Place is { } place && part.Inside.OfType<MarkedStrokes>().FirstOrDefault() is var strokes:
                var height = document.Pages[strokes.Page].Height.Point;
                attributes.Elements.SetName("/O", "/Layout");
                attributes.Elements.SetObject("/BBox", new PdfArray(document, new PdfReal(place.X), new PdfReal(height - place.Bottom), new PdfReal(place.Right), new PdfReal(height - place.Y)));
                return attributes;
            default:
                return null;
        }
    }

    private static PdfDictionary Indirect(PdfDocument document)
    {
        var one = new PdfDictionary(document);
        document.Internals.AddObject(one);
        return one;
    }
}
