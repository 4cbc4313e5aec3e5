using ShopDays.Cli.Terminal;
using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>What is printed: how wide, how plain, how much, and the same everywhere.</summary>
public sealed class OutputTests
{
    private static readonly string[] Commands = ["check", "layout", "estimate", "plan"];

    public static TheoryData<string> Shops => Sample.Shops;

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task No_line_is_wider_than_a_usual_terminal_and_none_has_a_code_for_colours(string shop)
    {
        foreach (var command in Commands)
        {
            var printed = await Sample.Of(shop).Run(command);
            Assert.All(printed.Out.Split('\n'), line => Assert.True(line.Length <= Screen.UsualWidth, $"{command}: {line.Length} columns: {line}"));
            Assert.DoesNotContain('\u001b', printed.Out);
        }
    }

    [Fact]
    public void Help_in_a_pipe_is_no_wider_either()
    {
        foreach (var command in (string[][])[[], ["new"], ["check"], ["layout"], ["estimate"], ["plan"], ["progress"], ["orders"], ["trial"]])
        {
            var help = Typed.Run([.. command, "--help"]);
            Assert.Equal(0, help.ExitCode);
            Assert.Contains("--help", help.Out, StringComparison.Ordinal);
            Assert.All(help.Out.Split('\n'), line => Assert.InRange(line.Length, 0, Screen.UsualWidth));
        }
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_plan_names_every_day_and_every_task(string shop)
    {
        var printed = ReadPaper.Squeezed((await Sample.Of(shop).Run("plan")).Out);
        foreach (var session in (await Sample.Of(shop).Plan()).ReadJson().List("sessions"))
        {
            Assert.Contains(ReadPaper.Squeezed(session.Time("start").ToString("ddd d MMM yyyy", System.Globalization.CultureInfo.InvariantCulture)), printed, StringComparison.Ordinal);
            Assert.All(session.List("tasks"), work => Assert.Contains(ReadPaper.Squeezed(work.Text("task")), printed, StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_layout_names_every_piece_and_every_board(string shop)
    {
        var printed = ReadPaper.Squeezed((await Sample.Of(shop).Run("layout")).Out);
        foreach (var board in (await Sample.Of(shop).Run("layout --json")).ReadJson().List("boards"))
        {
            Assert.Contains(ReadPaper.Squeezed(board.Text("board") + board.Text("species")), printed, StringComparison.Ordinal);
            Assert.All(board.List("pieces"), piece => Assert.Contains(ReadPaper.Squeezed(piece.Text("part")), printed, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("check")]
    [InlineData("layout")]
    [InlineData("estimate", "--json")]
    public async Task Quiet_prints_nothing_when_all_is_well(string command, params string[] more)
    {
        using var folder = new FreshFolder().WithATray();
        Assert.Equal(new Ran(0, "", ""), await Ran.In(folder.Path, [command, "tray", "-q", .. more]));
    }

    [Fact]
    public async Task Quiet_still_writes_the_paper_in_place_of_the_old_one_and_still_complains()
    {
        using var folder = new FreshFolder().WithATray().With("tray.pdf", "the paper of last week").WithJob("wrong", ATrayShop.Job.Replace("count: 2", "count: two", StringComparison.Ordinal));
        Assert.Equal(new Ran(0, "", ""), await Ran.In(folder.Path, "plan", "tray", "--quiet", "--pdf", "tray.pdf"));
        Assert.StartsWith("%PDF-", await File.ReadAllTextAsync(folder.File("tray.pdf"), TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(4, folder.Everything().Count);

        foreach (var command in new[] { "check", "layout" })
        {
            var wrong = await Ran.In(folder.Path, command, "wrong", "-q");
            Assert.Equal((1, ""), (wrong.ExitCode, wrong.Out));
            Assert.Contains("jobs/wrong.yaml:", wrong.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Verbose_tells_the_steps_on_the_error_stream_and_changes_no_answer()
    {
        using var folder = new FreshFolder().WithATray();
        var told = await Ran.In(folder.Path, "estimate", "tray", "-v", "--json");
        Assert.Equal(0, told.ExitCode);
        Assert.Contains(told.Complaints, line => line == "laying out 4 parts on 1 board");
        Assert.Contains(told.Complaints, line => line.StartsWith("drawing 2000 courses of ", StringComparison.Ordinal));
        Assert.Equal(told.Out, (await Ran.In(folder.Path, "estimate", "tray", "--json")).WentWell().Out);
    }

    [Theory]
    [InlineData("estimate", "--json")]
    [InlineData("check")]
    public async Task Where_a_comma_stands_for_the_point_nothing_changes(string command, params string[] more)
    {
        using var folder = new FreshFolder().WithATray();
        var german = new Dictionary<string, string> { ["LC_ALL"] = "de_DE.UTF-8", ["LANG"] = "de_DE.UTF-8" };
        var plain = (await Ran.In(folder.Path, [command, "tray", .. more])).WentWell();
        Assert.Equal(plain, await Ran.In(folder.Path, german, [command, "tray", .. more]));
    }

    [Fact]
    public async Task The_same_seed_gives_the_same_bytes_and_another_seed_other_draws()
    {
        using var folder = new FreshFolder().WithATray();
        var first = (await Ran.In(folder.Path, "plan", "tray", "--json", "--seed", "7")).WentWell();
        var again = (await Ran.In(folder.Path, "plan", "tray", "--seed", "7", "--json")).WentWell();
        var other = (await Ran.In(folder.Path, "plan", "tray", "--json", "--seed", "8")).WentWell();
        Assert.Equal(first.Out, again.Out);
        Assert.Equal(8, other.ReadJson().Number("seed"));
        Assert.NotEqual(first.Out, other.Out);
    }

    [Theory]
    [InlineData("new")]
    [InlineData("check")]
    [InlineData("layout")]
    [InlineData("estimate")]
    [InlineData("plan")]
    public async Task The_help_of_a_command_has_an_example(string command)
    {
        using var folder = new FreshFolder();
        var help = (await Ran.In(folder.Path, command, "--help")).WentWell();
        Assert.Contains($"Example: shopdays {command} ", help.Out, StringComparison.Ordinal);
        Assert.Empty(folder.Everything());
    }
}
