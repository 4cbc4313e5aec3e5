using System.Globalization;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using ShopDays.Cli.Paper.Boards;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Paper.Svg;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Cli.Tests.Paper;

public sealed class BoardDrawingsTests
{
    private static readonly LengthFormat Format = LengthFormat.Inches(16);
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Every_board_that_is_cut_has_a_drawing_of_its_own_name()
    {
        var layout = ALayout.Of(APlan.Parts(12), number => ALayout.Board(number));
        Assert.True(layout.Boards.Count > 1);
        Assert.Equal(layout.Boards.Select(board => $"board-{board.Board.Name}.svg"), Drawings(layout).Select(drawing => drawing.Name));
    }

    [Fact]
    public void A_drawing_is_well_formed_whatever_its_names_hold()
    {
        var root = Read(Named("<b>&\"'\u0007\ud800 ]]> é", "<b>&\"'\u0007\uffff"));
        Assert.Equal(Svg + "svg", root.Name);
        Assert.Contains("<b>&\"'", root.Element(Svg + "title")!.Value, StringComparison.Ordinal);
        Assert.Contains("<b>&\"'", root.Element(Svg + "desc")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_in_a_drawing_runs_or_comes_from_elsewhere()
    {
        var root = Read(ALayout.Of(APlan.Parts(5), number => ALayout.Board(number, BoardEdges.Live)));
        string[] allowed = ["svg", "title", "desc", "defs", "pattern", "rect", "path", "polygon", "circle", "g", "text"];
        Assert.All(root.DescendantsAndSelf(), element => Assert.Contains(element.Name.LocalName, allowed));
        Assert.All(root.DescendantsAndSelf().Attributes().Where(attribute => !attribute.IsNamespaceDeclaration), attribute =>
        {
            Assert.False(attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
            Assert.DoesNotContain("href", attribute.Name.LocalName, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("//", attribute.Value, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Every_filling_that_is_named_is_there_and_every_colour_is_a_grey()
    {
        var root = Read(ALayout.Of(APlan.Parts(5), number => ALayout.Board(number)));
        var ids = root.Descendants().Attributes("id").Select(id => id.Value).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        var paints = root.Descendants().Attributes().Where(attribute => attribute.Name.LocalName is "fill" or "stroke").Select(attribute => attribute.Value).Distinct().ToList();
        Assert.Contains(paints, paint => paint.StartsWith("url(#", StringComparison.Ordinal));
        Assert.All(paints, paint => Assert.True(
            paint == "none"
            || (paint.StartsWith("url(#", StringComparison.Ordinal) && ids.Contains(paint[5..^1]))
            || (paint[1..3] == paint[3..5] && paint[3..5] == paint[5..7]), paint));
        Assert.All(root.Attribute("aria-labelledby")!.Value.Split(' '), id => Assert.Contains(id, ids));
    }

    [Fact]
    public void A_drawing_is_to_scale_and_inside_its_frame()
    {
        var layout = ALayout.Of(APlan.Parts(5), number => ALayout.Board(number, BoardEdges.Straight));
        var root = Read(layout);
        var frame = root.Attribute("viewBox")!.Value.Split(' ').Select(Number).ToArray();
        var blank = layout.Boards[0].Blanks[0].Region;
        var shape = blank.Length / blank.Width;

        // Drawn to a hundredth of a point, and a blank is some tens of points wide.
        Assert.Contains(root.Descendants(Svg + "rect"), rect => rect.Attribute("x") is not null && Math.Abs((Number(rect, "width") / Number(rect, "height")) - shape) < shape * 0.01);
        Assert.All(root.Descendants(Svg + "rect").Where(rect => rect.Attribute("x") is not null), rect =>
            Assert.True(Number(rect, "x") >= 0 && Number(rect, "x") + Number(rect, "width") <= frame[2]));
        Assert.All(root.Descendants(Svg + "text").Where(text => text.Attribute("transform") is null && text.Attribute("text-anchor")!.Value == "start"), text =>
            Assert.True(Number(text, "x") + Number(text, "textLength") <= frame[2], text.Value));
    }

    [Fact]
    public void A_drawing_says_every_part_and_every_cut_in_words()
    {
        var layout = ALayout.Of(APlan.Parts(7), number => ALayout.Board(number));
        var root = Read(layout);
        var texts = string.Join('\n', root.Descendants(Svg + "text").Select(text => text.Value));
        Assert.All(layout.Boards[0].Blanks, placed => Assert.Contains(placed.Blank.Label, texts, StringComparison.Ordinal));
        Assert.All(layout.Boards[0].Cuts, cut => Assert.Contains($"Cut {cut.Order.ToString(CultureInfo.InvariantCulture)}: ", root.Element(Svg + "desc")!.Value, StringComparison.Ordinal));
        Assert.Contains(Format.Write(layout.Boards[0].Board.Length), texts, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../../etc/passwd", "board-etc-passwd.svg")]
    [InlineData("A/1", "board-A-1.svg")]
    [InlineData("..", "board.svg")]
    [InlineData("con", "board-con.svg")]
    [InlineData("Brett Ü \"3\"", "board-Brett-3.svg")]
    public void A_name_is_made_safe_for_a_file(string board, string file) =>
        Assert.Equal(file, Assert.Single(Drawings(Named(board, "shelf"))).Name);

    [Fact]
    public void Boards_whose_names_are_alike_on_a_disk_get_different_files()
    {
        string[] names = ["a/1", "A 1", "a-1"];
        var layout = ALayout.Of(APlan.Parts(14), number => ALayout.Board(number) with { Name = names[(number - 1) % 3] });
        Assert.Equal(["board-a-1.svg", "board-A-1-2.svg", "board-a-1-3.svg"], Drawings(layout).Take(3).Select(drawing => drawing.Name));
    }

    [Fact]
    public void What_is_drawn_on_paper_is_what_is_drawn_in_the_file()
    {
        var layout = ALayout.Of(APlan.Parts(3), number => ALayout.Board(number)).Boards[0];
        var picture = new BoardPicture(layout, Format, new Allowances().Kerf, 388, 220).Drawn();
        var root = Read(ALayout.Of(APlan.Parts(3), number => ALayout.Board(number)));
        var written = root.Descendants(Svg + "text").Select(text => text.Value).ToList();
        Assert.All(picture.Drawn.OfType<Drawn.Text>(), text => Assert.Contains(text.Words, written));
        Assert.Equal(picture.Drawn.OfType<Drawn.Disc>().Count(), root.Descendants(Svg + "circle").Count());
    }

    private static Layout Named(string board, string part) =>
        ALayout.Of([ALayout.Part(part, 20, 5, 0.75) with { Count = 1 }], number => ALayout.Board(number) with { Name = board });

    private static IReadOnlyList<(string Name, byte[] Drawing)> Drawings(Layout layout) => BoardDrawings.Of(layout, new Allowances(), Format);

    private static XElement Read(Layout layout)
    {
        using var reader = XmlReader.Create(new StringReader(Encoding.UTF8.GetString(Drawings(layout)[0].Drawing)), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit });
        return XDocument.Load(reader).Root!;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static double Number(XElement element, string attribute) => Number(element.Attribute(attribute)!.Value);
}
