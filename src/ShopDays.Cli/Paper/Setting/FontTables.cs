using System.Buffers.Binary;
using System.Text;

namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// Reads what setting type needs out of a TrueType file: which glyph stands for a character, how far each glyph
/// advances, and the figures of equal width. Source of the layouts: OpenType specification 1.9, chapters cmap,
/// head, hhea, hmtx and GSUB.
/// </summary>
internal sealed class FontTables(byte[] file)
{
    /// <summary>Font units in one em.</summary>
    public int UnitsPerEm => At(Table("head") + 18);

    /// <summary>The advance of every glyph, in font units.</summary>
    public int[] Advances()
    {
        var measured = At(Table("hhea") + 34);
        var advances = new int[At(Table("maxp") + 4)];
        var metrics = Table("hmtx");
        // Glyphs after the last measured one advance as far as that one.
        for (var glyph = 0; glyph < advances.Length; glyph++)
        {
            advances[glyph] = At(metrics + (4 * Math.Min(glyph, measured - 1)));
        }

        return advances;
    }

    /// <summary>The glyph of every character that the font holds.</summary>
    public Dictionary<int, ushort> Characters()
    {
        var map = Table("cmap");
        var count = At(map + 2);
        for (var record = map + 4; record < map + 4 + (8 * count); record += 8)
        {
            if (At(record) == 3 && At(record + 2) == 10)
            {
                return Groups(map + Long(record + 4));
            }
        }

        throw new InvalidOperationException("The font has no table of the full range of characters.");
    }

    /// <summary>For glyphs with a twin of the width all figures share (the feature tnum), that twin.</summary>
    public Dictionary<ushort, ushort> TabularTwins()
    {
        var substitutions = Table("GSUB");
        var features = substitutions + At(substitutions + 6);
        var lookups = substitutions + At(substitutions + 8);
        var twins = new Dictionary<ushort, ushort>();
        for (var record = features + 2; record < features + 2 + (6 * At(features)); record += 6)
        {
            if (Tag(record) != "tnum")
            {
                continue;
            }

            var feature = features + At(record + 4);
            for (var each = 0; each < At(feature + 2); each++)
            {
                AddTwins(twins, lookups + At(lookups + 2 + (2 * At(feature + 4 + (2 * each)))));
            }

            break;
        }

        return twins;
    }

    private void AddTwins(Dictionary<ushort, ushort> twins, int lookup)
    {
        if (At(lookup) != 1)
        {
            return;
        }

        for (var each = 0; each < At(lookup + 4); each++)
        {
            var table = lookup + At(lookup + 6 + (2 * each));
            var covered = Covered(table + At(table + 2));
            for (var order = 0; order < covered.Count; order++)
            {
                var twin = At(table) == 1
                    ? (ushort)(covered[order] + At(table + 4))
                    : At(table + 6 + (2 * order));
                twins.TryAdd(covered[order], twin);
            }
        }
    }

    private List<ushort> Covered(int coverage)
    {
        var glyphs = new List<ushort>();
        var count = At(coverage + 2);
        for (var each = 0; each < count; each++)
        {
            if (At(coverage) == 1)
            {
                glyphs.Add(At(coverage + 4 + (2 * each)));
                continue;
            }

            var range = coverage + 4 + (6 * each);
            for (int glyph = At(range); glyph <= At(range + 2); glyph++)
            {
                glyphs.Add((ushort)glyph);
            }
        }

        return glyphs;
    }

    private Dictionary<int, ushort> Groups(int subtable)
    {
        var characters = new Dictionary<int, ushort>();
        var groups = Long(subtable + 12);
        for (var group = subtable + 16; group < subtable + 16 + (12 * groups); group += 12)
        {
            var first = Long(group);
            for (var character = first; character <= Long(group + 4); character++)
            {
                characters[character] = (ushort)(Long(group + 8) + character - first);
            }
        }

        return characters;
    }

    private int Table(string tag)
    {
        for (var record = 12; record < 12 + (16 * At(4)); record += 16)
        {
            if (Tag(record) == tag)
            {
                return Long(record + 8);
            }
        }

        throw new InvalidOperationException($"The font has no table '{tag}'.");
    }

    private string Tag(int offset) => Encoding.ASCII.GetString(file, offset, 4);

    private ushort At(int offset) => BinaryPrimitives.ReadUInt16BigEndian(file.AsSpan(offset));

    private int Long(int offset) => BinaryPrimitives.ReadInt32BigEndian(file.AsSpan(offset));
}
