namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// Things drawn one after the other, kept as a list, so that the same picture goes on paper and into a file of its own.
/// Lengths are in points from its upper left corner.
/// </summary>
public sealed class Picture
{
    private readonly List<Drawn> drawn = [];

    /// <summary>What was drawn, in its order.</summary>
    public IReadOnlyList<Drawn> Drawn => drawn;

    /// <summary>Draws a straight line.</summary>
    public void Line(double x1, double y1, double x2, double y2, Pen pen) => drawn.Add(new Drawn.Line(new(x1, y1), new(x2, y2), pen));

    /// <summary>Draws a rectangle.</summary>
    public void Rectangle(Box box, Pen? outline = null, Fill fill = default) => drawn.Add(new Drawn.Rectangle(box, outline, fill));

    /// <summary>Draws a closed shape through three corners or more.</summary>
    public void Polygon(IReadOnlyList<Spot> corners, Pen? outline = null, Fill fill = default) => drawn.Add(new Drawn.Polygon(corners, outline, fill));

    /// <summary>Draws the round that fills a square.</summary>
    public void Disc(Box box, Pen? outline = null, Fill fill = default) => drawn.Add(new Drawn.Disc(box, outline, fill));

    /// <summary>Sets a text in one line, its baseline at a height.</summary>
    public void Text(string text, double x, double baseline, TextStyle style, Align align = Align.Left) =>
        drawn.Add(new Drawn.Text(text, new(x, baseline), style, align, false));

    /// <summary>Sets a text that reads upwards.</summary>
    public void TurnedText(string text, Spot at, TextStyle style, Align align = Align.Left) =>
        drawn.Add(new Drawn.Text(text, at, style, align, true));
}
