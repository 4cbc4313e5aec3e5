namespace ShopDays.Cli.Paper.Setting;

/// <summary>Whether a line goes through.</summary>
public enum Dash
{
    /// <summary>In one stroke.</summary>
    Solid,

    /// <summary>In strokes of several times its width.</summary>
    Dashed,

    /// <summary>In round dots.</summary>
    Dotted,
}

/// <summary>What a line is drawn with.</summary>
/// <param name="Width">In points, above 0.</param>
/// <param name="Grey">0 is black, 1 is white.</param>
/// <param name="Dash">Whether it goes through.</param>
public readonly record struct Pen(double Width, double Grey = 0, Dash Dash = Dash.Solid)
{
    /// <summary>The thinnest line that every printer shows.</summary>
    public static Pen Hair { get; } = new(0.5, 0.55);

    /// <summary>Outlines.</summary>
    public static Pen Fine { get; } = new(0.75);

    /// <summary>What frames or ends something.</summary>
    public static Pen Strong { get; } = new(1.5);
}

/// <summary>Lines that tell areas apart where there is no colour.</summary>
public enum Hatch
{
    /// <summary>No lines.</summary>
    None,

    /// <summary>Rising to the right.</summary>
    Rising,

    /// <summary>Falling to the right.</summary>
    Falling,

    /// <summary>Both ways.</summary>
    Crossed,

    /// <summary>From left to right.</summary>
    Level,

    /// <summary>From top to bottom.</summary>
    Upright,

    /// <summary>Dots in rows.</summary>
    Dots,
}

/// <summary>What an area is filled with; <c>default</c> is nothing, so that what lies below shows through.</summary>
/// <param name="Grey">0 is black, 1 is white; none leaves the ground as it is.</param>
/// <param name="Hatch">Lines over the ground.</param>
/// <param name="Spacing">From one line of the hatch to the next, in points, above 0.</param>
public readonly record struct Fill(double? Grey, Hatch Hatch, double Spacing)
{
    /// <summary>An even grey: 0 is black, 1 is white.</summary>
    public static Fill Shade(double grey) => new(grey, Hatch.None, 0);

    /// <summary>White ground under lines.</summary>
    public static Fill Hatched(Hatch hatch, double spacing = 5) => new(1, hatch, spacing);
}
