using System.Buffers.Binary;
using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using NodaTime;
using ShopDays.Cli.Paper.Rates;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Cli.Tests.Running;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;
using Xunit;

namespace ShopDays.Cli.Tests.Paper;

/// <summary>What all paper has in common, whatever it is about.</summary>
[Trait("Source", "ISO 32000-1:2008, 7.5 (structure of a file), 12.3.3 (outline), 14.3.3 (information), 14.9.2 (language); RFC 1950, 2.2 (checksum); read back by PdfPig and qpdf")]
public sealed class HouseStyleTests
{
    private static readonly Instant Now = Instant.FromUtc(2027, 3, 1, 9, 0);

    public static TheoryData<string> All => ["plan", "materials", "orders", "rates", "compare"];

    [Theory]
    [MemberData(nameof(All))]
    public void Every_paper_has_a_title_a_language_and_bookmarks(string which)
    {
        using var paper = PdfDocument.Open(Paper(which));
        Assert.False(string.IsNullOrWhiteSpace(paper.Information.Title));
        Assert.False(string.IsNullOrWhiteSpace(paper.Information.Subject));
        Assert.True(paper.Structure.Catalog.CatalogDictionary.TryGet(NameToken.Create("Lang"), out var language));
        Assert.Equal("en", Assert.IsAssignableFrom<IDataToken<string>>(language).Data);
        Assert.True(paper.TryGetBookmarks(out var bookmarks));
        Assert.NotEmpty(bookmarks.GetNodes());
    }

    [Theory]
    [MemberData(nameof(All))]
    public void A_public_checker_finds_no_fault_in_the_structure(string which)
    {
        using var folder = new FreshFolder();
        var file = folder.File(which + ".pdf");
        File.WriteAllBytes(file, Paper(which));
        using var checker = Start(file);
        var said = checker.StandardOutput.ReadToEnd() + checker.StandardError.ReadToEnd();
        checker.WaitForExit();
        Assert.True(checker.ExitCode == 0, said);
        Assert.DoesNotContain("WARNING", said, StringComparison.Ordinal);
    }

    /// <summary>A compressed stream ends with the checksum of what it holds, which a reader of such streams looks at (RFC 1950, 2.2).</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void Every_compressed_stream_ends_with_its_checksum(string which)
    {
        var file = Paper(which);
        var text = Encoding.Latin1.GetString(file);
        var streams = Regex.Matches(text, @"<<(?=[^\r\n]*/FlateDecode)[^\r\n]*?/Length ([0-9]+)[^\r\n]*?>>\s*stream\r?\n");
        Assert.NotEmpty(streams);
        foreach (var head in streams.Cast<Match>())
        {
            var (from, length) = (head.Index + head.Length, int.Parse(head.Groups[1].Value, CultureInfo.InvariantCulture));
            Assert.StartsWith("endstream", text[(from + length)..].TrimStart(), StringComparison.Ordinal);
            using var plain = new MemoryStream();
            using (var packed = new DeflateStream(new MemoryStream(file, from + 2, length - 2), CompressionMode.Decompress))
            {
                packed.CopyTo(plain);
            }

            var (low, high) = (1u, 0u);
            foreach (var one in plain.ToArray())
            {
                low = (low + one) % 65521;
                high = (high + low) % 65521;
            }

            Assert.Equal((high << 16) | low, BinaryPrimitives.ReadUInt32BigEndian(file.AsSpan(from + length - 4, 4)));
        }
    }

    private static Process Start(string file)
    {
        try
        {
            return Process.Start(new ProcessStartInfo("qpdf", ["--check", file]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        }
        catch (Win32Exception)
        {
            Assert.Skip("qpdf is not installed on this machine");
            throw;
        }
    }

    internal static byte[] Paper(string which)
    {
        if (which == "rates")
        {
            var told = ATimedShop.Told(ATimedShop.Model(24, withASlip: true), PaperSize.A4);
            return RatesBook.Set(told, ATimedShop.Courses(told), Now);
        }

        using var folder = new FreshFolder().WithATray();
        var pdf = folder.File("paper.pdf");
        string[] about = which == "orders" ? ["--shop", folder.Path] : [folder.File("jobs", "tray.yaml")];
        string[] more = which == "compare" ? ["--variant", "sessions: {tuesday: [\"18:00-20:30\"]}", "--suggest", "--schedules", "20"] : [];
        Assert.Equal(0, Typed.At(Now, [which, .. about, "--effort", "quick", .. more, "--pdf", pdf]).ExitCode);
        return File.ReadAllBytes(pdf);
    }
}
