using System.Text.Json;
using NodaTime;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Running;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>A tray walked through from promise to finish, slower and faster than expected.</summary>
public sealed class ProgressCommandTests
{
    [Fact]
    public void Before_anything_is_done_the_forecast_is_the_plans_own()
    {
        using var tray = new ATrayUnderWay();
        var plan = tray.Type("plan", "--promise", "--json").ReadJson().Field("finish");
        var progress = tray.Type("progress", "--json").ReadJson();
        foreach (var name in (string[])["planned", "p50", "p80", "p90"])
        {
            Assert.Equal(plan.Text(name), progress.Field("finish").Text(name));
            Assert.Equal(plan.Instant(name), progress.Field("promise").Instant(name));
        }

        Assert.True(progress.Field("promiseIsRecorded").GetBoolean());
        Assert.Equal(0, progress.Number("differenceMinutes"));
        Assert.Equal(tray.Graph.Tasks.Count, progress.Field("toDo").Number("tasks"));
    }

    [Fact]
    public void Without_a_promise_on_record_the_one_that_would_have_been_is_the_same()
    {
        using var tray = new ATrayUnderWay();
        var plan = tray.Type("plan", "--json").ReadJson().Field("finish");
        tray.Done(8, times: 1.5);
        var progress = tray.Type("progress", "--json").ReadJson();
        Assert.False(progress.Field("promiseIsRecorded").GetBoolean());
        Assert.Equal(plan.Instant("p80"), progress.Field("promise").Instant("p80"));
        Assert.Contains("No promise is on record", tray.Type("progress").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(9)]
    [InlineData(15)]
    [InlineData(21)]
    public void A_plan_that_is_kept_to_the_minute_is_neither_ahead_nor_behind(int done)
    {
        using var tray = new ATrayUnderWay();
        tray.Type("plan", "--promise");
        tray.Done(done, times: 1);
        var progress = tray.Type("progress", "--json", "--prior-only").ReadJson();
        Assert.Equal(0, progress.Number("differenceMinutes"));
        Assert.Equal(progress.Field("promise").Instant("planned"), progress.Field("finish").Instant("planned"));
        Assert.Contains("as promised to the minute", tray.Type("progress", "--prior-only").Out, StringComparison.Ordinal);

        var learned = tray.Type("progress", "--json").ReadJson();
        Assert.Equal(progress.Field("promise").Instant("planned"), learned.Field("finish").Instant("planned"));

        // A minute more or less is a good part of a short task, and one's pace is learned from a few of them.
        Assert.InRange(learned.Number("differenceMinutes"), -0.02 * learned.Number("promisedMinutes"), 0.02 * learned.Number("promisedMinutes"));
    }

    [Fact]
    public void Slower_work_moves_the_finish_back_and_faster_work_up()
    {
        var (fast, even, slow) = (After(0.5), After(1), After(1.9));
        Assert.True(fast.Field("finish").Instant("p90") <= even.Field("finish").Instant("p90"));
        Assert.True(even.Field("finish").Instant("p90") <= slow.Field("finish").Instant("p90"));
        Assert.True(fast.Field("finish").Instant("p90") < slow.Field("finish").Instant("p90"));
        Assert.True(fast.Number("differenceMinutes") < -60);
        Assert.True(slow.Number("differenceMinutes") > 60);

        static JsonElement After(double pace)
        {
            using var tray = new ATrayUnderWay();
            tray.Done(20, pace);
            return tray.Type("progress", "--json").ReadJson();
        }
    }

    [Fact]
    public void What_is_to_come_is_expected_longer_when_what_was_done_took_longer()
    {
        var (slowly, unlearned) = LeftAfter(1.6);
        var (quickly, unlearnedToo) = LeftAfter(0.6);
        Assert.True(slowly > 1.2 * quickly);

        // By the built-in rates alone what is left does not care how the rest went.
        Assert.Equal(unlearned, unlearnedToo);

        static (double Learned, double Prior) LeftAfter(double pace)
        {
            using var tray = new ATrayUnderWay();
            tray.Done(15, pace);
            return (Left(tray.Type("progress", "--json")), Left(tray.Type("progress", "--json", "--prior-only")));
        }

        static double Left(Typed answer) => answer.ReadJson().Field("leftMinutes").Number("p50");
    }

    [Fact]
    public void Operations_still_to_do_are_told_with_what_was_learned_of_them()
    {
        using var tray = new ATrayUnderWay();
        Assert.Contains(tray.Done(15, 1.6).Type("progress", "--json").ReadJson().List("operations"), one => one.Number("differenceMinutes") > 0);
    }

    [Fact]
    public void The_differences_that_are_told_add_up_to_the_whole()
    {
        using var tray = new ATrayUnderWay();
        tray.Type("plan", "--promise");
        var progress = tray.Done(11, 1.4).Began(0.7).Type("progress", "--json").ReadJson();
        var tasks = progress.List("tasks");
        // Each row and the sum are rounded to a hundredth of a minute.
        Assert.Equal(progress.Number("differenceMinutes"), tasks.Sum(one => one.Number("differenceMinutes")), 0.005 * (tasks.Count + 1));
        Assert.Equal(progress.Number("nowMinutes") - progress.Number("promisedMinutes"), progress.Number("differenceMinutes"), 0.02);
        Assert.Equal(1, progress.Field("halfDone").Number("tasks"));
        Assert.True(progress.Field("halfDone").Number("leftMinutes") > 0);
    }

    [Fact]
    public void The_lines_that_are_printed_add_up_to_the_sum_that_is_printed()
    {
        using var tray = new ATrayUnderWay();
        var printed = tray.Done(17, 1.4).Type("progress").Out.Split('\n');
        var rows = printed.SkipWhile(line => !line.StartsWith("What made", StringComparison.Ordinal)).Skip(1).TakeWhile(line => line.Length > 0).Where(line => line.Length > 8 && line[5] != ' ').Select(line => Minutes(line[..8]));
        var all = printed.Single(line => line.TrimStart().StartsWith("all ", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(Minutes(all[^1]), rows.Sum());
        Assert.All(printed, line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void A_finished_job_says_when_and_what_it_took()
    {
        using var tray = new ATrayUnderWay();
        tray.Type("plan", "--promise");
        tray.Done(tray.InOrder.Count, 1.1);
        var progress = tray.Type("progress", "--json").ReadJson();
        Assert.Equal(0, progress.Field("toDo").Number("tasks"));
        Assert.Equal(JsonValueKind.Null, progress.Field("leftMinutes").ValueKind);
        Assert.DoesNotContain("\n\n\n", tray.Type("progress").Out.ReplaceLineEndings("\n"), StringComparison.Ordinal);

        // The last coat hardens for days after the last stroke.
        Assert.True(string.CompareOrdinal(progress.Text("finished"), "2027-03-11") > 0);
        Assert.Contains("Tray: finished", tray.Type("progress").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_moved_a_finish_that_is_past_does_not_grow_with_the_days_since()
    {
        using var tray = new ATrayUnderWay();
        tray.Type("plan", "--promise");
        tray.Done(tray.InOrder.Count, 1.6);
        var soon = tray.Type("progress").Out;
        tray.Later(Duration.FromDays(40));
        var late = tray.Type("progress").Out;
        Assert.Contains("days sooner", soon, StringComparison.Ordinal);
        Assert.Equal(soon, late);
    }

    [Fact]
    public void Of_a_job_that_was_finished_long_ago_nothing_is_forecast()
    {
        using var tray = new ATrayUnderWay();
        tray.Done(tray.InOrder.Count, 1.1);
        tray.Log(tray.Graph.Tasks[0] with { Name = "mend the saw horse" }, WorkTime.FromMinutes(35), tray.Now + Duration.FromDays(90), finished: true);
        var progress = tray.Type("progress", "--json").ReadJson();
        Assert.True(string.CompareOrdinal(progress.Text("finished"), "2027-04-15") < 0);
        Assert.Equal(JsonValueKind.Null, progress.Field("finish").ValueKind);
    }

    [Fact]
    public void Time_of_a_task_that_the_job_does_not_have_is_told_and_counts()
    {
        using var tray = new ATrayUnderWay();
        tray.Done(3, 1);
        var before = tray.Type("progress", "--json").ReadJson().Number("spentMinutes");
        tray.Log(tray.Graph.Tasks[0] with { Name = "mend the saw horse" }, WorkTime.FromMinutes(35), tray.Now, finished: true);
        var progress = tray.Type("progress", "--json").ReadJson();
        Assert.Equal(35, progress.Number("spentMinutes") - before, 0.01);
        Assert.Equal("mend the saw horse", Assert.Single(progress.List("strays")).Text("task"));
        Assert.Contains("mend the saw horse (0:35)", tray.Type("progress").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_that_is_recorded_as_sawn_takes_its_work_out_of_the_job_and_leaves_its_time_in_the_sums()
    {
        using var tray = new ATrayUnderWay();
        tray.Type("plan", "--promise");
        var cuts = tray.InOrder.TakeWhile(work => work.Task.Board is null).Count() + tray.InOrder.Count(work => work.Task.Board == "A");
        tray.Done(cuts, 1.2);
        var before = tray.Type("progress", "--json").ReadJson();
        tray.Type("layout", "--sawn", "A");
        var after = tray.Type("progress", "--json").ReadJson();
        Assert.Equal(before.Number("spentMinutes"), after.Number("spentMinutes"));

        // What is to come is drawn anew, and the sums come out the same but for what a hundredth of a minute leaves.
        Assert.Equal(before.Number("differenceMinutes"), after.Number("differenceMinutes"), 0.02);
        Assert.Contains(after.List("tasks"), one => one.Text("kind") == "wentOut");
        Assert.Empty(after.List("passedOver"));
    }

    [Fact]
    public void Sawing_that_nobody_logged_counts_as_promised()
    {
        using var tray = new ATrayUnderWay();
        tray.Type("plan", "--promise");
        tray.Type("layout", "--sawn", "A");
        var progress = tray.Type("progress", "--json").ReadJson();
        var sawn = progress.List("tasks").Where(one => one.Text("kind") == "sawnUnlogged").ToList();
        Assert.NotEmpty(sawn);
        Assert.All(sawn, one => Assert.Equal(0, one.Number("differenceMinutes")));
        Assert.Contains("of boards that are sawn", tray.Type("progress").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_told_how_much_of_the_sessions_since_the_start_is_logged()
    {
        using var tray = new ATrayUnderWay();

        // Monday's first session, from 9:00 to 12:30, less 10 min to open up and 15 to sweep up.
        var first = tray.InOrder[0].Task;
        tray.Log(first, WorkTime.FromMinutes(25), Instant.FromUtc(2027, 3, 1, 12, 40), finished: true);
        Assert.Equal(185, tray.Type("progress", "--json").ReadJson().Number("sessionMinutes"));
        Assert.Contains("had 3:05 to work in; 0:25 is logged.", tray.Type("progress").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_of_a_job_that_is_begun_says_where_the_rest_stands()
    {
        using var tray = new ATrayUnderWay();
        Assert.DoesNotContain("shopdays progress tray", tray.Type("plan").Out, StringComparison.Ordinal);
        tray.Done(1, 1);
        Assert.Contains("shopdays progress tray", tray.Type("plan").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Work_that_goes_on_now_is_half_done()
    {
        using var tray = new ATrayUnderWay();
        tray.Done(2, 1);
        using (var log = ShopLog.Open(new(tray.Folder.Path)))
        {
            log.Begun.Start(new() { Worker = "maker", Job = "tray", Task = tray.InOrder[2].Task.Name, Began = tray.Now - Duration.FromMinutes(6) });
        }

        var half = tray.Type("progress", "--json").ReadJson().Field("halfDone");
        Assert.Equal((1, 6.0), ((int)half.Number("tasks"), half.Number("spentMinutes")));
    }

    [Fact]
    public void What_was_skipped_in_the_log_is_asked_about()
    {
        using var tray = new ATrayUnderWay();
        var (first, second) = (tray.InOrder[0].Task, tray.InOrder[1]);
        tray.Log(second.Task, WorkTime.FromMinutes(20), second.End.ToInstant(), finished: true);
        Assert.Equal(first.Name, Assert.Single(tray.Type("progress", "--json").ReadJson().List("passedOver")).GetString());
        Assert.Contains("shopdays log add tray", tray.Type("progress").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_promise_stays_the_first()
    {
        using var tray = new ATrayUnderWay();
        Assert.Contains("On record as promised: ", tray.Type("plan", "--promise").Out, StringComparison.Ordinal);
        tray.Done(20, 1.9);
        Assert.Contains("On record as promised again: ", tray.Type("plan", "--promise").Out, StringComparison.Ordinal);
        var progress = tray.Type("progress", "--json").ReadJson();
        Assert.Equal(new LocalDate(2027, 3, 1), progress.Field("promise").Time("made").Date);
        Assert.Equal(tray.Now, Assert.Single(progress.List("laterPromises")).Instant("made"));
    }

    [Fact]
    public void Nothing_is_written_by_asking()
    {
        using var tray = new ATrayUnderWay();
        tray.Type("progress");
        tray.Type("plan");
        tray.Type("estimate");
        Assert.False(File.Exists(tray.Folder.File("shop.db")));
    }

    private static int Minutes(string signed)
    {
        var parts = signed.Trim().TrimStart('+', '-').Split(':');
        return (signed.Trim()[0] == '-' ? -1 : 1) * ((int.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture) * 60) + int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture));
    }
}
