using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Logbook;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>Start, pause and done; and what is put right afterwards.</summary>
public sealed class LogAtTheBenchTests : IDisposable
{
    private readonly FreshFolder folder = new FreshFolder().WithATray();

    [Fact]
    public async Task One_is_at_one_task_at_a_time_and_a_begun_one_is_on_the_disk_at_once()
    {
        (await Ran.In(folder.Path, "log", "start", "tray", "fetch")).WentWell();
        var second = await Ran.In(folder.Path, "log", "start", "tray", "choose");
        Assert.Equal(1, second.ExitCode);
        Assert.Contains("lay it aside with: shopdays log pause, or end it with:", second.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
        (await Ran.In(folder.Path, "log", "pause")).WentWell();
        (await Ran.In(folder.Path, "log", "start", "tray", "choose")).WentWell();
        using (var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!)
        {
            Assert.Equal([true, false], log.Begun.All().Select(work => work.PausedAt is not null));
        }

        (await Ran.In(folder.Path, "log", "done", "--took", "35m", "--half", "--setback", "dull-edge")).WentWell();
        (await Ran.In(folder.Path, "log", "drop")).WentWell();
        using var after = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        Assert.Empty(after.Begun.All());
        var entry = Assert.Single(after.All());
        Assert.Equal((35d, false, Setback.DullEdge), (entry.Took.Minutes, entry.Finished, entry.Setback));
        Assert.NotNull(entry.On.Ended);
    }

    [Fact]
    public async Task What_was_left_overnight_is_asked_about_and_not_counted()
    {
        using (var log = ShopLog.Open(new ShopFolder(folder.Path)))
        {
            log.Begun.Start(new() { Worker = "maker", Job = "tray", Task = "fetch and stack boards", Began = SystemClock.Instance.GetCurrentInstant() - Duration.FromHours(20) });
        }

        var ran = await Ran.In(folder.Path, "log", "done");
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("that would be 20 h; say how long it took with: shopdays log done --took 50m", ran.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
        using var after = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        Assert.Single(after.Begun.All());
        Assert.Empty(after.All());
    }

    [Fact]
    public async Task What_was_left_overnight_counts_for_the_day_on_which_it_was_begun_when_its_time_is_typed_in()
    {
        var now = SystemClock.Instance.GetCurrentInstant();
        var began = now - Duration.FromHours(30);
        using (var log = ShopLog.Open(new ShopFolder(folder.Path)))
        {
            log.Begun.Start(new() { Worker = "maker", Job = "tray", Task = "fetch and stack boards", Began = began });
        }

        var tooFar = await Ran.In(folder.Path, "log", "done", "--took", "2h", "--on", "2100-01-01");
        Assert.Contains("is still to come", tooFar.Error, StringComparison.Ordinal);
        (await Ran.In(folder.Path, "log", "done", "--took", "2h")).WentWell();
        using (var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!)
        {
            Assert.Equal(new WorkedOn(WorkedOn.At(began, DateTimeZoneProviders.Tzdb["Europe/London"]).Date), Assert.Single(log.All()).On);
        }

        (await Ran.In(folder.Path, "log", "start", "tray", "choose")).WentWell();
        (await Ran.In(folder.Path, "log", "done", "--took", "2h", "--on", "2024-05-14", "--json")).WentWell();
        using var after = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        Assert.Equal(new WorkedOn(new(2024, 5, 14)), after.All()[0].On);
    }

    [Fact]
    public async Task Of_several_numbers_all_are_kept_or_none()
    {
        using (var log = ShopLog.Open(new ShopFolder(folder.Path)))
        {
            log.Add(new() { Job = "tray", Task = "fetch", Took = Measures.WorkTime.FromMinutes(45), On = new(new(2026, 4, 17)), Worker = "maker", Finished = true }, default);
        }

        var ran = await Ran.In(folder.Path, "log", "keep", "1", "9999");
        Assert.Equal((1, ""), (ran.ExitCode, ran.Out));
        Assert.Equal("nothing was changed", ran.Complaints[^1]);
        using var after = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        Assert.Equal(Standing.AsLogged, Assert.Single(after.All()).Standing);
    }

    [Fact]
    public async Task A_job_that_nobody_knows_is_told_by_the_list_with_the_nearest()
    {
        Assert.Equal("Nothing is logged.\n", (await Ran.In(folder.Path, "log", "list", "--job", "tray")).WentWell().Out);
        var ran = await Ran.In(folder.Path, "log", "list", "--job", "TRAY");
        Assert.Equal((1, "no job is called 'TRAY'; expected tray; nearest: tray\n"), (ran.ExitCode, ran.Error));
    }

    [Fact]
    public async Task A_log_that_was_changed_by_hand_is_told_as_such()
    {
        using (var log = ShopLog.Open(new ShopFolder(folder.Path)))
        {
            log.Add(new() { Job = "tray", Task = "fetch", Took = Measures.WorkTime.FromMinutes(45), On = new(new(2026, 4, 17)), Worker = "maker", Finished = true }, default);
            log.File.Write(file => file.Run("update entry set date = 'a day'"));
        }

        var ran = await Ran.In(folder.Path, "log", "list");
        Assert.Equal((3, ""), (ran.ExitCode, ran.Out));
        Assert.Contains("is damaged, or was changed by hand", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_correction_shows_both_and_a_deletion_can_be_undone()
    {
        using (var log = ShopLog.Open(new ShopFolder(folder.Path)))
        {
            log.Add(new() { Job = "tray", Task = "fetch", Took = Measures.WorkTime.FromMinutes(45), On = new(new(2026, 4, 17)), Worker = "maker", Finished = true }, default);
        }

        var fix = (await Ran.In(folder.Path, "log", "fix", "1", "--took", "50m", "--why", "misread")).WentWell();
        Assert.Equal("1: tray, fetch, 50 min, Fri 17 Apr 2026.\n  took: 45 min, before; 50 min, now\n", fix.Out);
        (await Ran.In(folder.Path, "log", "unusual", "1")).WentWell();
        (await Ran.In(folder.Path, "log", "delete", "#1")).WentWell();
        Assert.Equal("Nothing is logged.\n", (await Ran.In(folder.Path, "log", "list")).WentWell().Out);
        (await Ran.In(folder.Path, "log", "restore", "1")).WentWell();
        var shown = (await Ran.In(folder.Path, "log", "show", "1", "--json")).WentWell().ReadJson();
        Assert.Equal(["corrected", "corrected", "deleted", "restored"], shown.List("trace").Select(line => line.Text("what")));
        Assert.Equal(("unusual", 50d), (shown.Field("entry").Text("standing"), shown.Field("entry").Number("tookMinutes")));
        Assert.Equal(45, shown.List("trace")[0].Field("before").Number("tookMinutes"));
    }

    [Theory]
    [InlineData("show")]
    [InlineData("delete")]
    [InlineData("restore")]
    [InlineData("keep")]
    [InlineData("fix")]
    public async Task A_number_that_is_not_there_is_told_and_no_file_is_made(string command)
    {
        var ran = await Ran.In(folder.Path, "log", command, "7");
        Assert.Equal((1, ""), (ran.ExitCode, ran.Out));
        Assert.Contains("entry 7", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder.File(ShopLog.FileName)));
    }

    [Fact]
    public async Task A_newer_log_is_refused_with_exit_code_3()
    {
        using (LogFile.Open(folder.File(ShopLog.FileName), [.. SchemaSteps.All, "create table more (a text)"]))
        {
        }

        var ran = await Ran.In(folder.Path, "log", "list");
        Assert.Equal((3, ""), (ran.ExitCode, ran.Out));
        Assert.Contains("was written by a newer ShopDays", ran.Error, StringComparison.Ordinal);
    }

    public void Dispose() => folder.Dispose();
}
