using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>What was typed wrong (exit code 2), and files that are not there or cannot be written (exit code 3).</summary>
public sealed class WrongUseTests
{
    [Theory]
    [InlineData("Required command was not provided", "see: shopdays --help")]
    [InlineData("'lay'", "nearest to 'lay': layout", "lay")]
    [InlineData("'plna'", "nearest to 'plna': plan", "plna", "tray")]
    [InlineData("'--form'", "nearest to '--form': --from", "new", "stool", "--form", "stool")]
    [InlineData("'--pfd'", "nearest to '--pfd': --pdf", "plan", "tray", "--pfd", "tray.pdf")]
    [InlineData("'--pfd'", "nearest to '--pfd': --pdf", "plan", "--pfd", "tray.pdf")]
    [InlineData("'--jsn'", "nearest to '--jsn': --json", "check", "--jsn", "tray")]
    [InlineData("'JOB'", "see: shopdays layout --help", "layout")]
    [InlineData("'-5.5'", "see: shopdays estimate --help", "estimate", "tray", "--seed", "-5.5")]
    [InlineData("'dozen'", "see: shopdays estimate --help", "estimate", "tray", "--seed", "dozen")]
    [InlineData("'hard'", "see: shopdays layout --help", "layout", "tray", "--effort", "hard")]
    [InlineData("'--pdf'", "see: shopdays plan --help", "plan", "tray", "--pdf")]
    [InlineData("'--pdf'", "see: shopdays plan --help", "plan", "tray", "--pdf", "")]
    [InlineData("'@words'", "see: shopdays layout --help", "layout", "tray", "@words")]
    public async Task Wrong_use_is_named_with_what_may_have_been_meant(string named, string meant, params string[] typed)
    {
        using var folder = new FreshFolder().WithATray();
        var before = folder.Everything();
        var ran = await Ran.In(folder.Path, typed);
        Assert.Equal(2, ran.ExitCode);
        Assert.Contains(named, ran.Error, StringComparison.Ordinal);
        Assert.Contains(meant, ran.Complaints);
        Assert.DoesNotContain("System.", ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, folder.Everything());
    }

    [Theory]
    [InlineData("trai", "; nearest: tray\n")]
    [InlineData("jobs/trai.yaml", "; nearest: tray\n")]
    [InlineData("a chest of eleven drawers", "; expected tray\n")]
    public async Task A_job_that_is_not_there_is_told_with_the_nearest_name(string job, string end)
    {
        using var folder = new FreshFolder().WithATray();
        var ran = await Ran.In(folder.Path, "plan", job);
        Assert.Equal((3, ""), (ran.ExitCode, ran.Out));
        Assert.StartsWith($"no job is called '{job}' in ", ran.Error, StringComparison.Ordinal);
        Assert.EndsWith(end, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Outside_a_shop_the_maker_is_told_how_to_begin_one()
    {
        using var folder = new FreshFolder();
        var ran = await Ran.In(folder.Path, "plan", "tray");
        Assert.Equal((3, ""), (ran.ExitCode, ran.Out));
        Assert.Contains("shopdays new NAME", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_parts_list_that_is_not_there_is_named_at_its_line()
    {
        using var folder = new FreshFolder().WithATray().WithJob("listed", """
            job: Listed
            start: 2027-03-01
            stock: [{board: A, species: black cherry, size: 1500 mm x 200 mm x 25 mm}]
            parts-from: parts.csv

            """);
        var ran = await Ran.In(folder.Path, "layout", "listed");
        Assert.Equal((1, ""), (ran.ExitCode, ran.Out));
        Assert.StartsWith("jobs/listed.yaml:4:13: ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("parts.csv", ran.Error, StringComparison.Ordinal);
        Assert.Contains("is not there", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no/such/folder/tray.pdf", "has no folder to be written to")]
    [InlineData("jobs", "is a folder, not a file")]
    [InlineData("shop.yaml/tray.pdf", "has no folder to be written to")]
    public async Task Paper_that_cannot_be_written_leaves_nothing_behind(string pdf, string why)
    {
        using var folder = new FreshFolder().WithATray();
        var before = folder.Everything();
        var ran = await Ran.In(folder.Path, "plan", "tray", "--pdf", pdf);
        Assert.Equal((3, ""), (ran.ExitCode, ran.Out));
        Assert.StartsWith(pdf + " ", Assert.Single(ran.Complaints), StringComparison.Ordinal);
        Assert.Contains(why, ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, folder.Everything());
        Assert.False(Directory.Exists(folder.File("no")));
    }

    [Fact]
    public async Task A_new_job_never_takes_the_place_of_one_that_is_there()
    {
        using var folder = new FreshFolder().WithATray();
        var before = folder.Everything();
        var ran = await Ran.In(folder.Path, "new", "tray", "--from", "stool");
        Assert.Equal((3, ""), (ran.ExitCode, ran.Out));
        Assert.Contains("is there already", ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, folder.Everything());
    }
}
