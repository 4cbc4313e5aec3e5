using System.Text;

namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// One weight of Inter, known well enough to measure text without drawing it. Read from its file when it is first
/// asked for, and kept. Figures count with the width that all of them share, as they are drawn.
/// </summary>
internal sealed class FontFace
{
    private static readonly Lazy<FontFace>[] Faces =
        [.. Enum.GetValues<Weight>().Select(weight => new Lazy<FontFace>(() => new FontFace(weight)))];

    /// <summary>What stands for a character that the font does not hold: a question mark, which is drawn in a frame.</summary>
    public const char Substitute = '?';

    private readonly Dictionary<int, ushort> glyphs;
    private readonly int[] advances;
    private readonly double unitsPerEm;

    private FontFace(Weight weight)
    {
        File = InterFiles.Read(weight);
        var tables = new FontTables(File);
        unitsPerEm = tables.UnitsPerEm;
        advances = tables.Advances();
        glyphs = tables.Characters();
        var twins = tables.TabularTwins();
        for (var figure = '0'; figure <= '9'; figure++)
        {
            glyphs[figure] = twins.GetValueOrDefault(glyphs[figure], glyphs[figure]);
        }
    }

    /// <summary>The bytes of the font file.</summary>
    public byte[] File { get; }

    /// <summary>The face of a weight.</summary>
    public static FontFace Of(Weight weight) => Faces[(int)weight].Value;

    /// <summary>Whether the font has a character; any space and any control character is drawn as the plain space.</summary>
    public bool Holds(int character) => glyphs.ContainsKey(Plain(character));

    /// <summary>The glyph drawn for a character; that of the <see cref="Substitute"/> for one that the font does not hold.</summary>
    public ushort GlyphOf(int character) => glyphs.TryGetValue(Plain(character), out var glyph) ? glyph : glyphs[Substitute];

    /// <summary>How far a text advances, in ems.</summary>
    public double Advance(ReadOnlySpan<char> text)
    {
        long units = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            units += advances[GlyphOf(rune.Value)];
        }

        return units / unitsPerEm;
    }

    private static int Plain(int character) =>
        Rune.TryCreate(character, out var rune) && (Rune.IsControl(rune) || Rune.IsWhiteSpace(rune)) ? ' ' : character;
}
