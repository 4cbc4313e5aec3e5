namespace ShopDays.Cli.Paper.Setting;

/// <summary>One thing drawn, in points from the upper left corner of its picture; later things cover earlier ones.</summary>
public abstract record Drawn
{
    private protected Drawn()
    {
    }

    /// <summary>A straight line.</summary>
    /// <param name="From">Where it begins.</param>
    /// <param name="To">Where it ends.</param>
    /// <param name="Pen">What it is drawn with.</param>
    public sealed record Line(Spot From, Spot To, Pen Pen) : Drawn;

    /// <summary>A rectangle: its filling, then its outline, of which either may be missing.</summary>
    /// <param name="Box">Where it lies.</param>
    /// <param name="Outline">What it is outlined with; null for no outline.</param>
    /// <param name="Fill">What it is filled with.</param>
    public sealed record Rectangle(Box Box, Pen? Outline, Fill Fill) : Drawn;

    /// <summary>A closed shape.</summary>
    /// <param name="Corners">Three corners or more.</param>
    /// <param name="Outline">What it is outlined with; null for no outline.</param>
    /// <param name="Fill">What it is filled with.</param>
    public sealed record Polygon(IReadOnlyList<Spot> Corners, Pen? Outline, Fill Fill) : Drawn;

    /// <summary>The round that fills a square; its filling is an even grey.</summary>
    /// <param name="Box">The square.</param>
    /// <param name="Outline">What it is outlined with; null for no outline.</param>
    /// <param name="Fill">What it is filled with.</param>
    public sealed record Disc(Box Box, Pen? Outline, Fill Fill) : Drawn;

    /// <summary>A text in one line.</summary>
    /// <param name="Words">The text.</param>
    /// <param name="At">The place on its baseline that <paramref name="Align"/> speaks of.</param>
    /// <param name="Style">How it looks.</param>
    /// <param name="Align">Which end of it lies there.</param>
    /// <param name="IsTurned">Whether it reads upwards.</param>
    public sealed record Text(string Words, Spot At, TextStyle Style, Align Align, bool IsTurned) : Drawn;
}
