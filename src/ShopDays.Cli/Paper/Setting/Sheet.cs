using System.Globalization;

namespace ShopDays.Cli.Paper.Setting;

/// <summary>What stands at the head and foot of a page, beside "Page n of m".</summary>
/// <param name="HeadLeft">At the left of the head; the job, say.</param>
/// <param name="HeadRight">At the right of the head; the section, say.</param>
/// <param name="FootLeft">At the left of the foot.</param>
public sealed record Dress(string HeadLeft, string HeadRight, string FootLeft);

/// <summary>
/// Lets blocks flow down the pages of a <see cref="Book"/>, breaking pages where they must break. Heads and feet are
/// set at the end, when the number of pages is known.
/// </summary>
public sealed class Sheet
{
    // Half a thousandth of a point: what fills a page exactly must not be driven off it by rounding.
    private const double Rounding = 0.0005;

    private readonly Book book;
    private readonly Margins margins;
    private readonly List<(Surface Page, Dress Dress)> pages = [];
    private readonly List<Piece> kept = [];
    private PaperSize paper;
    private Dress dress;
    private double top;
    private bool fresh;

    /// <summary>Begins with an empty page.</summary>
    public Sheet(Book book, PaperSize paper, Margins margins, Dress dress)
    {
        this.book = book;
        this.paper = paper;
        this.margins = margins;
        this.dress = dress;
        BreakPage();
    }

    /// <summary>The part of the page in hand that lies between the margins.</summary>
    public Box Area => new(
        margins.Left,
        margins.Top,
        paper.Width - margins.Left - margins.Right,
        paper.Height - margins.Top - margins.Bottom);

    /// <summary>Height left on the page in hand, in points.</summary>
    public double Left => Area.Bottom - top - kept.Sum(piece => piece.Height);

    /// <summary>Adds blocks below what is there.</summary>
    public void Add(params IReadOnlyList<Block> blocks)
    {
        foreach (var piece in blocks.SelectMany(block => block.Pieces(new Room(Area.Width, Area.Height))))
        {
            kept.Add(piece);
            if (!piece.KeepWithNext)
            {
                PlaceKept();
            }
        }
    }

    /// <summary>Goes on with a new page; a page still empty is taken as it is, in its new dress.</summary>
    /// <param name="dress">Head and foot from there on; as before if none is given.</param>
    /// <param name="paper">The paper from there on; as before if none is given.</param>
    public void NewPage(Dress? dress = null, PaperSize? paper = null)
    {
        PlaceKept();
        this.dress = dress ?? this.dress;
        if (fresh && (paper is null || paper == this.paper))
        {
            pages[^1] = pages[^1] with { Dress = this.dress };
            return;
        }

        this.paper = paper ?? this.paper;
        BreakPage();
    }

    /// <summary>Places what is left and sets heads and feet. Nothing can be added any more.</summary>
    public void Finish()
    {
        PlaceKept();
        for (var order = 0; order < pages.Count; order++)
        {
            SetDress(pages[order].Page, pages[order].Dress, order + 1);
        }
    }

    private void PlaceKept()
    {
        // The space above a heading counts only where something stands above it.
        if (kept.Where(piece => !piece.Blank).LastOrDefault() is { } last)
        {
            var needed = kept.Take(kept.LastIndexOf(last) + 1).Sum(piece => piece.Height);
            if (!fresh && needed > Area.Bottom - top + Rounding && needed <= Area.Height + Rounding)
            {
                BreakPage();
            }
        }

        foreach (var piece in kept)
        {
            Place(piece);
        }

        kept.Clear();
    }

    private void Place(Piece piece)
    {
        if (piece.Blank)
        {
            if (!fresh)
            {
                top += piece.Height;
            }

            return;
        }

        if (!fresh && piece.Height > Area.Bottom - top + Rounding)
        {
            BreakPage();
        }

        if (fresh && piece.Head is { } head)
        {
            // It was read out where the table begins.
            Draw(head with { Draw = (page, box) => page.Unread(() => head.Draw(page, box)) });
        }

        Draw(piece);
    }

    private void Draw(Piece piece)
    {
        var page = pages[^1].Page;
        if (piece.Bookmark is { } bookmark)
        {
            book.Bookmark(bookmark.Title, page, top, bookmark.Level);
        }

        piece.Draw(page, new Box(margins.Left, top, Area.Width, piece.Height));
        top += piece.Height;
        fresh = false;
    }

    private void BreakPage()
    {
        pages.Add((book.AddPage(paper), dress));
        top = Area.Y;
        fresh = true;
    }

    private void SetDress(Surface page, Dress dress, int number)
    {
        var style = TypeScale.Small;
        var right = page.Whole.Right - margins.Right;
        var width = right - margins.Left;
        var head = margins.Top - 26;
        var foot = page.Whole.Bottom - margins.Bottom + 28;
        var section = style.Shortened(dress.HeadRight, width / 2);
        page.Text(style.Shortened(dress.HeadLeft, width - style.WidthOf(section) - 12), margins.Left, head, style.In(Weight.SemiBold));
        page.Text(section, right, head, style, Align.Right);
        page.Line(margins.Left, head + 6, right, head + 6, Pen.Hair);
        var count = string.Create(CultureInfo.InvariantCulture, $"Page {number} of {pages.Count}");
        page.Line(margins.Left, foot - 14, right, foot - 14, Pen.Hair);
        page.Text(style.Shortened(dress.FootLeft, width - style.WidthOf(count) - 12), margins.Left, foot, style);
        page.Text(count, right, foot, style, Align.Right);
    }
}
