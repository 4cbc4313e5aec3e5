using System.Text;
using ShopDays.Cli.Paper.Boards;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Paper.Svg;

/// <summary>The boards of a layout, each as a drawing of its own: the picture of the paper, with its name above and its key below.</summary>
internal static class BoardDrawings
{
    // Little more points than a telephone held upright has pixels across: there the letters are nearly as large as on paper.
    private const double Width = 400;
    private const double Tallest = 220;
    private const double Margin = 6;

    private static readonly TextStyle Heading = new(11, Weight.SemiBold);
    private static readonly TextStyle Words = new(8.5);

    /// <summary>The drawings with the names of their files, which differ even where capitals do not count.</summary>
    public static IReadOnlyList<(string Name, byte[] Drawing)> Of(Layout layout, Allowances allowances, LengthFormat format)
    {
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var drawings = new List<(string, byte[])>();
        foreach (var board in layout.ToCut)
        {
            var plain = SafeName(board.Board.Name);
            var name = plain;
            for (var again = 2; !taken.Add(name); again++)
            {
                name = $"{plain}-{CountWords.Number(again)}";
            }

            drawings.Add(($"{name}.svg", Of(name, board, allowances, format)));
        }

        return drawings;
    }

    /// <summary>One board.</summary>
    /// <param name="id">Letters, digits and hyphens that no other drawing on the same page has.</param>
    /// <param name="layout">The board.</param>
    /// <param name="allowances">The shop's allowances.</param>
    /// <param name="format">How lengths are written.</param>
    public static byte[] Of(string id, BoardLayout layout, Allowances allowances, LengthFormat format)
    {
        var picture = new BoardPicture(layout, format, allowances.Kerf, Width - (2 * Margin), Tallest);
        var title = $"Board {layout.Board.Name}: {layout.Board.Species.Name}, {Wording.Sides(format, layout.Board.Length, layout.Board.Width, layout.Board.Thickness)}" + (layout.IsBestFaceUp ? ", best face up" : "");
        var width = Width - (2 * Margin);
        var (heading, head) = Lines([title], Heading, width);
        var (key, foot) = Lines(
            [
                .. picture.Key.Select(entry => $"{entry.Letter}: {entry.Blank.Label}, {Wording.Sides(format, entry.Blank.Length, entry.Blank.Width)}"),
                "numbers: order of cutting; hatched: lost; dotted: an offcut to keep" + (layout.Board.Flaws.Count > 0 ? "; crossed: a flaw" : ""),
            ],
            Words,
            width);
        var below = Margin + head + picture.Height + 4;
        return SvgText.Of(
            id,
            title,
            string.Join(" ", layout.Cuts.OrderBy(cut => cut.Order).Select(cut => InWords(cut, format))),
            new(Width, below + foot + Margin),
            [(heading, new(Margin, Margin)), (picture.Drawn(), new(Margin, Margin + head)), (key, new(Margin, below))]);
    }

    /// <summary>Texts in as many lines as they need, each below the one before, and the height of them all.</summary>
    internal static (Picture Picture, double Height) Lines(IReadOnlyList<string> texts, TextStyle style, double width)
    {
        var picture = new Picture();
        var down = 0.0;
        foreach (var line in texts.SelectMany(text => LineBreaks.Of(text, style, width)))
        {
            picture.Text(line, 0, down + style.Baseline, style);
            down += style.LineHeight;
        }

        return (picture, down);
    }

    private static string InWords(Cut cut, LengthFormat format)
    {
        var frees = cut.Frees.Length > 0 ? $", which frees {cut.Frees}" : "";
        return $"Cut {CountWords.Number(cut.Order)}: {CutWords.Of(cut.Kind)} {format.Write(cut.At)} from the {CutWords.MeasuredFrom(cut.Kind)}, {format.Write(cut.Length)} long{frees}.";
    }

    // Letters and digits of the plain alphabet, everything else a hyphen, so that it is safe as a file and within a drawing.
    private static string SafeName(string name)
    {
        var safe = new StringBuilder("board");
        foreach (var part in string.Concat(name.Select(sign => char.IsAsciiLetterOrDigit(sign) ? sign : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            safe.Append('-').Append(part);
        }

        return safe.ToString()[..Math.Min(safe.Length, 80)];
    }
}
