using System.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace ShopDays.Cli.Files.Yaml;

/// <summary>
/// Reads a YAML file into nodes that know their places. What it holds may come from anywhere, so size, depth and
/// repetition are bounded.
/// </summary>
internal static class YamlFile
{
    /// <summary>The largest file, in bytes. A job of a few hundred parts takes some 50,000.</summary>
    public const int LargestBytes = 1_000_000;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads a file's bytes.</summary>
    /// <param name="file">The file's name for the maker.</param>
    /// <param name="bytes">All that it holds.</param>
    /// <param name="expected">What such a file holds, should it be empty; null where it may be.</param>
    /// <param name="findings">Where mistakes go.</param>
    /// <returns>The one document of the file; null when there is none that could be read.</returns>
    public static YamlNode? Read(string file, byte[] bytes, string? expected, Findings findings)
    {
        var start = new Place(file, 1, 1);
        if (bytes.Length > LargestBytes)
        {
            findings.Add(YamlMistakes.TooLargeAFile(start, bytes.Length, LargestBytes));
            return null;
        }

        string text;
        try
        {
            text = Strict.GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException fault)
        {
            findings.Add(YamlMistakes.NotUtf8(PlaceOfByte(file, bytes, fault.Index)));
            return null;
        }

        try
        {
            return ReadDocument(new YamlTree(file, new Parser(new StringReader(text)), findings), file, expected, findings);
        }
        catch (YamlException fault)
        {
            findings.Add(YamlFault.Explain(file, text, fault));
            return null;
        }
    }

    private static YamlNode? ReadDocument(YamlTree tree, string file, string? expected, Findings findings)
    {
        if (tree.Next() is StreamEnd)
        {
            SayEmpty(file, expected, findings);
            return null;
        }

        var root = tree.ReadNode(depth: 1);
        if (root is null)
        {
            return null;
        }

        tree.Next();
        if (tree.Next() is DocumentStart second)
        {
            findings.Add(YamlMistakes.SecondDocument(tree.PlaceOf(second)));
            return null;
        }

        if (root is YamlText { IsLeftOut: true })
        {
            SayEmpty(file, expected, findings);
            return null;
        }

        return root;
    }

    private static void SayEmpty(string file, string? expected, Findings findings)
    {
        if (expected is not null)
        {
            findings.Add(YamlMistakes.NothingInTheFile(new(file, 1, 1), expected));
        }
    }

    private static Place PlaceOfByte(string file, byte[] bytes, int index)
    {
        var before = bytes.AsSpan(0, Math.Clamp(index, 0, bytes.Length));
        var lineStart = before.LastIndexOf((byte)'\n') + 1;
        return new(file, before.Count((byte)'\n') + 1, Encoding.UTF8.GetCharCount(before[lineStart..]) + 1);
    }
}
