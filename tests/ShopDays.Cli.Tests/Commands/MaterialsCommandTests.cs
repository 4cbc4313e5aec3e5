using NodaTime;
using ShopDays.Cli.Tests.Paper;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>The list for the timber yard, as a maker sees it.</summary>
public sealed class MaterialsCommandTests
{
    private static readonly Instant Now = Instant.FromUtc(2027, 3, 1, 9, 0);

    [Fact]
    public void Boards_on_hand_are_apart_from_what_is_to_be_bought()
    {
        using var folder = new FreshFolder().WithATray();
        var whole = Materials(folder).ReadJson();
        Assert.Empty(whole.List("toBuy"));
        var onHand = Assert.Single(whole.List("onHand"));
        Assert.Equal(["A"], onHand.List("boards").Select(board => board.GetString()));
        Assert.Equal(onHand.Field("inBoards").Number("cubicMetres"), onHand.Field("net").Number("cubicMetres") + onHand.Field("kept").Number("cubicMetres") + onHand.Field("lost").Number("cubicMetres"), 3e-6);

        var more = Materials(folder.WithJob("tray", ATrayShop.Job.Replace("part: side, count: 2", "part: side, count: 20", StringComparison.Ordinal))).ReadJson();
        var buy = Assert.Single(more.List("toBuy"));
        Assert.Equal("black cherry", buy.Text("species"));
        Assert.True(buy.Field("least").Number("cubicMetres") > buy.Field("net").Number("cubicMetres"));

        // A blank of 420 mm with its inch for sawing out.
        Assert.Equal(420 + 25.4, buy.Number("longestMm"), 1e-3);
        Assert.NotEmpty(buy.List("boards"));
    }

    [Fact]
    public void It_stands_in_eighty_columns()
    {
        using var folder = new FreshFolder().WithJob("tray", ATrayShop.Job.Replace("part: side, count: 2", "part: side, count: 20", StringComparison.Ordinal)).WithShop(ATrayShop.Shop);
        var told = Materials(folder, json: false);
        Assert.Equal((0, ""), (told.ExitCode, told.Error));
        Assert.All(told.Out.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
        foreach (var words in (string[])["Tray: timber to buy", "From the stack", "Glue", "Finish", "PVA, slow-set: ", "wiping varnish (thinned): "])
        {
            Assert.Contains(words, told.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void What_buying_does_not_help_is_said_and_the_answer_is_no()
    {
        using var folder = new FreshFolder().WithJob("tray", ATrayShop.Job.Replace("count: 2, size: 420 mm x 60 mm x 18 mm,", "count: 20, from: A1, size: 420 mm x 60 mm x 18 mm,", StringComparison.Ordinal).Replace("end-trim: 30 mm}", "end-trim: 30 mm, count: 2}", StringComparison.Ordinal)).WithShop(ATrayShop.Shop);
        var told = Materials(folder, json: false);
        Assert.Equal((1, ""), (told.ExitCode, told.Error));
        Assert.Contains(ReadPaper.Squeezed("more stock cannot help while it must come from A1"), ReadPaper.Squeezed(told.Out), StringComparison.Ordinal);
    }

    [Fact]
    public void The_paper_is_one_page_with_the_same_figures()
    {
        using var folder = new FreshFolder().WithATray();
        var pdf = folder.File("materials.pdf");
        Materials(folder, json: false, "--pdf", pdf);
        var page = ReadPaper.Squeezed(Assert.Single(ReadBack.Pages(File.ReadAllBytes(pdf))));
        foreach (var words in (string[])["Tray: materials", "Timber to buy", "None: every part comes out of the stock.", "From the stack", "black cherry, 25 mm", "1500 × 200 × 25 mm", "PVA, slow-set", "Got"])
        {
            Assert.Contains(ReadPaper.Squeezed(words), page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Fittings_stand_in_every_answer_with_their_count_and_what_they_are_reckoned_at()
    {
        using var folder = new FreshFolder().WithJob("tray", ATrayShop.Job + "hardware: [{hardware: cup hook, count: 6, price: 0.40 each}, {hardware: drop handle, price: 9.00 each}]\n").WithShop(ATrayShop.Shop);
        var pdf = folder.File("materials.pdf");
        var told = Materials(folder, json: false, "--pdf", pdf);
        Assert.Equal((0, ""), (told.ExitCode, told.Error));
        Assert.Contains("- 6 x cup hook, reckoned at 0.40 GBP each", told.Out, StringComparison.Ordinal);
        Assert.Contains("- 1 x drop handle, reckoned at 9.00 GBP", told.Out, StringComparison.Ordinal);
        Assert.Contains("cuphook60.40GBP", ReadPaper.Squeezed(Assert.Single(ReadBack.Pages(File.ReadAllBytes(pdf)))), StringComparison.Ordinal);
        Assert.Equal(["cup hook", "drop handle"], Materials(folder).ReadJson().List("hardware").Select(one => one.Text("name")));
    }

    private static Typed Materials(FreshFolder folder, bool json = true, params string[] options) =>
        Typed.At(Now, ["materials", folder.File("jobs", "tray.yaml"), "--effort", "quick", .. json ? (string[])["--json"] : [], .. options]);
}
