using System.Text;
using CsCheck;
using ShopDays.Cli.Files.Variants;
using Xunit;

namespace ShopDays.Cli.Tests.Files;

/// <summary>Files that a slip of the keyboard could make: whatever is in them, the answer is findings.</summary>
public sealed class MutatedFilesTests
{
    private static readonly string[] Snippets =
        ["\"", "'", ": ", "- ", "[", "]", "{", "}", "\t", "\n", "  ", "&a ", "*a", "!x ", "0", "-1", "99999999999", "1e400", "#", "|", ">", "%", "@", "~", ",", "?", "\r", "é", "\u0000", "---\n", "...", "<<: *a\n", "null", "1/0", "\uFEFF"];

    private static readonly (string Kind, byte[] Bytes)[] SoundFiles =
    [
        .. Directory.EnumerateFiles(Repository.Folder("sample-projects"), "*.yaml", SearchOption.AllDirectories)
            .Select(file => (Path.GetFileName(file) == "shop.yaml" ? "shop" : file.EndsWith(VariantsFile.Ending, StringComparison.Ordinal) ? "variants" : "job", File.ReadAllBytes(file))),
        ("sawn", Encoding.UTF8.GetBytes("""
            sawn:
              - board: A1
                blanks:
                  - {part: front, number: 1, length: 21", width: 6 1/8", at: [0", 1/8"]}
                  - {part: lid, number: 1, strip: 1 of 2, length: 21", width: 6 1/8", at: [22", 1/8"]}
                rests:
                  - {rest: A1 rest 1, length: 40", width: 9 1/2", at: [45", 0"]}
              - board: A1 rest 1
                blanks:
                  - {part: lid, number: 1, strip: 2 of 2, length: 21", width: 6 1/8", at: [0", 1/8"]}

            """)),
        ("rates", Encoding.UTF8.GetBytes("operations:\n  - {operation: rip, minutes: {low: 0.5, likely: 0.8, high: 1.4}, slopes: {thickness: {reference: 1, exponent: 1.2}}}\n")),
    ];

    private static readonly Gen<(int File, (int Kind, double At, int Length, int Snippet)[] Slips)> Mutation = Gen.Select(
        Gen.Int[0, SoundFiles.Length - 1],
        Gen.Select(Gen.Int[0, 3], Gen.Double[0, 1], Gen.Int[1, 12], Gen.Int[0, Snippets.Length - 1]).Array[1, 6]);

    [Fact]
    public void A_slip_of_the_keyboard_gives_findings_and_never_an_exception() => Mutation.Sample(
        mutation =>
        {
            var (kind, bytes) = SoundFiles[mutation.File];
            foreach (var slip in mutation.Slips)
            {
                bytes = Slip(bytes, slip.Kind, slip.At, slip.Length, Snippets[slip.Snippet]);
            }

            foreach (var finding in BrokenFiles.Read(kind, new(kind + ".yaml", kind + ".yaml", bytes)))
            {
                Assert.True(finding.Place is { Line: >= 1, Column: >= 1 }, finding.ToString());
                Assert.DoesNotContain('\n', finding.ToString());
            }
        },
        seed: "0000KOIPe123",
        iter: 1_500,
        threads: 1);

    private static byte[] Slip(byte[] bytes, int kind, double share, int length, string snippet)
    {
        var at = (int)(share * bytes.Length);
        var end = Math.Min(bytes.Length, at + length);
        return kind switch
        {
            0 => [.. bytes[..at], .. Encoding.UTF8.GetBytes(snippet), .. bytes[at..]],
            1 => [.. bytes[..at], .. bytes[end..]],
            2 => [.. bytes[..at], .. bytes[at..end], .. bytes[at..]],
            _ => [.. bytes[..at], .. Encoding.UTF8.GetBytes(snippet), .. bytes[end..]],
        };
    }
}
