using System.Buffers.Binary;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// A file as PDFsharp writes it, made smaller: what is not a stream goes into streams of objects, and the table of offsets
/// into a stream too (ISO 32000-1, 7.5.7 and 7.5.8). The thousands of small parts by which a file is read out would more
/// than double it otherwise.
/// </summary>
internal static partial class PackedObjects
{
    // A reader unpacks a whole stream for one object of it.
    private const int MostInAStream = 400;

    private const byte Free = 0;
    private const byte AtOffset = 1;
    private const byte InStream = 2;

    /// <summary>Packs a file with its table of offsets at the end.</summary>
    public static byte[] Pack(byte[] file)
    {
        // Latin-1 keeps every byte as one character and back.
        var text = Encoding.Latin1.GetString(file);
        var table = text.LastIndexOf("\nxref", StringComparison.Ordinal) + 1;

        // An outline without entries has a place, that of the next object, and is not written.
        List<int> offsets = [.. Offset().Matches(text, table).Select(entry => Number(entry.ValueSpan)).Distinct().Order()];
        using var whole = new MemoryStream(file.Length);
        whole.Write(file.AsSpan(..offsets[0]));
        var places = new SortedDictionary<int, (byte Kind, int Where, int Order)>();
        List<(int Number, string Text)> loose = [];
        foreach (var (from, to) in offsets.Zip([.. offsets.Skip(1), table]))
        {
            var head = Head().Match(text, from);
            var body = text[(from + head.Length)..text.LastIndexOf("endobj", to - 1, to - from, StringComparison.Ordinal)].TrimEnd();
            if (body.EndsWith("endstream", StringComparison.Ordinal))
            {
                places[Number(head.Groups[1].ValueSpan)] = (AtOffset, (int)whole.Position, 0);
                whole.Write(file.AsSpan(from..to));
            }
            else
            {
                loose.Add((Number(head.Groups[1].ValueSpan), body));
            }
        }

        var next = places.Keys.Concat(loose.Select(one => one.Number)).Max() + 1;
        foreach (var some in loose.Chunk(MostInAStream))
        {
            places[next] = (AtOffset, (int)whole.Position, 0);
            WriteObjects(whole, next, some, places);
            next++;
        }

        var start = whole.Position;
        places[next] = (AtOffset, (int)start, 0);
        WriteTable(whole, next, places, Trailer().Match(text, table).Groups[1].Value);
        whole.Write(Encoding.Latin1.GetBytes(FormattableString.Invariant($"startxref\n{start}\n%%EOF\n")));
        return whole.ToArray();
    }

    private static void WriteObjects(MemoryStream whole, int number, (int Number, string Text)[] some, SortedDictionary<int, (byte, int, int)> places)
    {
        var (index, bodies) = (new StringBuilder(), new StringBuilder());
        foreach (var (order, one) in some.Index())
        {
            places[one.Number] = (InStream, number, order);
            index.Append(CultureInfo.InvariantCulture, $"{one.Number} {bodies.Length} ");
            bodies.Append(one.Text).Append('\n');
        }

        WriteStream(whole, number, FormattableString.Invariant($"/Type/ObjStm/N {some.Length}/First {index.Length}"), Encoding.Latin1.GetBytes(index.Append(bodies).ToString()));
    }

    private static void WriteTable(MemoryStream whole, int number, SortedDictionary<int, (byte Kind, int Where, int Order)> places, string trailer)
    {
        // Each entry: its kind in one byte, its offset or its stream in four, its place in the stream in two.
        var entries = new byte[(number + 1) * 7];
        for (var one = 0; one <= number; one++)
        {
            var entry = entries.AsSpan(one * 7, 7);
            var (kind, where, order) = places.TryGetValue(one, out var place) ? place : (Free, 0, one == 0 ? ushort.MaxValue : 0);
            entry[0] = kind;
            BinaryPrimitives.WriteInt32BigEndian(entry[1..5], where);
            BinaryPrimitives.WriteUInt16BigEndian(entry[5..], (ushort)order);
        }

        WriteStream(whole, number, FormattableString.Invariant($"/Type/XRef/Size {number + 1}/W[1 4 2]") + SizeOf().Replace(trailer, "").ReplaceLineEndings(" "), entries);
    }

    private static void WriteStream(MemoryStream whole, int number, string entries, byte[] plain)
    {
        using var packed = new MemoryStream();
        using (var packing = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            packing.Write(plain);
        }

        whole.Write(Encoding.Latin1.GetBytes(FormattableString.Invariant($"{number} 0 obj\n<<{entries}/Filter/FlateDecode/Length {packed.Length}>>\nstream\n")));
        packed.WriteTo(whole);
        whole.Write("\nendstream\nendobj\n"u8);
    }

    private static int Number(ReadOnlySpan<char> digits) => int.Parse(digits, CultureInfo.InvariantCulture);

    /// <summary>Where an object begins.</summary>
    [GeneratedRegex(@"(?<=\n)[0-9]{10}(?= [0-9]{5} n)")]
    private static partial Regex Offset();

    /// <summary>The head of an object.</summary>
    [GeneratedRegex(@"\G([0-9]+) 0 obj\s*")]
    private static partial Regex Head();

    /// <summary>What the file says of itself behind the table.</summary>
    [GeneratedRegex(@"(?<=\ntrailer\s*)<<(.*?)>>\s*(?:%[^\n]*\s*)?startxref", RegexOptions.Singleline)]
    private static partial Regex Trailer();

    [GeneratedRegex(@"/Size\s+[0-9]+")]
    private static partial Regex SizeOf();
}
