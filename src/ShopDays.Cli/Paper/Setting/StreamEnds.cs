using System.Buffers.Binary;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// The checksums that end compressed streams (RFC 1950, 2.2). PDFsharp leaves them off; readers do without, but a checker
/// complains of each. They are put there, what lies behind moves on, and the table of offsets with it.
/// </summary>
internal static partial class StreamEnds
{
    private const uint AdlerModulus = 65521;
    private const int HeadOfStream = 2;

    /// <summary>Completes the streams of a file as PDFsharp writes it, with its table of offsets at the end.</summary>
    public static byte[] Complete(byte[] file)
    {
        // Latin-1 keeps every byte as one character and back.
        var text = Encoding.Latin1.GetString(file);
        var table = text.LastIndexOf("\nxref", StringComparison.Ordinal) + 1;
        List<(int At, int Grown)> grown = [];
        using var whole = new MemoryStream(file.Length + 256);
        var copied = 0;
        foreach (var entry in Offset().Matches(text, table).Select(entry => Number(entry.Groups[1])).Order())
        {
            if (Packed().Match(text, entry) is not { Success: true } head)
            {
                continue;
            }

            var length = head.Groups["length"];
            var from = head.Index + head.Length;
            var data = file.AsSpan(from, Number(length));
            var more = Encoding.Latin1.GetBytes((data.Length + sizeof(uint)).ToString(CultureInfo.InvariantCulture));
            whole.Write(file.AsSpan(copied..length.Index));
            whole.Write(more);
            whole.Write(file.AsSpan((length.Index + length.Length)..(from + data.Length)));
            whole.Write(ChecksumOf(data));
            copied = from + data.Length;
            grown.Add((copied, sizeof(uint) + more.Length - length.Length));
        }

        whole.Write(file.AsSpan(copied..table));
        var tail = Offset().Replace(text[table..], entry => Moved(Number(entry.Groups[1])).ToString("0000000000", CultureInfo.InvariantCulture) + entry.Groups[2].Value);
        whole.Write(Encoding.Latin1.GetBytes(Start().Replace(tail, start => Moved(Number(start)).ToString(CultureInfo.InvariantCulture))));
        return whole.ToArray();

        int Moved(int offset) => offset + grown.TakeWhile(one => one.At <= offset).Sum(one => one.Grown);
    }

    private static byte[] ChecksumOf(ReadOnlySpan<byte> data)
    {
        using var packed = new MemoryStream(data[HeadOfStream..].ToArray());
        using var plain = new DeflateStream(packed, CompressionMode.Decompress);
        var (low, high) = (1u, 0u);
        for (var next = plain.ReadByte(); next >= 0; next = plain.ReadByte())
        {
            low = (low + (uint)next) % AdlerModulus;
            high = (high + low) % AdlerModulus;
        }

        var sum = new byte[sizeof(uint)];
        BinaryPrimitives.WriteUInt32BigEndian(sum, (high << 16) | low);
        return sum;
    }

    private static int Number(Capture digits) => int.Parse(digits.Value, CultureInfo.InvariantCulture);

    /// <summary>A line of the table that says where an object begins.</summary>
    [GeneratedRegex(@"(?<=\n)([0-9]{10})( [0-9]{5} n)")]
    private static partial Regex Offset();

    /// <summary>An object with a compressed stream, up to its first byte.</summary>
    [GeneratedRegex(@"\G[0-9]+ [0-9]+ obj\s*<<(?=[^\r\n]*/FlateDecode)[^\r\n]*?/Length (?<length>[0-9]+)[^\r\n]*?>>\s*stream\r?\n")]
    private static partial Regex Packed();

    /// <summary>Where the table begins.</summary>
    [GeneratedRegex(@"(?<=startxref\r?\n)[0-9]+")]
    private static partial Regex Start();
}
