namespace ShopDays.Cli.Paper.Setting;

/// <summary>A sheet of paper. Lengths are points (1/72 in).</summary>
/// <param name="Name">As the shop file writes it.</param>
/// <param name="Width">From left to right.</param>
/// <param name="Height">From top to bottom.</param>
public sealed record PaperSize(string Name, double Width, double Height)
{
    private const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>210 mm by 297 mm (ISO 216).</summary>
    public static PaperSize A4 { get; } = new("a4", 210 * PointsPerMillimetre, 297 * PointsPerMillimetre);

    /// <summary>8 1/2 in by 11 in (ANSI/ASME Y14.1, size A).</summary>
    public static PaperSize Letter { get; } = new("letter", 612, 792);

    /// <summary>Every size the shop file may name.</summary>
    public static IReadOnlyList<PaperSize> All { get; } = [A4, Letter];

    /// <summary>The same sheet turned by a quarter.</summary>
    public PaperSize Turned() => this with { Width = Height, Height = Width };
}

/// <summary>What stays white around a page, in points.</summary>
/// <param name="Left">At the left.</param>
/// <param name="Top">At the top; the running head stands in it.</param>
/// <param name="Right">At the right.</param>
/// <param name="Bottom">At the bottom; the running foot stands in it.</param>
public readonly record struct Margins(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Wide enough for any printer and for a pin: 16 mm at the sides, 22 mm above, 20 mm below.</summary>
    public static Margins Usual { get; } = new(45, 62, 45, 56);
}
