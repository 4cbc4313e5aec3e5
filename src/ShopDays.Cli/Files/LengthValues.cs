using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;

namespace ShopDays.Cli.Files;

/// <summary>Readers of lengths and sizes, with the limits beyond which a figure is a slip and not a board.</summary>
internal static class LengthValues
{
    /// <summary>The longest board: 20 m; longer trees are sawn, but not for furniture (common practice, no source).</summary>
    public static readonly Length Longest = Length.FromMillimetres(20_000m);

    /// <summary>The widest slab: 2 m (common practice, no source).</summary>
    public static readonly Length Widest = Length.FromMillimetres(2_000m);

    /// <summary>The thickest stock: 300 mm (common practice, no source).</summary>
    public static readonly Length Thickest = Length.FromMillimetres(300m);

    /// <summary>A length above zero.</summary>
    /// <param name="what">What it is, with its article.</param>
    /// <param name="most">The most that is no slip.</param>
    public static ValueReader<Length> AboveZero(string what, Length most) => (node, reading) =>
        FromZero(what, most)(node, reading).Unless(reading.Findings, length => length == Length.Zero
            ? ValueMistakes.ZeroLength(node.Place, ((YamlText)node).Value, what)
            : null);

    /// <summary>A length of zero or more.</summary>
    /// <inheritdoc cref="AboveZero"/>
    public static ValueReader<Length> FromZero(string what, Length most) => (node, reading) =>
        Values.Of("a length such as 47 1/2\" or 1206 mm", (text, known) => LengthText.Read(text, known.Units))(node, reading)
            .Unless(reading.Findings, length => TooLarge(node.Place, length, what, most, reading));

    /// <summary>The size of a board as it lies there: a thickness such as 5/4 is quarters of an inch.</summary>
    public static ValueReader<Size> RoughSize { get; } = SizeOf("the length of a board", "the width of a board", "the thickness of a board", rough: true);

    /// <summary>The finished size of a part.</summary>
    public static ValueReader<Size> FinishedSize { get; } = SizeOf("the length of a part", "the width of a part", "the thickness of a part", rough: false);

    /// <summary>The mistake of a length that is no length of timber; null when it can be one.</summary>
    public static Finding? TooLarge(Place place, Length length, string what, Length most, Reading reading) => length > most
        ? ValueMistakes.TooLargeALength(place, reading.Format.Write(length), what, reading.Format.Write(most))
        : null;

    private static ValueReader<Size> SizeOf(string length, string width, string thickness, bool rough) => (node, reading) =>
        Values.Of("length x width x thickness, such as 42\" x 17\" x 7/8\"", (text, known) => SizeText.Read(text, known.Units, rough))(node, reading)
            .Unless(reading.Findings, size => TooLarge(node.Place, size.Length, length, Longest, reading)
                ?? TooLarge(node.Place, size.Width, width, Widest, reading)
                ?? TooLarge(node.Place, size.Thickness, thickness, Thickest, reading));
}
