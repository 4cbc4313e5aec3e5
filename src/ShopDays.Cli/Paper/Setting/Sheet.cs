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

    private readonly Book _book;
    private readonly Margins _margins;
    private readonly List<(Surface Page, Dress Dress)> _pages = [];
    private readonly List<Piece> _kept = [];
    private PaperSize _paper;
    private Dress _dress;
    private double _top;
    private bool _fresh;

    /// <summary>Begins with an empty page.</summary>
    public Sheet(Book book, PaperSize paper, Margins margins, Dress dress)
    {
        _book = book;
        _paper = paper;
        _margins = margins;
        _dress = dress;
        BreakPage();
    }

    /// <summary>The part of the page in hand that lies between the margins.</summary>
    public Box Area => new(
        _margins.Left,
        _margins.Top,
        _paper.Width - _margins.Left - _margins.Right,
        _paper.Height - _margins.Top - _margins.Bottom);

    /// <summary>Height left on the page in hand, in points.</summary>
    public double Left => Area.Bottom - _top - _kept.Sum(piece => piece.Height);

    /// <summary>Adds blocks below what is there.</summary>
    public void Add(params IReadOnlyList<Block> blocks)
    {
        foreach (var piece in blocks.SelectMany(block => block.Pieces(new Room(Area.Width, Area.Height))))
        {
            _kept.Add(piece);
            if (!piece.KeepWithNext) PlaceKept();
        }
    }

    /// <summary>Goes on with a new page; a page still empty is taken as it is, in its new dress.</summary>
    /// <param name="dress">Head and foot from there on; as before if none is given.</param>
    /// <param name="paper">The paper from there on; as before if none is given.</param>
    public void NewPage(Dress? dress = null, PaperSize? paper = null)
    {
        PlaceKept();
        _dress = dress ?? _dress;
        if (_fresh && (paper is null || paper == _paper))
        {
            _pages[^1] = _pages[^1] with { Dress = _dress };
            return;
        }

        _paper = paper ?? _paper;
        BreakPage();
    }

    /// <summary>Places what is left and sets heads and feet. Nothing can be added any more.</summary>
    public void Finish()
    {
        PlaceKept();
        for (var order = 0; order < _pages.Count; order++) SetDress(_pages[order].Page, _pages[order].Dress, order + 1);
    }

    private void PlaceKept()
    {
        // The space above a heading counts only where something stands above it.
        if (_kept.Where(piece => !piece.Blank).LastOrDefault() is { } last)
        {
            var needed = _kept.Take(_kept.LastIndexOf(last) + 1).Sum(piece => piece.Height);
            if (!_fresh && needed > Area.Bottom - _top + Rounding && needed <= Area.Height + Rounding) BreakPage();
        }

        foreach (var piece in _kept) Place(piece);
        _kept.Clear();
    }

    private void Place(Piece piece)
    {
        if (piece.Blank)
        {
            if (!_fresh) _top += piece.Height;
            return;
        }

        if (!_fresh && piece.Height > Area.Bottom - _top + Rounding) BreakPage();
        if (_fresh && piece.Head is { } head) Draw(head);
        Draw(piece);
    }

    private void Draw(Piece piece)
    {
        var page = _pages[^1].Page;
        if (piece.Bookmark is { } bookmark) _book.Bookmark(bookmark.Title, page, _top, bookmark.Level);
        piece.Draw(page, new Box(_margins.Left, _top, Area.Width, piece.Height));
        _top += piece.Height;
        _fresh = false;
    }

    private void BreakPage()
    {
        _pages.Add((_book.AddPage(_paper), _dress));
        _top = Area.Y;
        _fresh = true;
    }

    private void SetDress(Surface page, Dress dress, int number)
    {
        var style = TypeScale.Small;
        var right = page.Whole.Right - _margins.Right;
        var width = right - _margins.Left;
        var head = _margins.Top - 26;
        var foot = page.Whole.Bottom - _margins.Bottom + 28;
        var section = style.Shortened(dress.HeadRight, width / 2);
        page.Text(style.Shortened(dress.HeadLeft, width - style.WidthOf(section) - 12), _margins.Left, head, style.In(Weight.SemiBold));
        page.Text(section, right, head, style, Align.Right);
        page.Line(_margins.Left, head + 6, right, head + 6, Pen.Hair);
        var count = string.Create(CultureInfo.InvariantCulture, $"Page {number} of {_pages.Count}");
        page.Line(_margins.Left, foot - 14, right, foot - 14, Pen.Hair);
        page.Text(style.Shortened(dress.FootLeft, width - style.WidthOf(count) - 12), _margins.Left, foot, style);
        page.Text(count, right, foot, style, Align.Right);
    }
}
