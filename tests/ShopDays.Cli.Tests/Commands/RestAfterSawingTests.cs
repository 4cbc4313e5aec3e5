using System.Text.Json;
using NodaTime;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>What is sawn rests before it is planed, whether its sawing is a task of the job or is written down as done.</summary>
public sealed class RestAfterSawingTests
{
    [Fact]
    public void What_is_written_down_as_sawn_rests_on_as_long_as_it_would_have_by_the_log()
    {
        using var tray = WithItsBoardSawn();
        var before = Rests(tray.Type("plan", "--json").ReadJson());
        Assert.NotEmpty(before);
        tray.Type("layout", "--sawn", "A");
        var after = Rests(tray.Type("plan", "--json").ReadJson());

        // The rest of the board ends with the rest after the last of its cuts: to the minute, as the log has that.
        Assert.Equal(before.Max(rest => rest.Text("end")), Assert.Single(after).Text("end"));
        Assert.Equal("sawing A", after[0].Text("after"));
        Assert.Contains("after sawing A:", tray.Type("plan").Out, StringComparison.Ordinal);
        Assert.Contains(tray.Type("progress", "--json").ReadJson().List("waits"), wait => wait.Text("after") == "sawing A");
    }

    [Fact]
    public void The_file_says_on_which_date_the_log_has_the_last_cut_and_not_when_it_was_written_down()
    {
        using var tray = WithItsBoardSawn();
        tray.Later(Duration.FromDays(1)).Type("layout", "--sawn", "A");
        Assert.Contains("    on: 2027-03-01", Sawn(tray), StringComparison.Ordinal);
    }

    [Fact]
    public void Sawing_that_nobody_logged_counts_as_done_on_the_date_on_which_it_was_written_down()
    {
        using var tray = new ATrayUnderWay();
        tray.Type("layout", "--sawn", "A");
        Assert.Contains("    on: 2027-03-01", Sawn(tray), StringComparison.Ordinal);
        var plan = tray.Type("plan", "--json").ReadJson();
        var rest = Assert.Single(Rests(plan));
        var planing = plan.List("sessions").SelectMany(session => session.List("tasks")).First(task => task.Text("task").StartsWith("flatten face one", StringComparison.Ordinal));
        Assert.True(string.CompareOrdinal(planing.Text("start"), rest.Text("end")) >= 0, planing.ToString());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_file_without_a_date_takes_the_one_of_the_log_and_without_any_the_board_has_rested(bool isLogged)
    {
        using var tray = isLogged ? WithItsBoardSawn() : new ATrayUnderWay();
        tray.Type("layout", "--sawn", "A");
        var dated = Rests(tray.Type("plan", "--json").ReadJson());
        tray.Folder.With("jobs/tray.sawn.yaml", string.Join('\n', Sawn(tray).Split('\n').Where(line => !line.StartsWith("    on: ", StringComparison.Ordinal))));
        var undated = Rests(tray.Type("plan", "--json").ReadJson());
        Assert.Equal(isLogged ? dated.Select(rest => rest.Text("end")) : [], undated.Select(rest => rest.Text("end")));
    }

    [Fact]
    public void A_board_that_was_sawn_long_ago_has_rested()
    {
        using var tray = new ATrayUnderWay();
        tray.Type("layout", "--sawn", "A");
        tray.Folder.With("jobs/tray.sawn.yaml", Sawn(tray).Replace("on: 2027-03-01", "on: 2027-02-01", StringComparison.Ordinal));
        Assert.Empty(Rests(tray.Type("plan", "--json").ReadJson()));
    }

    private static ATrayUnderWay WithItsBoardSawn()
    {
        var tray = new ATrayUnderWay();
        return tray.Done(tray.InOrder.TakeWhile(work => work.Task.Board is null).Count() + tray.InOrder.Count(work => work.Task.Board == "A"), 1);
    }

    private static string Sawn(ATrayUnderWay tray) => File.ReadAllText(tray.Folder.File("jobs", "tray.sawn.yaml"));

    private static List<JsonElement> Rests(JsonElement plan) => [.. plan.List("waits").Where(wait => wait.Text("reason").StartsWith("at rest, stickered", StringComparison.Ordinal))];
}
