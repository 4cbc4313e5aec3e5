using ShopDays.Cli.Paper.Setting;
using ShopDays.Parts;

namespace ShopDays.Cli.Paper.Boards;

/// <summary>The shape of a board: live edges run in waves outside its narrowest width, others are straight.</summary>
internal static class BoardOutline
{
    /// <summary>How far a wave may stand out, in points.</summary>
    public const double Wave = 4;

    /// <summary>The corners of the shape, clockwise from the upper left.</summary>
    public static IReadOnlyList<Spot> Of(Board board, Box outline)
    {
        if (board.Edges != BoardEdges.Live)
        {
            return [new(outline.X, outline.Y), new(outline.Right, outline.Y), new(outline.Right, outline.Bottom), new(outline.X, outline.Bottom)];
        }

        var steps = (int)Math.Max(4, outline.Width / 4);
        var along = Enumerable.Range(0, steps + 1).Select(step => outline.Width * step / steps).ToList();
        return
        [
            .. along.Select(x => new Spot(outline.X + x, outline.Y - Out(x, 0))),
            .. Enumerable.Reverse(along).Select(x => new Spot(outline.X + x, outline.Bottom + Out(x, 2.1))),
        ];
    }

    // Two waves of lengths that do not go into each other, so that it looks grown; from 0 to all of the wave.
    private static double Out(double x, double shift) =>
        Wave * (0.5 + (0.3 * Math.Sin((x / 21) + shift)) + (0.2 * Math.Sin((x / 8.3) + (3 * shift))));
}
