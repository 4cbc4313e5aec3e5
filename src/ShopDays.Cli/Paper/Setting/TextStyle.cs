namespace ShopDays.Cli.Paper.Setting;

/// <summary>How heavy the strokes of the letters are.</summary>
public enum Weight
{
    /// <summary>Running text.</summary>
    Regular,

    /// <summary>Small labels, which would look thin in the regular weight.</summary>
    Medium,

    /// <summary>Headings and totals.</summary>
    SemiBold,

    /// <summary>What must be seen first.</summary>
    Bold,
}

/// <summary>Which end of a text lies at the place given.</summary>
public enum Align
{
    /// <summary>The text begins there.</summary>
    Left,

    /// <summary>The text's middle lies there.</summary>
    Centre,

    /// <summary>The text ends there.</summary>
    Right,
}

/// <summary>How a text looks. Lengths are points (1/72 in).</summary>
/// <param name="Size">Size of the em in points, above 0.</param>
/// <param name="Weight">How heavy the strokes are.</param>
/// <param name="Grey">0 is black, 1 is white.</param>
public readonly record struct TextStyle(double Size, Weight Weight = Weight.Regular, double Grey = 0)
{
    // From the font's own tables (OS/2 sCapHeight 2048 of 2816 units); the leading is a choice of taste.
    private const double CapitalsPerEm = 2048.0 / 2816;
    private const double LeadingPerEm = 1.36;

    /// <summary>Height of a capital letter or figure.</summary>
    public double CapHeight => Size * CapitalsPerEm;

    /// <summary>Distance from one baseline to the next in running text.</summary>
    public double LineHeight => Size * LeadingPerEm;

    /// <summary>From the top of a line down to its baseline, so that capitals stand in the middle of the line.</summary>
    public double Baseline => (LineHeight + CapHeight) / 2;

    /// <summary>The width of a text set in one line; figures count with the one width they share.</summary>
    public double WidthOf(ReadOnlySpan<char> text) => FontFace.Of(Weight).Advance(text) * Size;

    /// <summary>The same style in another weight.</summary>
    public TextStyle In(Weight weight) => this with { Weight = weight };

    /// <summary>The same style in another grey: 0 is black, 1 is white.</summary>
    public TextStyle In(double grey) => this with { Grey = grey };

    /// <summary>
    /// The same style, made smaller if it must be for a text to fit a width, but not below a least size in points.
    /// </summary>
    public TextStyle Fitted(string text, double width, double leastSize)
    {
        var needed = WidthOf(text);
        return needed <= width ? this : this with { Size = Math.Min(Size, Math.Max(leastSize, Size * width / needed)) };
    }

    /// <summary>A text cut short with an ellipsis where it is wider than the width; empty if nothing fits.</summary>
    public string Shortened(string text, double width)
    {
        if (WidthOf(text) <= width)
        {
            return text;
        }

        for (var length = text.Length - 1; length > 0; length--)
        {
            if (char.IsLowSurrogate(text[length]))
            {
                continue;
            }

            var cut = string.Concat(text.AsSpan(0, length).TrimEnd(), "…");
            if (WidthOf(cut) <= width)
            {
                return cut;
            }
        }

        return "";
    }
}
