using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>Where a maker stopped: said when a task is laid aside or logged, and shown first at the next session.</summary>
public sealed class StoppedTests : IDisposable
{
    private readonly FreshFolder folder = new FreshFolder().WithATray();

    [Fact]
    public async Task What_is_said_with_a_pause_is_shown_when_the_task_goes_on_and_is_gone_when_it_is_done()
    {
        (await Type("log", "start", "tray", "choose")).WentWell();
        Assert.Contains("Where you stopped: end grain still to be chalked", OnOneLine((await Type("log", "pause", "--stopped", "end grain still to be chalked")).WentWell()), StringComparison.Ordinal);
        Assert.Contains("choose and chalk out all parts: end grain still to be chalked", OnOneLine((await Type("log", "start")).WentWell()), StringComparison.Ordinal);

        // A pause that says nothing leaves what was said; half done, it goes into the log.
        (await Type("log", "pause")).WentWell();
        Assert.Equal("end grain still to be chalked", (await Type("log", "done", "--half", "--took", "20m", "--json")).WentWell().ReadJson().Text("stopped"));
        Assert.Contains(": end grain still to be chalked", OnOneLine((await Type("log", "start", "tray", "choose")).WentWell()), StringComparison.Ordinal);
        Assert.Equal("", (await Type("log", "done", "--took", "10m", "--json")).WentWell().ReadJson().Text("stopped"));
        Assert.DoesNotContain("Where you stopped", (await Type("log", "start", "tray", "fetch")).WentWell().Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_and_progress_show_the_newest_note_before_anything_else()
    {
        (await Type("log", "add", "tray", "fetch", "10m", "half", "choose", "20m", "half", "--stopped", "two ends are chalked, the sides lie by the door")).WentWell();
        var plan = (await Type("plan", "tray", "--effort", "quick", "--schedules", "200")).WentWell().Out.Split('\n');
        var at = Array.FindIndex(plan, line => line.Contains("Where you stopped", StringComparison.Ordinal));
        Assert.Contains("choose and chalk out all parts:", plan[at] + plan[at + 1], StringComparison.Ordinal);
        Assert.Contains("maker", plan.Skip(at).First(line => line.Contains("  maker", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.DoesNotContain(plan.Take(at), line => line.EndsWith("  maker", StringComparison.Ordinal));
        Assert.All(plan, line => Assert.InRange(line.Length, 0, 80));

        var noted = (await Type("plan", "tray", "--effort", "quick", "--schedules", "200", "--json")).WentWell().ReadJson().Field("stopped");
        Assert.Equal(("choose and chalk out all parts", "two ends are chalked, the sides lie by the door"), (noted.Text("task"), noted.Text("text")));
        Assert.Contains("Where you stopped", (await Type("progress", "tray", "--effort", "quick", "--schedules", "200")).WentWell().Out.Split('\n')[1..3].Aggregate(string.Concat), StringComparison.Ordinal);
        Assert.DoesNotContain("Where you stopped", (await Type("plan", "tray", "--whole", "--effort", "quick", "--schedules", "200")).WentWell().Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_goes_with_the_last_of_several_tasks_and_can_be_put_right()
    {
        (await Type("log", "add", "tray", "fetch", "10m", "half", "choose", "20m", "half", "--stopped", "at the dor")).WentWell();
        using (var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!)
        {
            Assert.Equal(["", "at the dor"], log.All().OrderBy(entry => entry.Id.Number).Select(entry => entry.Stopped));
        }

        Assert.Contains("stopped: at the dor, before; at the door, now", OnOneLine((await Type("log", "fix", "2", "--stopped", "at the door")).WentWell()), StringComparison.Ordinal);
        Assert.Equal("at the door", (await Type("log", "show", "2", "--json")).WentWell().ReadJson().Field("entry").Text("stopped"));
        Assert.Contains("stopped: at the door, before; nothing, now", OnOneLine((await Type("log", "fix", "2", "--stopped", "")).WentWell()), StringComparison.Ordinal);
        using var after = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        Assert.Equal(["at the dor", "at the door"], after.TraceOf(new(2)).Select(line => line.Before.Stopped));
    }

    [Theory]
    [InlineData("a\ttab", "a sign in it is no letter, figure or mark; expected text on one line")]
    [InlineData("red \u001b[31m", "a sign in it is no letter, figure or mark; expected text on one line")]
    [InlineData("\u202eturned", "a sign in it is no letter, figure or mark; expected text on one line")]
    [InlineData(null, "a note of 241 letters is too long; expected 240 at most")]
    public async Task What_cannot_be_kept_is_refused_and_nothing_is_logged(string? text, string complaint)
    {
        var refused = await Type("log", "add", "tray", "choose", "20m", "half", "--stopped", text ?? new string('x', 241));
        Assert.Equal(2, refused.ExitCode);
        Assert.Contains("--stopped: " + complaint, refused.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder.File(ShopLog.FileName)));
    }

    [Fact]
    public async Task Work_outside_a_job_is_not_gone_on_with()
    {
        var refused = await Type("log", "add", "--timed", "rip", "12", "ft", "20m", "--stopped", "at the knot");
        Assert.Equal((2, true), (refused.ExitCode, refused.Error.Contains("--stopped cannot stand with --timed", StringComparison.Ordinal)));
        (await Type("log", "add", "--timed", "rip", "12", "ft", "20m")).WentWell();
        Assert.Equal(1, (await Type("log", "fix", "1", "--stopped", "at the knot")).ExitCode);
    }

    [Fact]
    public async Task The_paper_has_it_on_its_first_day_sheet_and_on_no_other()
    {
        (await Type("log", "add", "tray", "choose", "20m", "half", "--stopped", "two ends are chalked")).WentWell();
        var paper = folder.File("plan.pdf");
        (await Type("plan", "tray", "--effort", "quick", "--schedules", "200", "--pdf", paper)).WentWell();
        using var file = UglyToad.PdfPig.PdfDocument.Open(paper);
        var pages = file.GetPages().Select(page => ReadPaper.Squeezed(page.Text)).ToList();
        var with = pages.Where(page => page.Contains("twoendsarechalked", StringComparison.Ordinal)).ToList();
        Assert.Contains("Shopday1of", Assert.Single(with), StringComparison.Ordinal);
    }

    public void Dispose() => folder.Dispose();

    private static string OnOneLine(Ran ran) => string.Join(' ', ran.Out.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private Task<Ran> Type(params string[] words) => Ran.In(folder.Path, words);
}
