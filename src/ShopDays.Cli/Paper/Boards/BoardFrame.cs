using ShopDays.Cli.Paper.Setting;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Paper.Boards;

/// <summary>
/// Where the places of a board lie on a page. The reference end is at the left and the reference edge below, as the
/// board lies before the maker; one scale holds both ways.
/// </summary>
internal sealed record BoardFrame
{
    private BoardFrame(Box outline, double pointsPerMillimetre) => (Outline, PointsPerMillimetre) = (outline, pointsPerMillimetre);

    /// <summary>The board itself.</summary>
    public Box Outline { get; }

    /// <summary>The scale.</summary>
    public double PointsPerMillimetre { get; }

    /// <summary>The largest scale at which a board goes into a width and a height, in points.</summary>
    public static double LargestScale(Board board, double width, double height) =>
        Math.Min(width / board.Length.Millimetres, height / board.Width.Millimetres);

    /// <summary>A board drawn at a scale, its upper left corner at a place.</summary>
    public static BoardFrame At(Board board, Spot corner, double scale) =>
        new(new Box(corner.X, corner.Y, board.Length.Millimetres * scale, board.Width.Millimetres * scale), scale);

    /// <summary>How far right a distance from the reference end lies.</summary>
    public double X(Length along) => Outline.X + (along.Millimetres * PointsPerMillimetre);

    /// <summary>How far down the page a distance from the reference edge lies.</summary>
    public double Y(Length across) => Outline.Bottom - (across.Millimetres * PointsPerMillimetre);

    /// <summary>A region of the board.</summary>
    public Box Of(Region region) =>
        new(X(region.X), Y(region.Top), region.Length.Millimetres * PointsPerMillimetre, region.Width.Millimetres * PointsPerMillimetre);
}
