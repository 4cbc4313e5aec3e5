using System.ComponentModel;
using System.Diagnostics;
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
[Trait("Source", "ISO 32000-1:2008, 7.5 (structure of a file), 12.3.3 (outline), 14.3.3 (information), 14.9.2 (language); read back by PdfPig and qpdf")]
public sealed class HouseStyleTests
{
    private static readonly Instant Now = Instant.FromUtc(2027, 3, 1, 9, 0);

    // PDFsharp leaves the checksum off the end of a compressed stream, which readers do without (RFC 1950, 2.2).
    private const string LeftOut = "input stream is complete but output may still be valid";
    private const int WarningsOnly = 3;

    public static TheoryData<string> All => ["plan", "materials", "orders", "rates"];

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
        Assert.All(said.Split('\n').Where(line => line.Contains("WARNING", StringComparison.Ordinal) || line.Contains("ERROR", StringComparison.OrdinalIgnoreCase)), line => Assert.EndsWith(LeftOut, line, StringComparison.Ordinal));
        Assert.Contains(checker.ExitCode, (int[])[0, WarningsOnly]);
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

    private static byte[] Paper(string which)
    {
        if (which == "rates")
        {
            var told = ATimedShop.Told(ATimedShop.Model(24, withASlip: true), PaperSize.A4);
            return RatesBook.Set(told, ATimedShop.Courses(told), Now);
        }

        using var folder = new FreshFolder().WithATray();
        var pdf = folder.File("paper.pdf");
        string[] about = which == "orders" ? ["--shop", folder.Path] : [folder.File("jobs", "tray.yaml")];
        Assert.Equal(0, Typed.At(Now, [which, .. about, "--effort", "quick", "--pdf", pdf]).ExitCode);
        return File.ReadAllBytes(pdf);
    }
}
