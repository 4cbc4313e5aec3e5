namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// The sizes that the pages are set in. Body text is for the table, bench text for a sheet pinned up and read at
/// arm's length. Everything is black or a grey that a poor printer still shows.
/// </summary>
public static class TypeScale
{
    /// <summary>The name of the job, once, on the first page.</summary>
    public static TextStyle Title { get; } = new(24, Weight.SemiBold);

    /// <summary>A section.</summary>
    public static TextStyle Heading { get; } = new(16, Weight.SemiBold);

    /// <summary>A part of a section.</summary>
    public static TextStyle Subheading { get; } = new(12, Weight.SemiBold);

    /// <summary>Running text.</summary>
    public static TextStyle Body { get; } = new(10.5);

    /// <summary>Text that is read standing at the bench.</summary>
    public static TextStyle Bench { get; } = new(12.5);

    /// <summary>Remarks, heads and feet of pages.</summary>
    public static TextStyle Small { get; } = new(9, Weight.Regular, 0.25);

    /// <summary>Names of columns and of big figures.</summary>
    public static TextStyle Label { get; } = new(8.5, Weight.Medium, 0.3);

    /// <summary>The one figure that a page is about.</summary>
    public static TextStyle BigFigure { get; } = new(30, Weight.SemiBold);
}
