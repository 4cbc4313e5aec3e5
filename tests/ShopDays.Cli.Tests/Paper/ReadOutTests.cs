using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Cli.Tests.Running;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.MarkedContent;
using UglyToad.PdfPig.Graphics.Operations.PathPainting;
using UglyToad.PdfPig.Graphics.Operations.TextShowing;
using UglyToad.PdfPig.Tokens;
using Xunit;

namespace ShopDays.Cli.Tests.Paper;

/// <summary>What a program reads out of the paper, for who cannot see it.</summary>
[Trait("Source", "ISO 32000-1:2008, 12.2 (title shown), 12.5.1 (order of tabs), 14.6 (marked content), 14.7 (structure), 14.8 (tagged PDF), 14.9.3 (alternate descriptions); read back by PdfPig and poppler")]
public sealed class ReadOutTests
{
    public static TheoryData<string> Papers => ["plan", "materials", "orders", "rates", "compare", "sheet", "quote"];

    public static TheoryData<string> Shops => Sample.Shops;

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task Every_stroke_on_a_page_is_a_part_of_the_file_or_for_the_eye_alone(string which)
    {
        using var paper = PdfDocument.Open(await Paper(which));
        Assert.All(paper.GetPages(), page =>
        {
            var depth = 0;
            var painted = 0;
            foreach (var operation in page.Operations)
            {
                depth += operation switch
                {
                    BeginMarkedContent or BeginMarkedContentWithProperties => 1,
                    EndMarkedContent => -1,
                    _ => 0,
                };
                if (Paints(operation))
                {
                    painted++;
                    Assert.True(depth == 1, $"{operation.Operator} at depth {depth}");
                }
            }

            Assert.Equal(0, depth);
            Assert.True(painted > 0);
        });
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task Every_file_says_that_it_can_be_read_out_and_shows_its_title(string which)
    {
        using var paper = PdfDocument.Open(await Paper(which));
        var catalog = paper.Structure.Catalog.CatalogDictionary.Data;
        Assert.Equal(BooleanToken.True, Dictionary(paper, catalog["MarkInfo"]).Data["Marked"]);
        Assert.Equal(BooleanToken.True, Dictionary(paper, catalog["ViewerPreferences"]).Data["DisplayDocTitle"]);
        Assert.All(paper.GetPages(), page => Assert.Equal("S", Assert.IsType<NameToken>(page.Dictionary.Data["Tabs"]).Data));
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task Headings_begin_with_the_first_level_and_leave_none_out(string which)
    {
        var levels = ReadOut.Of(await Paper(which)).All.Where(part => part.Kind is ['H', >= '1' and <= '6']).Select(part => part.Kind[1] - '0').ToList();
        Assert.Equal(1, levels[0]);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.InRange(pair.Second, 1, pair.First + 1));
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task Every_table_has_heads_and_rows_of_one_width(string which)
    {
        var tables = ReadOut.Of(await Paper(which)).All.Where(part => part.Kind == "Table").ToList();
        Assert.NotEmpty(tables);
        Assert.All(tables, table =>
        {
            Assert.All(table.Parts, row => Assert.Equal("TR", row.Kind));
            Assert.All(table.Parts.SelectMany(row => row.Parts), field => Assert.True(field.Kind is "TH" or "TD", field.Kind));
            Assert.Contains(table.Parts.SelectMany(row => row.Parts), field => field is { Kind: "TH", Scope: "Column" or "Row", Words.Length: > 0 });
            Assert.Single(table.Parts.Select(row => row.Parts.Sum(field => field.Columns)).Distinct());
        });
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task Every_picture_has_words_in_its_place(string which) =>
        Assert.All(ReadOut.Of(await Paper(which)).All.Where(part => part.Kind == "Figure"), figure => Assert.False(string.IsNullOrWhiteSpace(figure.Alternative)));

    [Fact]
    public async Task The_pictures_of_a_plan_say_what_they_show()
    {
        var said = ReadOut.Of(await Paper("plan")).All.Select(part => part.Alternative).OfType<string>().ToList();
        Assert.Single(said, one => one.StartsWith("Bars: on which dates the ", StringComparison.Ordinal));
        Assert.Contains(said, one => one.StartsWith("The dates from ", StringComparison.Ordinal) && one.Contains("Work on ", StringComparison.Ordinal));
        Assert.Contains(said, one => one.StartsWith("Board ", StringComparison.Ordinal) && one.Contains(" along and ", StringComparison.Ordinal));
        Assert.Contains("Caution", said);
    }

    [Fact]
    public void Heads_and_feet_and_repeated_heads_of_tables_are_not_read_out()
    {
        Column[] columns = [Column.Fixed("Piece", 80), Column.Shared("Work")];
        var whole = ReadOut.Of(ReadBack.Flowed(new Table(columns, [.. Enumerable.Range(0, 120).Select(order => Row.Of($"rail{order}", "plane"))], TypeScale.Body)));
        Assert.DoesNotContain("Page", whole.AllWords, StringComparison.Ordinal);
        Assert.DoesNotContain("Testpiece", whole.AllWords, StringComparison.Ordinal);
        Assert.Single(whole.All, part => part.Words == "Piece");
        Assert.Equal(121, Assert.Single(whole.Parts).Parts.Count);
        Assert.Single(whole.All, part => part.Words == "rail119");
    }

    [Fact]
    public void A_paragraph_over_two_pages_is_read_as_one()
    {
        string[] words = [.. Enumerable.Range(0, 2500).Select(order => order.ToString(CultureInfo.InvariantCulture))];
        var paragraph = Assert.Single(ReadOut.Of(ReadBack.Flowed(new Paragraph(string.Join(' ', words), TypeScale.Bench))).Parts);
        Assert.Equal("P", paragraph.Kind);
        Assert.Equal(string.Concat(words), paragraph.Words);
    }

    [Fact]
    public void Parts_are_read_in_the_order_in_which_a_page_is_read()
    {
        var whole = ReadOut.Of(ReadBack.Flowed(
            new Heading("Chest", TypeScale.Title),
            new SideBySide(10, new Together(new Paragraph("left", TypeScale.Body), new Paragraph("below", TypeScale.Body)), new Paragraph("right", TypeScale.Body)),
            new Heading("To do", TypeScale.Subheading),
            new Bullets(["rip", "plane"], TypeScale.Body, ListSign.Number),
            new NoteBox("Heavy", ["Two lift it."], TypeScale.Body) { Caution = true },
            new Drawing(30, Meaning.Picture("A slab."), (page, box) => page.Text("slab", box.X, box.Bottom, TypeScale.Body)),
            new Drawing(30, Meaning.None, (page, box) => page.Text("only seen", box.X, box.Bottom, TypeScale.Body))));

        Assert.Equal(["H1", "P", "P", "P", "H2", "L", "Div", "Figure"], whole.Parts.Select(part => part.Kind));
        Assert.Equal("ChestleftbelowrightTodo1.rip2.planeHeavyTwoliftit.slab", whole.AllWords);
        Assert.Equal(["LI", "Lbl", "LBody", "LI", "Lbl", "LBody"], whole.Parts[5].All.Skip(1).Select(part => part.Kind));
        Assert.Equal(["Caution", "A slab."], whole.All.Select(part => part.Alternative).OfType<string>());
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_plan_of_a_sample_is_read_out_whole(string shop)
    {
        var file = await Sample.Of(shop).Pdf();
        using var paper = PdfDocument.Open(file);
        var whole = ReadOut.Of(file);

        // Beside heads, feet, legends and repeated heads of tables all letters are read out.
        var letters = paper.GetPages().Sum(page => page.Letters.Count(letter => letter.Value.Trim().Length > 0));
        Assert.InRange(whole.AllWords.Length / (double)letters, 0.9, 1);
        Assert.All(whole.All.Where(part => part.Kind == "Figure"), figure => Assert.False(string.IsNullOrWhiteSpace(figure.Alternative)));
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task Another_reader_finds_the_same_parts(string which)
    {
        using var folder = new FreshFolder();
        var file = folder.File("paper.pdf");
        var bytes = await Paper(which);
        await File.WriteAllBytesAsync(file, bytes, TestContext.Current.CancellationToken);
        Assert.Matches(@"Tagged:\s+yes", await Said(file));
        string[] found = [.. (await Said("-struct", file)).Split('\n').Select(line => line.Trim().Split(' ', ':')[0]).Where(kind => kind.Length > 0 && kind[0] != '/')];
        Assert.Equal(ReadOut.Of(bytes).All.Select(part => part.Kind), found);
    }

    private static async Task<byte[]> Paper(string which) => which switch
    {
        "sheet" => (await Sample.Of("evening-cupboard").Price()).Item2,
        "quote" => (await Sample.Of("evening-cupboard").Price()).Item3,
        _ => HouseStyleTests.Paper(which),
    };

    private static bool Paints(IGraphicsStateOperation operation) => operation is
        ShowText or ShowTextsWithPositioning or MoveToNextLineShowText
        or StrokePath or CloseAndStrokePath or FillPathNonZeroWinding or FillPathEvenOddRule or FillPathNonZeroWindingAndStroke or FillPathEvenOddRuleAndStroke or CloseFillPathNonZeroWindingAndStroke or CloseFillPathEvenOddRuleAndStroke;

    private static DictionaryToken Dictionary(PdfDocument paper, IToken token) =>
        Assert.IsType<DictionaryToken>(token is IndirectReferenceToken reference ? paper.Structure.GetObject(reference.Data).Data : token);

    private static async Task<string> Said(params string[] arguments)
    {
        try
        {
            using var reader = Process.Start(new ProcessStartInfo("pdfinfo", arguments) { RedirectStandardOutput = true })!;
            var said = await reader.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
            await reader.WaitForExitAsync(TestContext.Current.CancellationToken);
            Assert.Equal(0, reader.ExitCode);
            return said;
        }
        catch (Win32Exception)
        {
            Assert.Skip("pdfinfo is not installed on this machine");
            throw;
        }
    }
}
