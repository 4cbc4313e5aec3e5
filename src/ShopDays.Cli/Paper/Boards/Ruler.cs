using ShopDays.Cli.Paper.Setting;
using ShopDays.Measures;

namespace ShopDays.Cli.Paper.Boards;

/// <summary>Running dimensions along one side of a board, each from the same end, moved apart where they would touch.</summary>
internal static class Ruler
{
    /// <summary>From one figure to the next at the least, in points.</summary>
    public const double Apart = 8.5;

    private const double Leader = 9;

    private static readonly TextStyle Style = new(7.5);

    /// <summary>Room for the figures beside the board, in points: the longest of them, the leader, and white.</summary>
    public static double RoomFor(IEnumerable<Length> marks, LengthFormat format) =>
        marks.Select(mark => Style.WidthOf(Wording.Figure(format, mark))).DefaultIfEmpty(0).Max() + Leader + 4;

    /// <summary>Figures above a board, turned, so that many go beside each other.</summary>
    public static void Above(Picture picture, BoardFrame frame, IReadOnlyList<Length> marks, LengthFormat format)
    {
        Length[] sorted = [.. marks.Distinct().Order()];
        var places = Spread([.. sorted.Select(frame.X)], frame.Outline.X, frame.Outline.Right);
        var edge = frame.Outline.Y - 2;
        for (var order = 0; order < sorted.Length; order++)
        {
            picture.Line(frame.X(sorted[order]), edge, places[order], edge - Leader + 2, Pen.Hair);
            picture.TurnedText(Wording.Figure(format, sorted[order]), new Spot(places[order] + (Style.CapHeight / 2), edge - Leader), Style);
        }
    }

    /// <summary>Figures at the left of a board.</summary>
    public static void Beside(Picture picture, BoardFrame frame, IReadOnlyList<Length> marks, LengthFormat format)
    {
        Length[] sorted = [.. marks.Distinct().OrderDescending()];
        var places = Spread([.. sorted.Select(frame.Y)], frame.Outline.Y, frame.Outline.Bottom);
        var edge = frame.Outline.X - 2;
        for (var order = 0; order < sorted.Length; order++)
        {
            picture.Line(edge, frame.Y(sorted[order]), edge - Leader + 2, places[order], Pen.Hair);
            picture.Text(Wording.Figure(format, sorted[order]), edge - Leader, places[order] + (Style.CapHeight / 2), Style, Align.Right);
        }
    }

    /// <summary>Rising places moved apart to the least distance, and kept between two ends as far as they go in there.</summary>
    internal static double[] Spread(IReadOnlyList<double> wanted, double from, double to)
    {
        var places = wanted.ToArray();
        for (var order = 1; order < places.Length; order++)
        {
            places[order] = Math.Max(places[order], places[order - 1] + Apart);
        }

        if (places.Length > 0)
        {
            places[^1] = Math.Min(places[^1], Math.Max(to, from + ((places.Length - 1) * Apart)));
        }

        for (var order = places.Length - 2; order >= 0; order--)
        {
            places[order] = Math.Min(places[order], places[order + 1] - Apart);
        }

        return places;
    }
}
