namespace ShopDays.Cli.Paper.Setting;

/// <summary>Small signs that are drawn, not set, so that they look the same wherever they stand.</summary>
public static class Signs
{
    /// <summary>An empty square for a pencil's tick.</summary>
    /// <param name="page">Where it is drawn.</param>
    /// <param name="left">Its left edge, in points.</param>
    /// <param name="middle">The height of its middle, in points from the top.</param>
    /// <param name="size">Length of a side, in points.</param>
    public static void TickBox(Surface page, double left, double middle, double size) =>
        page.Rectangle(new Box(left, middle - (size / 2), size, size).Inset(0.5, 0.5), new Pen(1));

    /// <summary>A triangle with an exclamation mark: work with care.</summary>
    /// <param name="page">Where it is drawn.</param>
    /// <param name="box">The square it fills.</param>
    public static void Caution(Surface page, Box box)
    {
        var middle = box.Middle.X;
        Spot[] corners = [new(middle, box.Y), new(box.Right, box.Bottom), new(box.X, box.Bottom)];
        page.Polygon(corners, new Pen(box.Width / 11), Fill.Shade(1));
        var bar = box.Width / 9;
        page.Rectangle(new Box(middle - (bar / 2), box.Y + (0.36 * box.Height), bar, 0.32 * box.Height), null, Fill.Shade(0));
        page.Rectangle(new Box(middle - (bar / 2), box.Y + (0.76 * box.Height), bar, bar), null, Fill.Shade(0));
    }
}
