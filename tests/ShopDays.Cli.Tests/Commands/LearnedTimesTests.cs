using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>Layout, estimate and plan use what the log teaches, say so, and can do without it.</summary>
public sealed class LearnedTimesTests
{
    public static TheoryData<string> Commands => ["layout", "estimate", "plan"];

    [Theory]
    [MemberData(nameof(Commands))]
    public void Without_the_log_all_is_as_if_there_were_none(string command)
    {
        using var tray = new ATrayUnderWay();
        var before = Figures(tray.Type(command, "--json"));
        tray.Done(12, 1.7);
        Assert.Equal(before, Figures(tray.Type(command, ["--json", "--prior-only", .. command == "plan" ? (string[])["--whole"] : []])));

        // All but that there is a log now, and that days have gone by.
        static IEnumerable<string> Figures(Typed answer) => answer.ReadJson().EnumerateObject()
            .Where(one => one.Name is not ("entries" or "priorOnly" or "times" or "notes" or "priorHandsOnMinutes"))
            .Select(one => $"{one.Name}: {one.Value.GetRawText()}");
    }

    [Fact]
    public void The_layout_of_the_next_job_is_priced_by_what_was_learned_and_that_of_this_one_stays_as_it_was_begun()
    {
        using var tray = new ATrayUnderWay();
        var before = Sawing(tray.Type("layout", "--json"));
        var tasks = Tasks(tray.Type("plan", "--json"));
        tray.Done(12, 1.7);
        Assert.Equal(before, Sawing(tray.Type("layout", "--json")));
        Assert.Equal(tasks, Tasks(tray.Type("plan", "--whole", "--json")));
        tray.Folder.WithJob("second-tray", ATrayShop.Job);
        Assert.True(Sawing(Typed.At(tray.Now, "layout", tray.Folder.File("jobs", "second-tray.yaml"), "--json")) > before);

        static double Sawing(Typed answer) => answer.ReadJson().Number("sawingMinutes");
        static IEnumerable<string> Tasks(Typed answer) => answer.ReadJson().List("sessions").SelectMany(session => session.List("tasks")).Select(task => task.Text("task")).Distinct().Order(StringComparer.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void It_is_said_in_a_line_what_the_times_come_from(string command)
    {
        using var tray = new ATrayUnderWay();
        Assert.Contains("from the built-in rates alone", tray.Type(command).Out, StringComparison.Ordinal);
        tray.Done(12, 1.7);
        Assert.Contains("from 12 timed tasks of your own and the built-in rates", tray.Type(command).Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        var left = tray.Type(command, "--prior-only").Out.ReplaceLineEndings(" ");
        Assert.Contains("from the built-in rates alone", left, StringComparison.Ordinal);
        Assert.Contains("The 12 entries of your log are left aside, as '--prior-only' asks.", left, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void Other_programs_are_told_the_same(string command)
    {
        using var tray = new ATrayUnderWay();
        tray.Done(12, 1.7);
        var (learned, prior) = (tray.Type(command, "--json").ReadJson(), tray.Type(command, "--json", "--prior-only").ReadJson());
        Assert.Equal((12, false, 12), ((int)learned.Number("entries"), learned.Field("priorOnly").GetBoolean(), (int)learned.Field("times").Number("timedTasks")));
        Assert.Equal((12, true, 0), ((int)prior.Number("entries"), prior.Field("priorOnly").GetBoolean(), (int)prior.Field("times").Number("timedTasks")));
    }

    [Fact]
    public void The_estimate_stands_beside_what_it_would_be_without_the_log()
    {
        using var tray = new ATrayUnderWay();
        var before = tray.Type("estimate", "--json").ReadJson().Field("handsOnMinutes").Number("p50");
        var after = tray.Done(25, 1.7).Type("estimate", "--json").ReadJson();
        Assert.Equal(before, after.Field("priorHandsOnMinutes").Number("p50"));
        Assert.True(after.Field("handsOnMinutes").Number("p50") > 1.2 * before);
        Assert.Contains(" without ", tray.Type("estimate").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_time_that_looks_odd_is_held_out_and_asked_about()
    {
        using var tray = new ATrayUnderWay();
        tray.Done(10, 1).Done(1, 40);
        var said = tray.Type("estimate").Out.ReplaceLineEndings(" ");
        Assert.Contains("1 timed task looks odd and is held out until you say what to make of it: shopdays log odd", said, StringComparison.Ordinal);
        Assert.Contains("from 10 timed tasks of your own", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Entries_that_teach_nothing_are_told_with_the_reason()
    {
        using var tray = new ATrayUnderWay();
        tray.Done(3, 1).Began(0.5);
        Assert.Contains("Nothing is learned from 1 entry (of a task that is not finished): shopdays rates names it", tray.Type("plan").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_log_of_a_newer_program_is_refused_and_nothing_is_worked_out()
    {
        using var tray = new ATrayUnderWay();
        tray.Done(1, 1);
        using (var file = LogFile.Open(tray.Folder.File(ShopLog.FileName)))
        {
            file.Write(connection => connection.Run("pragma user_version = 99"));
        }

        var refused = tray.Type("estimate");
        Assert.Equal((3, ""), (refused.ExitCode, refused.Out));
        Assert.NotEqual("", refused.Error);
    }
}
