namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// One weight of Inter, known well enough to measure text without drawing it. Read from its file when it is first
/// asked for, and kept. Figures count with the width that all of them share, as they are drawn.
/// </summary>
internal sealed class FontFace
{
    private static readonly Lazy<FontFace>[] Faces =
        [.. Enum.GetValues<Weight>().Select(weight => new Lazy<FontFace>(() => new FontFace(weight)))];

    private readonly Dictionary<int, ushort> _glyphs;
    private readonly int[] _advances;
    private readonly double _unitsPerEm;

    private FontFace(Weight weight)
    {
        File = InterFiles.Read(weight);
        var tables = new FontTables(File);
        _unitsPerEm = tables.UnitsPerEm;
        _advances = tables.Advances();
        _glyphs = tables.Characters();
        var twins = tables.TabularTwins();
        for (var figure = '0'; figure <= '9'; figure++)
            _glyphs[figure] = twins.GetValueOrDefault(_glyphs[figure], _glyphs[figure]);
    }

    /// <summary>The bytes of the font file.</summary>
    public byte[] File { get; }

    /// <summary>The face of a weight.</summary>
    public static FontFace Of(Weight weight) => Faces[(int)weight].Value;

    /// <summary>The glyph drawn for a character; 0, an empty frame, for one that the font does not hold.</summary>
    public ushort GlyphOf(int character) => _glyphs.GetValueOrDefault(character);

    /// <summary>How far a text advances, in ems.</summary>
    public double Advance(ReadOnlySpan<char> text)
    {
        long units = 0;
        foreach (var rune in text.EnumerateRunes()) units += _advances[GlyphOf(rune.Value)];
        return units / _unitsPerEm;
    }
}
