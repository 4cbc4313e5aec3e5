using System.Globalization;
using System.Text.Json;
using ShopDays.Cli.Tests.Files;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>What <c>layout --json</c> promises to other programs, on the samples.</summary>
public sealed class LayoutAnswerTests
{
    private static readonly string[] Kinds = ["rip", "crosscut", "resaw", "straighten"];

    public static TheoryData<string> Shops => Sample.Shops;

    // Counted by hand in the job files.
    public static TheoryData<string, int> Pieces => new() { { "elm-workbench", 17 }, { "evening-cupboard", 11 }, { "tidewater-commission", 17 } };

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Every_promised_field_is_there(string shop)
    {
        var layout = await Layout(shop);
        Assert.True(layout.YesOrNo("fits"));
        Assert.Empty(layout.List("unplaced"));
        Assert.Equal(layout.List("boards").Count, layout.Number("boardsUsed"));
        Assert.InRange(layout.Number("yield"), 0, layout.Number("bound"));
        Assert.InRange(layout.Number("bound"), 0, 1);
        Assert.True(layout.Number("sawingMinutes") > 0);
        Assert.All(layout.List("boards"), board =>
        {
            Assert.NotEmpty(board.Text("board"));
            Assert.NotEmpty(board.List("pieces"));
            Assert.All(board.List("pieces"), piece => Assert.NotEmpty(piece.Text("part")));
            Assert.All(board.List("cuts"), cut => Assert.Contains(cut.Text("kind"), Kinds));
            Assert.All(board.List("offcuts"), offcut => Assert.True(offcut.Place().Area > 0));
        });
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public async Task Every_number_of_every_part_comes_out_exactly_once(string shop, int pieces)
    {
        var layout = await Layout(shop);
        var wanted = (await Sample.Of(shop).Run("check --json")).ReadJson().List("parts");
        var placed = layout.List("boards").SelectMany(board => board.List("pieces"))
            .GroupBy(piece => (Part: piece.Text("part"), Number: piece.Number("number")))
            .ToList();

        Assert.Equal(pieces, placed.Count);
        Assert.Equal(
            wanted.SelectMany(part => Enumerable.Range(1, (int)part.Number("count")).Select(number => (part.Text("part"), (double)number))).Order(),
            placed.Select(piece => piece.Key).Order());

        // A panel is there once when each of its strips is there once; what is no panel has none.
        Assert.All(placed, piece =>
        {
            var strips = (int)piece.First().Number("strips");
            Assert.Equal(strips == 0 ? [0.0] : [.. Enumerable.Range(1, strips).Select(strip => (double)strip)], piece.Select(one => one.Number("strip")).Order());
        });
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Pieces_and_offcuts_lie_inside_their_board_and_apart_from_each_other(string shop)
    {
        foreach (var board in (await Layout(shop)).List("boards"))
        {
            var whole = new Region(0, 0, board.Number("lengthMm"), board.Number("widthMm"));

            // Pieces resawn from one blank lie one above the other, in layers.
            var pieces = board.List("pieces").GroupBy(piece => piece.Number("layer")).ToDictionary(layer => layer.Key, layer => layer.Select(Answers.Place).ToList());
            var offcuts = board.List("offcuts").Select(Answers.Place).ToList();
            Assert.All(pieces.Values.SelectMany(one => one).Concat(offcuts), one => Assert.True(one.LiesIn(whole), $"{one} is outside {whole}"));
            Assert.All(pieces.Values, layer =>
            {
                var all = layer.Concat(offcuts).ToList();
                for (var one = 0; one < all.Count; one++)
                {
                    Assert.All(all[(one + 1)..], other => Assert.False(all[one].Overlaps(other), $"{all[one]} and {other}"));
                }
            });
        }
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Cuts_go_right_across_what_they_cut_and_are_numbered_in_order(string shop)
    {
        foreach (var board in (await Layout(shop)).List("boards"))
        {
            Assert.Equal(Enumerable.Range(1, board.List("cuts").Count).Select(order => (double)order), board.List("cuts").Select(cut => cut.Number("order")));
            Assert.All(board.List("cuts"), cut =>
            {
                var side = cut.Text("kind") == "crosscut" ? cut.Field("of").Number("widthMm") : cut.Field("of").Number("lengthMm");
                Assert.Equal(side, cut.Number("lengthMm"), Region.Rounding);
            });
        }
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_feet_of_sawing_are_those_of_the_cuts(string shop)
    {
        var layout = await Layout(shop);
        var cuts = layout.List("boards").SelectMany(board => board.List("cuts")).ToList();
        double Feet(params string[] kinds) => cuts.Where(cut => kinds.Contains(cut.Text("kind"))).Sum(cut => cut.Number("lengthMm")) / 304.8;

        // Each cut is rounded to a ten-thousandth of a millimetre, the sum to a ten-thousandth of a foot.
        Assert.Equal(Feet("rip", "straighten"), layout.Number("ripFeet"), 0.0002);
        Assert.Equal(Feet("crosscut"), layout.Number("crosscutFeet"), 0.0002);
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_yield_is_the_share_of_the_boards_that_lies_in_blanks(string shop)
    {
        var boards = (await Layout(shop)).List("boards");
        var blanks = boards.SelectMany(board => board.List("pieces")).Where(piece => piece.Number("layer") == 0).Sum(piece => piece.Place().Area);
        var all = boards.Sum(board => board.Number("lengthMm") * board.Number("widthMm"));

        // Rounded sides of a few hundred millimetres leave nine digits of an area.
        Assert.Equal(blanks / all, (await Layout(shop)).Number("yield"), 1e-6);
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_parts_of_the_cost_add_up_to_the_last_digit(string shop)
    {
        var cost = (await Layout(shop)).Field("cost");
        decimal Money(JsonElement from, string name) => decimal.Parse(from.Text(name), NumberStyles.Number, CultureInfo.InvariantCulture);
        Assert.Equal(Money(cost, "timber") - Money(cost, "offcuts") + Money(cost, "work"), Money(cost, "total"));
        var work = cost.Field("workOn");
        Assert.Equal(Money(work, "sawing") + Money(work, "planingDown") + Money(work, "glueEdges"), Money(cost, "work"));

        // Of the samples each board bears a price and each shop gives its rate, in currencies with cents.
        Assert.All(["timber", "offcuts", "work", "total"], name => Assert.Equal(2, cost.Text(name).Split('.')[1].Length));
        Assert.False(cost.YesOrNo("hourIsAssumed"));
        Assert.Equal(JsonValueKind.Null, cost.Field("assumedPerBoardFoot").ValueKind);
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_printed_cost_is_that_of_the_answer_for_other_programs(string shop)
    {
        var printed = (await Sample.Of(shop).Run("layout")).Out;
        var layout = await Layout(shop);
        var cost = layout.Field("cost");
        Assert.All(["timber", "total"], name => Assert.Contains(Sum(name), printed, StringComparison.Ordinal));
        var bound = layout.YesOrNo("proven") ? "proven to be the best of any layout of these blanks" : "no layout of these blanks could exceed";
        Assert.Contains(bound, printed.ReplaceLineEndings(" "), StringComparison.Ordinal);
        var least = cost.YesOrNo("proven") ? "no layout of these blanks could cost less" : $"could cost less than {Sum("least")}";
        Assert.Contains(least, printed.ReplaceLineEndings(" "), StringComparison.Ordinal);

        string Sum(string name) => $"{decimal.Parse(cost.Text(name), CultureInfo.InvariantCulture).ToString("N2", CultureInfo.InvariantCulture)} {cost.Text("currency")}";
    }

    [Fact]
    public async Task A_preference_is_said_and_another_word_is_wrong_use()
    {
        var shop = Repository.Folder("sample-projects", "evening-cupboard");
        var ran = await Ran.In(shop, "layout", "wall-cupboard", "--effort", "quick", "--prefer", "sawing");
        Assert.Equal(0, ran.ExitCode);
        Assert.Contains("Laid out to spare sawing", ran.Out, StringComparison.Ordinal);
        Assert.Equal(2, (await Ran.In(shop, "layout", "wall-cupboard", "--prefer", "gold")).ExitCode);
    }

    private static async Task<JsonElement> Layout(string shop) => (await Sample.Of(shop).Run("layout --json")).ReadJson();
}
