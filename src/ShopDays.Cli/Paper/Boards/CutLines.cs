using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Layouts;
using ShopDays.Measures;

namespace ShopDays.Cli.Paper.Boards;

/// <summary>The saw's lines on a board and the numbers that say in which order they are cut.</summary>
internal static class CutLines
{
    private const double Radius = 5.6;

    /// <summary>A name that is hidden makes way for a number, but of two numbers one is lost.</summary>
    private const double WorseThanWords = 5;

    private static readonly TextStyle Figure = new(7, Weight.SemiBold);

    /// <summary>Where the number of each cut hides least, in the order of the cuts.</summary>
    /// <param name="frame">Where the board lies.</param>
    /// <param name="cuts">The cuts.</param>
    /// <param name="kerf">Width of the slot the saw leaves.</param>
    /// <param name="taken">What is written on the board already.</param>
    public static IReadOnlyList<Box> NumbersOf(BoardFrame frame, IReadOnlyList<Cut> cuts, Length kerf, IEnumerable<Box> taken)
    {
        List<Box> full = [.. taken];
        List<Box> numbers = [];
        foreach (var cut in cuts)
        {
            numbers.Add(PlaceOf(Line(frame, cut, kerf), full, numbers, frame.Outline));
        }

        return numbers;
    }

    /// <summary>Draws the lines, then the numbers over them.</summary>
    /// <param name="picture">Where they are drawn.</param>
    /// <param name="frame">Where the board lies.</param>
    /// <param name="cuts">The cuts.</param>
    /// <param name="kerf">Width of the slot the saw leaves.</param>
    /// <param name="numbers">Where the number of each cut stands.</param>
    public static void Draw(Picture picture, BoardFrame frame, IReadOnlyList<Cut> cuts, Length kerf, IReadOnlyList<Box> numbers)
    {
        var width = Math.Max(0.9, kerf.Millimetres * frame.PointsPerMillimetre);
        foreach (var cut in cuts.Where(cut => cut.Kind != CutKind.Resaw))
        {
            var (from, to) = Line(frame, cut, kerf);
            picture.Line(from.X, from.Y, to.X, to.Y, new Pen(width, 0.25));
        }

        foreach (var (cut, place) in cuts.Zip(numbers))
        {
            picture.Disc(place, Pen.Fine, Fill.Shade(1));
            picture.Text(CountWords.Number(cut.Order), place.Middle.X, place.Middle.Y + (Figure.CapHeight / 2), Figure, Align.Centre);
        }
    }

    /// <summary>The middle of the saw's slot; for a resaw the middle of the piece, as its slot lies flat in it.</summary>
    internal static (Spot From, Spot To) Line(BoardFrame frame, Cut cut, Length kerf)
    {
        var piece = frame.Of(cut.Of);
        var half = kerf.Millimetres * frame.PointsPerMillimetre / 2;
        return cut.Kind switch
        {
            CutKind.Crosscut => (new(frame.X(cut.At) + half, piece.Y), new(frame.X(cut.At) + half, piece.Bottom)),
            CutKind.Rip or CutKind.Straighten => (new(piece.X, frame.Y(cut.At) - half), new(piece.Right, frame.Y(cut.At) - half)),
            CutKind.Resaw => (new(piece.X, piece.Middle.Y), new(piece.Right, piece.Middle.Y)),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static Box PlaceOf((Spot From, Spot To) line, IReadOnlyList<Box> taken, IReadOnlyList<Box> numbers, Box board)
    {
        var best = default(Box);
        var least = double.PositiveInfinity;
        for (var step = 0; step <= 24; step++)
        {
            // From near the far end inwards: there the saw comes out, and labels stand in the middle.
            var share = 0.98 - (0.04 * step);
            var x = line.From.X + ((line.To.X - line.From.X) * share);
            var y = line.From.Y + ((line.To.Y - line.From.Y) * share);
            // Half of a number may stand over the board's side, but not more.
            var at = new Spot(Math.Clamp(x, board.X, board.Right), Math.Clamp(y, board.Y, board.Bottom));
            var place = new Box(at.X - Radius, at.Y - Radius, 2 * Radius, 2 * Radius);
            var hidden = taken.Sum(other => Overlap.Of(place, other)) + (WorseThanWords * numbers.Sum(other => Overlap.Of(place, other))) + (0.01 * step);
            if (hidden < least)
            {
                (best, least) = (place, hidden);
            }
        }

        return best;
    }
}
