using System.Text.Json;
using NodaTime;
using ShopDays.Cli.Tests.Running;
using ShopDays.Work;
using UglyToad.PdfPig;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>A tray planned anew in the middle of its work.</summary>
public sealed class PlanAnewTests
{
    [Fact]
    public void Work_that_is_begun_before_its_jobs_start_is_planned_from_now_on()
    {
        using var tray = new ATrayUnderWay();
        var task = tray.InOrder[0].Task;
        tray.Log(task, ShopDays.Measures.WorkTime.FromMinutes(20), NodaTime.Instant.FromUtc(2026, 12, 1, 12, 0), finished: true);
        var plan = tray.Type("plan", "--json").ReadJson();
        Assert.True(plan.Field("finish").Instant("planned") < NodaTime.Instant.FromUtc(2027, 3, 1, 0, 0));
    }

    [Fact]
    public void A_job_that_is_begun_is_planned_from_now_on_and_what_is_done_is_gone()
    {
        using var tray = new ATrayUnderWay();
        var plan = tray.Done(9, 1.1).Type("plan", "--json").ReadJson();
        Assert.Equal(tray.Now, plan.Instant("from"));
        var planned = plan.List("sessions").SelectMany(session => session.List("tasks")).ToList();
        Assert.All(planned, work => Assert.True(work.Instant("start") >= tray.Now));
        var done = tray.InOrder.Take(9).Select(work => work.Task.Name).ToList();
        Assert.Equal(tray.Graph.Tasks.Select(task => task.Name).Except(done).Order(), planned.Select(work => work.Text("task")).Distinct().Order());
        Assert.Equal(done.Order(), plan.List("done").Select(task => task.Text("task")).Order());
    }

    [Fact]
    public void How_dry_the_boards_are_is_not_spoken_of_any_more_when_all_parts_are_of_size()
    {
        using var tray = new ATrayUnderWay();
        Assert.Contains(tray.Done(3, 1).Type("plan", "--json").ReadJson().List("remarks"), IsOnDryness);
        var sized = tray.InOrder.ToList().FindLastIndex(work => work.Task.Stage <= Stage.Dimensioning) + 1;
        Assert.DoesNotContain(tray.Done(sized - 3, 1).Type("plan", "--json").ReadJson().List("remarks"), IsOnDryness);
        Assert.DoesNotContain("how dry is not known", tray.Type("plan").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);

        static bool IsOnDryness(JsonElement remark) => remark.Text("kind") == "dryness";
    }

    [Fact]
    public void The_dates_are_those_that_progress_tells()
    {
        using var tray = new ATrayUnderWay();
        tray.Done(12, 1.3).Began(0.5);
        var (plan, progress) = (tray.Type("plan", "--json").ReadJson(), tray.Type("progress", "--json").ReadJson());
        Assert.All((string[])["planned", "p50", "p80", "p90"], name => Assert.Equal(progress.Field("finish").Text(name), plan.Field("finish").Text(name)));
        Assert.Single(plan.List("halfDone"));
    }

    [Fact]
    public void A_job_whose_start_is_past_with_nothing_logged_is_planned_from_now_on_and_that_is_said()
    {
        using var tray = new ATrayUnderWay();
        var before = tray.Type("plan", "--json").ReadJson();
        var plan = tray.Later(Duration.FromDays(9)).Type("plan", "--json").ReadJson();
        Assert.Equal(tray.Now, plan.Instant("from"));
        Assert.All(plan.List("sessions"), session => Assert.True(session.Instant("start") >= tray.Now));
        Assert.Equal(
            before.List("sessions").SelectMany(session => session.List("tasks")).Select(task => task.Text("task")).Distinct().Order(),
            plan.List("sessions").SelectMany(session => session.List("tasks")).Select(task => task.Text("task")).Distinct().Order());
        Assert.Contains("it should have begun on Mon 1 Mar 2027, and nothing of it is logged", tray.Type("plan").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);

        var whole = tray.Type("plan", "--whole", "--json").ReadJson();
        Assert.Equal(JsonValueKind.Null, whole.Field("from").ValueKind);
        Assert.Equal(before.List("sessions")[0].Text("start"), whole.List("sessions")[0].Text("start"));
    }

    [Fact]
    public void The_whole_job_is_planned_from_its_start_when_that_is_asked_for()
    {
        using var tray = new ATrayUnderWay();
        var before = tray.Type("plan", "--json").ReadJson();
        var whole = tray.Done(9, 1).Type("plan", "--whole", "--json").ReadJson();
        Assert.Equal(JsonValueKind.Null, whole.Field("from").ValueKind);
        Assert.Equal(before.List("sessions").Count, whole.List("sessions").Count);
        Assert.Contains("as if nothing were done", tray.Type("plan", "--whole").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_promise_of_the_rest_is_one_of_the_whole_job_with_what_is_done_as_it_was()
    {
        using var tray = new ATrayUnderWay();
        tray.Type("plan", "--promise");
        tray.Done(15, 1.7);
        var plan = tray.Type("plan", "--promise", "--json").ReadJson();
        var progress = tray.Type("progress", "--json").ReadJson();
        var later = Assert.Single(progress.List("laterPromises"));
        Assert.Equal(plan.Field("finish").Instant("p80"), later.Instant("p80"));
        Assert.Equal(tray.Graph.Tasks.Count, later.Number("tasks"));
        // Each of the three figures is rounded to a hundredth of a minute.
        Assert.Equal(progress.Number("spentMinutes") + progress.Field("leftMinutes").Number("p50"), later.Field("handsOnMinutes").Number("p50"), 0.015);
    }

    [Fact]
    public void Against_a_promise_that_was_made_in_the_middle_nothing_has_moved_at_once()
    {
        using var tray = new ATrayUnderWay();
        tray.Done(10, 1.6).Type("plan", "--promise");
        var progress = tray.Type("progress", "--json").ReadJson();
        Assert.Equal(0, progress.Number("differenceMinutes"), 0.02);
        Assert.Equal(0, progress.Field("moved").Number("days"));

        // The rates of then are learned again and its courses drawn again: not a day of it is put down to anything.
        Assert.All(progress.Field("moved").List("causes"), cause => Assert.Equal(0, cause.Number("days")));
    }

    [Fact]
    public void Work_of_an_earlier_date_that_is_typed_in_after_the_promise_was_not_known_to_it()
    {
        using var tray = new ATrayUnderWay();
        tray.Done(3, 1).Later(Duration.FromDays(7)).Type("plan", "--promise");
        var made = tray.Now;
        var next = tray.InOrder[3];
        tray.Log(next.Task, next.HandsOn * 1.5, made - Duration.FromDays(1), finished: true).Later(Duration.FromDays(1));
        Assert.Equal(made, tray.Now);
        var moved = tray.Type("progress", "--json").ReadJson().Field("moved");
        Assert.DoesNotContain(moved.List("causes"), cause => cause.Text("cause") == "filesChanged");
        Assert.Contains(moved.List("causes"), cause => cause.Text("cause") == "took");
        Assert.Equal(moved.Number("days"), moved.List("causes").Sum(cause => cause.Number("days")));
    }

    [Fact]
    public void A_pace_that_slowed_is_a_cause_and_not_bad_luck()
    {
        using var tray = new ATrayUnderWay();
        tray.Type("plan", "--promise");

        // Each at the end that the plan gave it, though it took twice as long: more is done than was planned by then, and more is to come.
        tray.Done(12, 2);
        var moved = tray.Type("plan", "--json").ReadJson().Field("moved");
        Assert.True(moved.Field("isSafe").GetBoolean());
        var pace = moved.List("causes").MaxBy(one => one.Number("days"));
        Assert.Equal("toCome", pace.Text("cause"));
        Assert.InRange(pace.Number("days"), 1, 30);
        Assert.DoesNotContain(moved.List("causes"), cause => cause.Text("cause") == "luck" && cause.Number("days") > 0);
        Assert.Contains("what is to come is expected to take longer", tray.Type("plan").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_weeks_in_which_nothing_is_logged_are_told_as_sessions_that_went_by()
    {
        using var tray = new ATrayUnderWay();
        tray.Type("plan", "--promise");
        tray.Later(Duration.FromDays(14) + Duration.FromHours(20));
        foreach (var command in (string[])["plan", "progress"])
        {
            var moved = tray.Type(command, "--json").ReadJson().Field("moved");
            Assert.Equal(moved.Number("days"), moved.List("causes").Sum(cause => cause.Number("days")));
            Assert.True(moved.Number("days") >= 14);
            var cause = moved.List("causes").MaxBy(one => one.Number("days"));
            Assert.Equal("sessions", cause.Text("cause"));
            Assert.True(cause.Number("minutes") > 300);
            Assert.Contains("sessions that went by", tray.Type(command).Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Whatever_came_about_the_causes_add_up_and_plan_and_progress_tell_the_same()
    {
        using var tray = new ATrayUnderWay();
        tray.Type("plan", "--promise");
        tray.Done(14, 1.8).Began(0.4);
        var (plan, progress) = (tray.Type("plan", "--json").ReadJson().Field("moved"), tray.Type("progress", "--json").ReadJson().Field("moved"));
        Assert.Equal(plan.ToString(), progress.ToString());
        Assert.Equal(plan.Number("days"), plan.List("causes").Sum(cause => cause.Number("days")));
        Assert.Contains(plan.List("causes"), cause => cause.Text("cause") == "took" && cause.Number("minutes") > 0);
        Assert.All(tray.Type("plan").Out.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void Boards_sawn_since_are_planned_again_as_they_were_when_the_cause_is_looked_for()
    {
        using var tray = new ATrayUnderWay();

        // Measured timber: what is not measured rests for days, and the promise then hangs on whether a kept offcut yields a spoiled piece again.
        tray.Folder.WithJob("tray", ATrayShop.Job.Replace("end-trim: 30 mm", "end-trim: 30 mm, drying: {moisture: 14%}", StringComparison.Ordinal));
        tray.Type("plan", "--promise");
        var cuts = tray.InOrder.TakeWhile(work => work.Task.Board is null).Count() + tray.InOrder.Count(work => work.Task.Board == "A");

        // A tenth slower: kept to the minute, four courses in five end within a hair of two dates, and sawing that is over is spoiled no more.
        tray.Done(cuts, 1.1);
        var before = tray.Type("progress", "--json").ReadJson().Field("moved");
        tray.Type("layout", "--sawn", "A");
        var after = tray.Type("progress", "--json").ReadJson().Field("moved");
        Assert.Equal(before.Number("days"), after.Number("days"));
        Assert.Equal(after.Number("days"), after.List("causes").Sum(cause => cause.Number("days")));
    }

    [Fact]
    public void The_paper_is_printed_anew_only_from_now_on()
    {
        using var tray = new ATrayUnderWay();
        var file = tray.Folder.File("plan.pdf");
        tray.Type("plan", "--promise", "--pdf", file);
        var whole = Read(file);
        Assert.Contains(whole, page => page.Contains("Ripandstraighten", StringComparison.OrdinalIgnoreCase) || page.Contains("BoardA", StringComparison.Ordinal));
        var sawing = tray.InOrder.ToList().FindLastIndex(work => work.Task.Stage == Stage.Sawing) + 1;
        var plan = tray.Done(sawing + 2, 1.2).Type("plan", "--pdf", file, "--json").ReadJson();
        var anew = Read(file);
        Assert.All(anew, page => Assert.Contains("sheetsofdaysbeforestayvalid", page, StringComparison.Ordinal));
        Assert.Contains("tasksaredone", anew[0], StringComparison.Ordinal);
        Assert.Contains("Promised", anew[0], StringComparison.Ordinal);

        // Every board is sawn by the log, and each day to come has its sheet.
        Assert.DoesNotContain(anew, page => page.Contains("Onthepieceinhand", StringComparison.Ordinal));
        var days = plan.List("sessions").Select(session => session.Time("start").Date).Distinct().ToList();
        Assert.Equal(days.Count, anew.Count(page => page.Contains("Shopday", StringComparison.Ordinal) && page.Contains("tocome", StringComparison.Ordinal)));
        Assert.True(anew.Count < whole.Count);
    }

    [Fact]
    public void Of_a_finished_job_nothing_is_planned()
    {
        using var tray = new ATrayUnderWay();
        var plan = tray.Done(tray.InOrder.Count, 1).Type("plan");
        Assert.Equal(0, plan.ExitCode);
        Assert.Contains("nothing is left to plan", plan.Out, StringComparison.Ordinal);
        Assert.Empty(tray.Type("plan", "--json").ReadJson().List("sessions"));
    }

    [Fact]
    public void So_many_schedules_are_looked_at_as_were_asked_for()
    {
        using var tray = new ATrayUnderWay();
        var few = tray.Type("plan", "--schedules", "40", "--json").ReadJson();
        Assert.InRange(few.Number("schedules"), 1, 40);
        Assert.Equal(40, few.Number("schedulesToLookAt"));
        Assert.Contains("looked at", tray.Type("plan", "--schedules", "40").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        var wrong = tray.Type("plan", "--schedules", "none");
        Assert.Equal(2, wrong.ExitCode);
        Assert.Contains("'none' is no number of schedules", wrong.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_finish_of_the_trials_is_drawn_with_the_dates_that_are_told()
    {
        using var tray = new ATrayUnderWay();
        var printed = tray.Type("plan").Out;
        var bars = printed.Split('\n').SkipWhile(line => !line.StartsWith("When ", StringComparison.Ordinal)).Skip(1).TakeWhile(line => line.Length > 0).ToList();
        Assert.InRange(bars.Count, 1, 14);
        Assert.All((string[])["as likely as not", "promise", "bad luck"], mark => Assert.Single(bars, bar => bar.Contains(mark, StringComparison.Ordinal)));
        Assert.All(printed.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void Other_programs_hear_of_sessions_at_risk_and_of_every_finish()
    {
        using var tray = new ATrayUnderWay();
        var plan = tray.Type("plan", "--json").ReadJson();
        Assert.Equal(plan.Number("trials"), plan.List("finishes").Sum(day => day.Number("trials")) + plan.Number("unfinished"));
        Assert.InRange(plan.List("sessionsAtRisk").Count, 1, 5);
        Assert.All(plan.List("sessionsAtRisk"), risk => Assert.InRange(risk.Number("slips"), 0.0001, risk.Number("notDone")));
    }

    private static List<string> Read(string file)
    {
        using var paper = PdfDocument.Open(file);
        return [.. paper.GetPages().Select(page => ReadPaper.Squeezed(page.Text))];
    }
}
