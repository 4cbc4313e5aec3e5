using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>What is told beside the answer: hours without use, spares that are missing, clamps, dates that cannot be kept.</summary>
public sealed class ToldTests
{
    [Fact]
    public async Task Hours_that_cannot_be_used_are_told_with_their_dates_and_the_reason()
    {
        using var folder = new FreshFolder()
            .WithShop(ATrayShop.Shop.Replace("  thursday", "  tuesday: [\"18:00-18:40\"]\n  thursday", StringComparison.Ordinal))
            .WithJob("tray", ATrayShop.Job);
        var hours = Assert.Single((await Ran.In(folder.Path, "plan", "tray", "--json")).ReadJson().List("unusedHours"));
        Assert.Equal(("18:00-18:40", "tooShort", "2027-03-02"), (hours.Text("hours"), hours.Text("reason"), hours.Text("first")));
        foreach (var command in (string[])["check", "plan"])
        {
            var text = (await Ran.In(folder.Path, command, "tray")).Out.Replace("\n  ", " ", StringComparison.Ordinal);
            Assert.Contains("Hours that cannot be used:\n- Tuesday 18:00-18:40, from 2 Mar 2027 to ", text, StringComparison.Ordinal);
            Assert.Contains("less than 45 min ('least-session') is left", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_spare_that_no_board_yields_is_told_with_the_plan()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop)
            .WithJob("tray", ATrayShop.Job.Replace("size: 420 mm x 60 mm x 18 mm,", "spare: 9, size: 420 mm x 60 mm x 18 mm,", StringComparison.Ordinal));
        var ran = await Ran.In(folder.Path, "plan", "tray");
        Assert.Equal(0, ran.ExitCode);
        Assert.Contains("No board yields side ", ran.Out, StringComparison.Ordinal);
        Assert.Contains("only the spare", ran.Out, StringComparison.Ordinal);
        var spares = (await Ran.In(folder.Path, "plan", "tray", "--json")).ReadJson().List("missingSpares");
        Assert.NotEmpty(spares);
        Assert.All(spares, spare => Assert.True(spare.YesOrNo("isSpare")));
    }

    [Fact]
    public async Task Check_tells_of_too_few_clamps()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop.Replace("count: 6", "count: 3", StringComparison.Ordinal)).WithJob("tray", ATrayShop.Job);
        foreach (var command in (string[])["check", "plan"])
        {
            var ran = await Ran.In(folder.Path, command, "tray");
            Assert.Contains("glue up: frame: it takes 4 clamps of 600 mm or longer, and the shop has 3; 1 more clamp of 600 mm under 'clamps' in shop.yaml", (ran.Out + ran.Error).Replace("\n  ", " ", StringComparison.Ordinal).Replace('\n', ' '), StringComparison.Ordinal);
        }

        Assert.Equal(4, Assert.Single((await Ran.In(folder.Path, "check", "tray", "--json")).ReadJson().List("clampsMissing")).Number("needed"));
    }

    [Fact]
    public async Task A_due_date_before_any_plan_could_end_is_said_to_be_lost()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop).WithJob("tray", ATrayShop.Job.Replace("due: 2027-04-30", "due: 2027-03-02", StringComparison.Ordinal));
        var said = (await Ran.In(folder.Path, "plan", "tray")).Out.Split('\n').ToList();
        var row = said.FindIndex(line => line.StartsWith("due ", StringComparison.Ordinal));
        Assert.EndsWith("Tue 2 Mar 2027: cannot be kept", said[row].TrimEnd(), StringComparison.Ordinal);
        Assert.StartsWith("The due date cannot be kept: no plan could end before ", said[row + 1], StringComparison.Ordinal);
        Assert.Single(said, line => line.Contains("due date cannot be kept", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_start_in_the_past_is_said()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop).WithJob("tray", ATrayShop.Job.Replace("2027-03-01", "2021-03-01", StringComparison.Ordinal));
        Assert.Contains("it should have begun on", (await Ran.In(folder.Path, "plan", "tray")).Out, StringComparison.Ordinal);
        Assert.Contains("The start, Mon 1 Mar 2021, is past", (await Ran.In(folder.Path, "plan", "tray", "--whole")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_job_in_millimetres_is_told_in_metres()
    {
        using var folder = new FreshFolder().WithATray();
        Assert.Matches(@"\d m of rip and straightening, \d\.\d m of crosscut", (await Ran.In(folder.Path, "layout", "tray")).Out);
        Assert.DoesNotContain(" ft", (await Ran.In(folder.Path, "estimate", "tray")).Out, StringComparison.Ordinal);
    }
}
