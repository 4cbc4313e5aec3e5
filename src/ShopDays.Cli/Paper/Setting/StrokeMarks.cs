using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// The marks in the stream of one page that say which strokes are which part of the file, and which are for the eye alone
/// (ISO 32000-1, 14.6). Every stroke stands between two of them. PDFsharp lets only comments be written between its strokes:
/// so they are written as comments, and made what they say when the page is done.
/// </summary>
/// <param name="graphics">Draws the page.</param>
/// <param name="structure">The parts of the file.</param>
internal sealed partial class StrokeMarks(XGraphics graphics, Structure structure)
{
    private readonly int page = structure.AddPage();
    private Tagged? part;
    private bool isUnread;
    private bool isOpen;
    private Tagged? open;

    /// <summary>Draws a part of the file.</summary>
    public void As(Tagged what, Action draw) => Within(what, isUnread, draw);

    /// <summary>Draws what is not read out.</summary>
    public void Unread(Action draw) => Within(part, true, draw);

    /// <summary>Puts a part into the file even if nothing of it is drawn.</summary>
    public void Place(Tagged what)
    {
        if (!isUnread)
        {
            structure.Place(what);
        }
    }

    /// <summary>Whether the words that are drawn now are read out.</summary>
    public bool IsRead => part is not null && !isUnread;

    /// <summary>To be called before words are drawn.</summary>
    public void BeforeWords() => Mark(isUnread ? null : part);

    /// <summary>To be called before anything else is drawn: rules, boxes and bars are read out nowhere but in a figure.</summary>
    public void BeforeStrokes() => Mark(isUnread || part?.Tag != Tag.Figure ? null : part);

    /// <summary>Ends the page.</summary>
    public void End()
    {
        if (isOpen)
        {
            Write("EMC");
            isOpen = false;
        }
    }

    /// <summary>Makes marks of the comments on a page that is done.</summary>
    public static void Settle(PdfPage page)
    {
        for (var order = 0; order < page.Contents.Elements.Count; order++)
        {
            if (page.Contents.Elements.GetDictionary(order)?.Stream is { } stream)
            {
                // Latin-1 keeps every byte as one character and back.
                stream.Value = Encoding.Latin1.GetBytes(Written().Replace(Encoding.Latin1.GetString(stream.Value), ""));
            }
        }
    }

    private void Within(Tagged? what, bool unread, Action draw)
    {
        var before = (part, isUnread);
        (part, isUnread) = (what, unread);
        draw();
        (part, isUnread) = before;
    }

    private void Mark(Tagged? wanted)
    {
        if (isOpen && open == wanted)
        {
            return;
        }

        End();
        (open, isOpen) = (wanted, true);
        if (wanted is null)
        {
            Write("/Artifact BMC");
            return;
        }

        var number = structure.Mark(wanted, page);
        Write(string.Create(CultureInfo.InvariantCulture, $"/{wanted.Name} <</MCID {number}>> BDC"));
    }

    // Marks may not stand within a run of text that began before them.
    private void Write(string mark)
    {
        PdfRendererExtensions.BeginGraphicMode(graphics);
        graphics.WriteComment(mark);
    }

    [GeneratedRegex(@"^% (?=(?:/[A-Za-z0-9]+ (?:<</MCID [0-9]+>> BDC|BMC)|EMC)\r?$)", RegexOptions.Multiline)]
    private static partial Regex Written();
}
