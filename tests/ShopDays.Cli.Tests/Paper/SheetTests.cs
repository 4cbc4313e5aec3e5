using System.Globalization;
using CsCheck;
using ShopDays.Cli.Paper.Setting;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;
using Xunit;

namespace ShopDays.Cli.Tests.Paper;

public sealed class SheetTests
{
    private static readonly Column[] Columns =
        [Column.Fixed("", 14), Column.Shared("Operation"), Column.Fixed("Likely", 60, Align.Right), Column.Fixed("Took", 60)];

    [Fact]
    public void Every_page_says_which_it_is_of_how_many()
    {
        var pages = ReadBack.Pages(ReadBack.Flowed(Rows(120)));

        Assert.True(pages.Length > 2);
        for (var order = 0; order < pages.Length; order++)
        {
            Assert.Contains($"Page {order + 1} of {pages.Length}", pages[order], StringComparison.Ordinal);
        }

        Assert.All(pages, page => Assert.Contains("Test piece", page, StringComparison.Ordinal));
    }

    [Fact]
    public void The_head_of_a_table_stands_once_on_every_page_of_it()
    {
        var words = ReadBack.Words(ReadBack.Flowed(Rows(120)));

        Assert.All(words, page => Assert.Single(page, "Operation"));
    }

    [Fact]
    public void Every_row_stands_whole_on_one_page() => Gen.Int[1, 60].Array[1, 60].Sample(
        lengths =>
        {
            Row[] rows = [.. lengths.Select((length, order) => EntryOf(order, length))];
            var pages = ReadBack.Words(ReadBack.Flowed(new Table(Columns, rows, TypeScale.Body)));

            for (var order = 0; order < lengths.Length; order++)
            {
                var name = Name(order);
                Assert.Equal(lengths[order], Assert.Single(pages, page => page.Contains(name)).Count(word => word == name));
            }
        },
        iter: 25);

    [Fact]
    public void A_row_taller_than_a_page_goes_on_and_loses_nothing()
    {
        var pages = ReadBack.Words(ReadBack.Flowed(new Table(Columns, [EntryOf(0, 900), EntryOf(1, 1)], TypeScale.Bench)));

        Assert.True(pages.Length > 1);
        Assert.Equal(900, pages.Sum(page => page.Count(word => word == Name(0))));
        Assert.Single(pages.SelectMany(page => page), Name(1));
    }

    [Fact]
    public void A_heading_stands_on_the_page_of_what_it_names()
    {
        for (double above = 550; above < 660; above += 5)
        {
            var words = ReadBack.Words(ReadBack.Flowed(
                new Drawing(above, Meaning.None, (_, _) => { }),
                new Heading("Overview", TypeScale.Heading),
                Rows(3)));

            var page = Assert.Single(words, page => page.Contains("Overview"));
            Assert.Contains(Name(0), page);
        }
    }

    [Fact]
    public void A_group_stands_on_the_page_of_its_first_row_and_a_total_on_that_of_its_last()
    {
        for (var count = 20; count < 50; count++)
        {
            Row[] rows =
            [
                .. Enumerable.Range(0, count).Select(order => EntryOf(order, 1)),
                new Row(RowKind.Group, "Afternoon"),
                EntryOf(count, 1),
                EntryOf(count + 1, 1),
                new Row(RowKind.Total, "", "Altogether", "12", ""),
            ];
            var pages = ReadBack.Words(ReadBack.Flowed(new Table(Columns, rows, TypeScale.Body)));

            Assert.Contains(Name(count), Assert.Single(pages, page => page.Contains("Afternoon")));
            Assert.Contains(Name(count + 1), Assert.Single(pages, page => page.Contains("Altogether")));
        }
    }

    [Fact]
    public void The_last_row_of_a_table_has_the_one_before_it_on_its_page()
    {
        for (var count = 20; count < 90; count++)
        {
            var pages = ReadBack.Words(ReadBack.Flowed(new Table(Columns, [.. Enumerable.Range(0, count).Select(order => EntryOf(order, 1))], TypeScale.Body)));
            Assert.Contains(Name(count - 2), pages[^1]);
            Assert.Contains(Name(count - 1), pages[^1]);
        }
    }

    [Fact]
    public void Blocks_kept_together_share_a_page()
    {
        for (double above = 400; above < 660; above += 20)
        {
            var words = ReadBack.Words(ReadBack.Flowed(
                new Drawing(above, Meaning.None, (_, _) => { }),
                new Together(new Paragraph("first", TypeScale.Body), new Gap(90), new NoteBox("Wait", ["last"], TypeScale.Body))));

            Assert.Contains("last", Assert.Single(words, page => page.Contains("first")));
        }
    }

    [Fact]
    public void A_paragraph_sets_all_its_words_in_order() => Gen.Char["abcdefg"].Array[1, 9].Array[1, 400].Sample(
        letters =>
        {
            string[] words = [.. letters.Select(word => new string(word))];
            var pages = ReadBack.Words(ReadBack.Flowed(new Paragraph(string.Join(' ', words), TypeScale.Bench)));

            // The reader finds words by rows; a page's head is its first three words, its foot its last seven.
            Assert.Equal(words, pages.SelectMany(page => page[3..^7]));
        },
        iter: 25);

    [Fact]
    public void Lists_and_notes_set_all_their_words()
    {
        var words = ReadBack.Words(ReadBack.Flowed(
            new Bullets(["oil stones"], TypeScale.Body),
            new Bullets(["sweep up"], TypeScale.Bench, ListSign.TickBox),
            new Bullets(["rip", "crosscut"], TypeScale.Body, ListSign.Number),
            new NoteBox("Heavy slab", ["Two people lift it."], TypeScale.Body) { Caution = true },
            new SideBySide(10, new Paragraph("left", TypeScale.Body), new Paragraph("right", TypeScale.Body)))).Single();

        string[] expected = ["•", "oil", "stones", "sweep", "up", "1.", "rip", "2.", "crosscut", "Heavy", "slab", "lift", "left", "right"];
        Assert.Empty(expected.Except(words));
    }

    [Fact]
    public void Bookmarks_lead_to_the_pages_of_their_headings()
    {
        var file = ReadBack.Flowed(
            new Heading("Days", TypeScale.Heading) { BookmarkLevel = 0 },
            Rows(60),
            new Heading("Saturday", TypeScale.Subheading) { BookmarkLevel = 1 },
            Rows(3),
            new Heading("Cut list", TypeScale.Heading) { BookmarkLevel = 0 },
            Rows(3));

        using var document = PdfDocument.Open(file);
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        var nodes = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().ToList();
        Assert.Equal([("Days", 0), ("Saturday", 1), ("Cut list", 0)], nodes.Select(node => (node.Title, node.Level)));
        var words = ReadBack.Words(file);
        Assert.All(nodes, node => Assert.Contains(node.Title.Split(' ')[0], words[node.PageNumber - 1]));
    }

    [Fact]
    public void The_file_says_what_it_is()
    {
        using var document = PdfDocument.Open(ReadBack.Flowed(Rows(1)));

        Assert.Equal("Test piece", document.Information.Title);
        Assert.Equal("Plan", document.Information.Subject);
        Assert.Equal("ShopDays", document.Information.Creator);
        Assert.StartsWith("D:20270301070000", document.Information.CreationDate, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_page_is_not_followed_by_another()
    {
        using var book = new Book(ReadBack.Imprint);
        var sheet = new Sheet(book, PaperSize.A4, Margins.Usual, new Dress("a", "b", "c"));
        sheet.NewPage(new Dress("chest", "b", "c"));
        sheet.Add(new Gap(30), new Paragraph("text", TypeScale.Body));
        sheet.NewPage(paper: PaperSize.A4.Turned());
        sheet.Finish();

        var file = book.ToBytes();
        using var document = PdfDocument.Open(file);
        Assert.Equal([false, true], document.GetPages().Select(page => page.Width > page.Height));
        Assert.Contains("chest", ReadBack.Words(file)[0]);
    }

    [Fact]
    public void The_same_blocks_give_the_same_bytes() =>
        Assert.Equal(ReadBack.Flowed(new Heading("Days", TypeScale.Heading), Rows(50)), ReadBack.Flowed(new Heading("Days", TypeScale.Heading), Rows(50)));

    private static Table Rows(int count) =>
        new(Columns, [.. Enumerable.Range(0, count).Select(order => EntryOf(order, 1 + (order % 5 * 6)))], TypeScale.Body);

    private static Row EntryOf(int order, int length) => Row.Of(
        new TickCell(),
        new TextCell(string.Join(' ', Enumerable.Repeat(Name(order), length))) { Note = length % 3 == 0 ? "with care" : null },
        order.ToString(CultureInfo.InvariantCulture),
        new PencilCell());

    private static string Name(int order) => string.Create(CultureInfo.InvariantCulture, $"piece{order}");
}
