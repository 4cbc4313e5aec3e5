namespace ShopDays.Cli.Paper.Setting;

/// <summary>A place on a page, in points from its left and upper edges.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Down.</param>
public readonly record struct Spot(double X, double Y);

/// <summary>An upright rectangle on a page, in points from the page's left and upper edges.</summary>
/// <param name="X">Its left edge.</param>
/// <param name="Y">Its upper edge.</param>
/// <param name="Width">To the right.</param>
/// <param name="Height">Down.</param>
public readonly record struct Box(double X, double Y, double Width, double Height)
{
    /// <summary>The right edge.</summary>
    public double Right => X + Width;

    /// <summary>The lower edge.</summary>
    public double Bottom => Y + Height;

    /// <summary>The middle.</summary>
    public Spot Middle => new(X + (Width / 2), Y + (Height / 2));

    /// <summary>The rectangle drawn in on all sides; never less than nothing wide or high.</summary>
    public Box Inset(double sides, double ends) =>
        new(X + sides, Y + ends, Math.Max(0, Width - (2 * sides)), Math.Max(0, Height - (2 * ends)));

    /// <summary>The rectangle with so much more on every side.</summary>
    public Box Grown(double sides) => new(X - sides, Y - sides, Width + (2 * sides), Height + (2 * sides));

    /// <summary>The smallest rectangle around some places.</summary>
    /// <exception cref="InvalidOperationException">There is no place.</exception>
    public static Box Around(IReadOnlyList<Spot> spots)
    {
        var left = spots.Min(spot => spot.X);
        var top = spots.Min(spot => spot.Y);
        return new(left, top, spots.Max(spot => spot.X) - left, spots.Max(spot => spot.Y) - top);
    }
}
