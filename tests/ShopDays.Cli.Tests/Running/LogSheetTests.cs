using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Logbook;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>A pencilled sheet, typed back.</summary>
public sealed class LogSheetTests : IDisposable
{
    private readonly FreshFolder folder = new FreshFolder().WithATray();

    [Fact]
    public async Task The_columns_of_the_paper_work_as_typed_and_the_same_sheet_adds_nothing_twice()
    {
        folder.With("times.csv", """
            Date,Task,Quantity,Start,Stop,Took,Note,Done
            2026-04-16,fetch,,9:00,9:45,,,x
            2026-04-16,choose,,10:00,11:30,1h10,"knots, everywhere",
            2026-04-17,choose,,,,20m,,x

            """);
        var first = (await Ran.In(folder.Path, "log", "import", "times.csv", "--job", "tray")).WentWell();
        Assert.Equal("3 entries logged, numbers 1 to 3.\n", first.Out);
        (await Ran.In(folder.Path, "log", "fix", "1", "--took", "40m", "-q")).WentWell();
        (await Ran.In(folder.Path, "log", "delete", "3", "-q")).WentWell();
        var again = (await Ran.In(folder.Path, "log", "import", "times.csv", "--job", "tray")).WentWell();
        Assert.Equal("0 entries logged; 3 rows in the log already.\n", again.Out);

        using var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        Assert.Equal([(40d, true, ""), (70d, false, "knots, everywhere")], log.All().Select(entry => (entry.Took.Minutes, entry.Finished, entry.Note)));
    }

    [Fact]
    public async Task A_sheet_with_a_mistake_writes_nothing()
    {
        folder.With("times.csv", "job,date,task,took\ntray,2026-04-16,fetch,45m\nchest,2026-04-16,fetch,45m\ntray,2026-04-16,plane the moon,45m\n");
        var ran = await Ran.In(folder.Path, "log", "import", "times.csv");
        Assert.Equal((1, ""), (ran.ExitCode, ran.Out));
        Assert.StartsWith("times.csv:3:18: no job is called 'chest'", ran.Complaints[0], StringComparison.Ordinal);
        Assert.StartsWith("times.csv:4:17: no task of tray is called 'plane the moon'", ran.Complaints[1], StringComparison.Ordinal);
        Assert.Equal("2 mistakes; nothing was logged", ran.Complaints[2]);
        Assert.False(File.Exists(folder.File(ShopLog.FileName)));
    }

    [Fact]
    public async Task Words_may_have_spaces_and_capitals_and_a_bad_quantity_says_why()
    {
        folder.With("good.csv", "job,date,task,took,done,setback\ntray,2026-04-16,fetch,45m,x,First of its kind\ntray,2026-04-16,choose,45m,x,dull edge\n");
        (await Ran.In(folder.Path, "log", "import", "good.csv", "-q")).WentWell();
        using (var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!)
        {
            Assert.Equal([Setback.FirstOfItsKind, Setback.DullEdge], log.All().Select(entry => entry.Setback));
        }

        folder.With("bad.csv", "date,operation,quantity,took\n2026-04-16,rip,0,45m\n2026-04-16,rip,-1,45m\n2026-04-16,rip,1e999,45m\n2026-04-16,rip,lots,45m\n");
        var ran = await Ran.In(folder.Path, "log", "import", "bad.csv");
        Assert.StartsWith("bad.csv:2:16: '0' cannot be a quantity; expected a number of ft of cut, above zero", ran.Complaints[0], StringComparison.Ordinal);
        Assert.StartsWith("bad.csv:3:16: '-1' cannot be a quantity", ran.Complaints[1], StringComparison.Ordinal);
        Assert.StartsWith("bad.csv:4:16: '1e999' cannot be a quantity", ran.Complaints[2], StringComparison.Ordinal);
        Assert.StartsWith("bad.csv:5:16: 'lots' is not a number", ran.Complaints[3], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Rows_of_a_sheet_that_stay_empty_are_left_out()
    {
        (await Ran.In(folder.Path, "log", "sheet", "tray", "times.csv")).WentWell();
        var lines = await File.ReadAllLinesAsync(folder.File("times.csv"), TestContext.Current.CancellationToken);
        lines[1] = lines[1][..^2] + "45m,x,";
        await File.WriteAllLinesAsync(folder.File("times.csv"), lines, TestContext.Current.CancellationToken);
        var ran = (await Ran.In(folder.Path, "log", "import", "times.csv", "--on", "2026-04-16")).WentWell();
        Assert.Equal($"1 entry logged, number 1; {lines.Length - 2} rows not filled in.\n", ran.Out);
        Assert.Equal(3, (await Ran.In(folder.Path, "log", "sheet", "tray", "times.csv")).ExitCode);
    }

    [Fact]
    public async Task A_task_of_a_job_that_cannot_be_planned_any_more_is_logged_by_the_name_that_the_log_has_seen()
    {
        (await Ran.In(folder.Path, "log", "add", "tray", "fetch", "45m", "-q")).WentWell();
        File.Delete(folder.File("jobs", "tray.yaml"));
        var ran = await Ran.In(folder.Path, "log", "add", "tray", "fetch", "15m");
        Assert.Equal(0, ran.ExitCode);
        Assert.Equal("tray has no file any more; its tasks are those that the log has seen\n", ran.Error);
        using var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        Assert.Equal(log.All()[0].Work, log.All()[1].Work);
    }

    public void Dispose() => folder.Dispose();
}
