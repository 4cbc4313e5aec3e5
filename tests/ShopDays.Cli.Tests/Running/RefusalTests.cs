using System.Globalization;
using System.Text.RegularExpressions;
using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>When the answer is no: the exit code is 1, and the error stream says why and what would do.</summary>
public sealed class RefusalTests
{
    [Theory]
    [InlineData("layout")]
    [InlineData("plan")]
    public async Task All_mistakes_of_all_files_are_told_at_once_at_their_places(string command)
    {
        using var folder = new FreshFolder()
            .WithShop(ATrayShop.Shop.Replace("currency: GBP", "currency: pounds", StringComparison.Ordinal))
            .WithJob("tray", ATrayShop.Job.Replace("black cherry", "black chery", StringComparison.Ordinal).Replace("coats: 2", "coats: none", StringComparison.Ordinal));
        var ran = await Ran.In(folder.Path, command, "tray");
        Assert.Equal((1, ""), (ran.ExitCode, ran.Out));
        Assert.Collection(
            ran.Complaints,
            line => Assert.StartsWith("shop.yaml:4:11: ", line, StringComparison.Ordinal),
            line => Assert.StartsWith("jobs/tray.yaml:5:25: ", line, StringComparison.Ordinal),
            line => Assert.StartsWith("jobs/tray.yaml:14:50: ", line, StringComparison.Ordinal),
            line => Assert.Equal("3 mistakes; nothing was worked out or written", line));
        Assert.EndsWith("nearest: black cherry", ran.Complaints[1], StringComparison.Ordinal);

        var json = await Ran.In(folder.Path, command, "tray", "--json");
        Assert.Equal(1, json.ExitCode);
        Assert.Equal(
            [("shop.yaml", 4, 11), ("jobs/tray.yaml", 5, 25), ("jobs/tray.yaml", 14, 50)],
            json.ReadJson().List("mistakes").Select(one => (one.Text("file"), one.Number("line"), one.Number("column"))));
    }

    [Fact]
    public async Task Check_tells_the_mistakes_as_its_answer()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop).WithJob("tray", ATrayShop.Job.Replace("coats: 2", "coats: none", StringComparison.Ordinal));
        var ran = await Ran.In(folder.Path, "check", "tray");
        Assert.Equal((1, ""), (ran.ExitCode, ran.Error));
        Assert.StartsWith("jobs/tray.yaml:14:50: ", ran.Out, StringComparison.Ordinal);
        Assert.EndsWith("\n1 mistake\n", ran.Out, StringComparison.Ordinal);

        var json = await Ran.In(folder.Path, "check", "tray", "--json");
        Assert.Equal(1, json.ExitCode);
        var mistake = Assert.Single(json.ReadJson().List("mistakes"));
        Assert.Equal(("jobs/tray.yaml", 14, 50), (mistake.Text("file"), mistake.Number("line"), mistake.Number("column")));
    }

    [Fact]
    public async Task Stock_that_does_not_yield_every_part_says_which_and_how_much_more()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop)
            .WithJob("tray", ATrayShop.Job.Replace("part: side, count: 2", "part: side, count: 9", StringComparison.Ordinal));

        var layout = await Ran.In(folder.Path, "layout", "tray", "--json");
        Assert.Equal((1, false), (layout.ExitCode, layout.ReadJson().YesOrNo("fits")));
        var placed = layout.ReadJson().List("boards").SelectMany(board => board.List("pieces")).Select(piece => (piece.Text("part"), piece.Number("number")));
        var leftOver = layout.ReadJson().List("unplaced").Select(piece => (piece.Text("part"), piece.Number("number")));
        var all = Enumerable.Range(1, 9).Select(number => ("side", (double)number)).Concat([("end", 1), ("end", 2)]);
        Assert.Equal(all.Order(), placed.Concat(leftOver).Order());
        Assert.NotEmpty(leftOver);
        Assert.True(Assert.Single(layout.ReadJson().List("wanted")).Number("boardFeet") > 0);

        var plan = await Ran.In(folder.Path, "plan", "tray", "--pdf", "tray.pdf");
        Assert.Equal((1, ""), (plan.ExitCode, plan.Out));
        Assert.Contains("Left over:\n- end ", plan.Error, StringComparison.Ordinal);
        Assert.Contains("The least extra stock that would do, in sizes that a yard sells:\n- 1 more ", plan.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder.File("tray.pdf")));

        var json = await Ran.In(folder.Path, "plan", "tray", "--json");
        Assert.Equal((1, false), (json.ExitCode, json.ReadJson().YesOrNo("fits")));
        Assert.Equal(leftOver, json.ReadJson().List("unplaced").Select(piece => (piece.Text("part"), piece.Number("number"))));
        Assert.NotEmpty(json.ReadJson().List("wanted"));
    }

    [Fact]
    public async Task A_glue_up_longer_than_every_session_is_named_with_the_limit_and_the_cure()
    {
        using var folder = new FreshFolder().WithATray()
            .WithShop(ATrayShop.Shop.Replace("""["09:00-12:30", "13:15-17:00"]""", """["09:00-09:50"]""", StringComparison.Ordinal).Replace("""["09:00-12:30"]""", """["09:00-09:50"]""", StringComparison.Ordinal) + "least-session: 15m\n");
        var ran = await Ran.In(folder.Path, "plan", "tray");
        Assert.Equal((1, ""), (ran.ExitCode, ran.Out));
        Assert.Equal("Tray cannot be planned:", ran.Complaints[0]);
        var text = ran.Error.Replace("\n  ", " ", StringComparison.Ordinal);
        Assert.Matches(@"- glue up: frame: it takes \d\d min in one go, and the longest session has 25 min of work; (hours from 09:00 to \d\d:\d[05] on \w+days, \d+ min more|what would do for [^;]+ is enough)", text);
        Assert.Matches(@"; hours from 09:00 to \d\d:\d[05] on \w+days, ", text);

        var json = (await Ran.In(folder.Path, "plan", "tray", "--json")).ReadJson().List("cannotBePlanned");
        Assert.Contains(json, one => one.Text("task") == "glue up: frame" && one.Text("limit").Length > 0 && one.Text("cure").Length > 0);
    }

    [Fact]
    public async Task Sessions_too_short_to_be_used_are_to_be_longer_by_no_more_than_it_takes()
    {
        // Runs of like pieces are shorter in short sessions: they do not ask for long ones.
        using var folder = new FreshFolder().WithATray();
        var asked = Regex.Match((await PlannedUntil("09:00")).Error.Replace("\n  ", " ", StringComparison.Ordinal), @"hours from 08:00 to (\d\d):(\d\d) on Mondays, (\d+) min more");
        Assert.True(asked.Success);
        var minute = (60 * Number(1)) + Number(2);
        Assert.Equal(Number(3), minute - (9 * 60));
        Assert.Equal(0, (await PlannedUntil(At(minute))).ExitCode);
        Assert.Equal(0, minute % 5);
        Assert.Equal(1, (await PlannedUntil(At(minute - 5))).ExitCode);

        int Number(int group) => int.Parse(asked.Groups[group].Value, CultureInfo.InvariantCulture);

        static string At(int minute) => FormattableString.Invariant($"{minute / 60:00}:{minute % 60:00}");

        Task<Ran> PlannedUntil(string end) => Ran.In(
            folder.WithShop(ATrayShop.Shop
                .Replace("""["09:00-12:30", "13:15-17:00"]""", $"""["08:00-{end}"]""", StringComparison.Ordinal)
                .Replace("""["09:00-12:30"]""", """["12:00-13:00"]""", StringComparison.Ordinal)).Path,
            "plan",
            "tray");
    }

    [Fact]
    public async Task An_order_of_work_that_goes_round_names_all_that_is_in_it()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop).WithJob("tray", ATrayShop.Job + """
            work:
              - {task: line the tray, minutes: 20, after: screw on the feet}
              - {task: screw on the feet, minutes: 15, after: line the tray}

            """);
        var ran = await Ran.In(folder.Path, "plan", "tray");
        Assert.Equal((1, ""), (ran.ExitCode, ran.Out));
        Assert.Matches(@"jobs/tray\.yaml:1[67]:\d+: .*goes round: .*line the tray", ran.Error);
        Assert.Contains("screw on the feet", ran.Error, StringComparison.Ordinal);

        // Where the order of the file itself goes round it is a mistake at its place, for other programs too.
        var json = await Ran.In(folder.Path, "plan", "tray", "--json");
        Assert.Contains("line the tray", Assert.Single(json.ReadJson().List("mistakes")).Text("what"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Paper_of_an_earlier_plan_stays_when_there_is_no_new_one()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop)
            .WithJob("tray", ATrayShop.Job.Replace("count: 2", "count: two", StringComparison.Ordinal))
            .With("tray.pdf", "the paper of last week");
        Assert.Equal(1, (await Ran.In(folder.Path, "plan", "tray", "--pdf", "tray.pdf")).ExitCode);
        Assert.Equal("the paper of last week", await File.ReadAllTextAsync(folder.File("tray.pdf"), TestContext.Current.CancellationToken));
        Assert.Equal(3, folder.Everything().Count);
    }
}
