using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>Times typed back from paper.</summary>
public sealed class LogAddTests : IDisposable
{
    private readonly FreshFolder folder = new FreshFolder().WithATray();

    [Fact]
    public async Task Tasks_are_named_by_mark_by_name_or_by_words_of_it_many_in_one_go()
    {
        var sheet = (await Ran.In(folder.Path, "log", "sheet", "tray")).WentWell().Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("job,date,mark,task,start,stop,took,done,note", sheet[0]);
        var marks = sheet[1..].Select(line => line.Split(',')[2]).ToList();
        Assert.Equal(marks.Count, marks.Distinct().Count());
        var whole = sheet.Single(line => line.Contains("fetch and stack", StringComparison.Ordinal)).Split(',')[3];

        var said = (await Ran.In(folder.Path, "log", "add", "tray", marks[1], "45m", whole, "1h10", "half", "choose", "chalk", "20", "min", "--on", "2026-04-17")).Complaints;
        Assert.Contains(said, line => line.Contains("'choose chalk 20 min' has no time behind it", StringComparison.Ordinal));
        var ran = (await Ran.In(folder.Path, "log", "add", "tray", marks[2], "45m", whole, "1h10", "half", "choose", "chalk", "20m", "--on", "2026-04-17", "--note", "'); drop table entry; --\u001b[31m")).WentWell();
        Assert.Equal(["1", "2", "3"], ran.Out.Split('\n').Where(line => line.Contains(": tray, ", StringComparison.Ordinal)).Select(line => line.Split(':')[0]));

        using var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        Assert.Equal([45d, 70d, 20d], log.All().Select(entry => entry.Took.Minutes));
        Assert.Equal([true, false, true], log.All().Select(entry => entry.Finished));
        Assert.All(log.All(), entry => Assert.Equal(("tray", "'); drop table entry; --\u001b[31m", "maker"), (entry.Job, entry.Note, entry.Worker)));
        Assert.Equal(whole, log.All()[1].Task);
        Assert.Null(log.All()[1].Work);
        Assert.NotNull(log.All()[0].Work);

        var list = (await Ran.In(folder.Path, "log", "list")).WentWell().Out;
        Assert.DoesNotContain('\u001b', list);
        Assert.All(list.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    public async Task A_mark_on_paper_of_an_older_version_finds_its_coat_though_there_may_be_another_coat_since(int coats)
    {
        var former = FormattableString.Invariant($"wiping varnish (thinned), coat 1 of {coats}: frame");
        var ran = await Ran.In(folder.Path, "log", "add", "tray", new TaskMarks([former]).Of(former), "14m", former, "2m", "--on", "2026-04-17");
        ran.WentWell();
        using var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        Assert.All(log.All(), entry => Assert.Equal("wiping varnish (thinned), coat 1: frame", entry.Task));
        Assert.Equal([14d, 2], log.All().Select(entry => entry.Took.Minutes));
        Assert.NotNull(log.All()[0].Work);
    }

    [Theory]
    [InlineData("no task of tray is called 'plane the moon'; type its mark, its name or words of it", "tray", "plane the moon", "45m")]
    [InlineData("'side' has no time behind it; expected a task and a time, such as KDR 45m, with half behind it where it goes on another day", "tray", "side")]
    [InlineData("no worker of the shop is called 'makr'; expected maker; nearest: maker", "tray", "side", "45m", "--worker", "makr")]
    [InlineData("Fri 1 Jan 2100 is still to come", "tray", "side", "45m", "--on", "2100-01-01")]
    [InlineData("no operation is called 'ripp'; expected one of 55 operations; nearest: rip", "--timed", "ripp", "12", "20m")]
    [InlineData("'0m' is no time at all; expected more than zero", "tray", "side", "0m")]
    [InlineData("'1:30' ", "tray", "side", "1:30")]
    [InlineData("'45' has no unit; write 45m for minutes", "tray", "side", "45")]
    [InlineData("'999999999' is more than anybody has done; expected at most 1,000,000", "--timed", "rip", "999999999", "20m")]
    [InlineData("'kg' does not count this operation; expected ft of cut", "--timed", "rip", "12", "kg", "20m")]
    [InlineData("'rip 20m' does not say how much was done", "--timed", "rip", "20m")]
    [InlineData("no method of 'rip' is called 'axe'", "--timed", "rip", "12", "20m", "--method", "axe")]
    public async Task A_slip_is_told_and_nothing_is_logged(string complaint, params string[] typed)
    {
        var ran = await Ran.In(folder.Path, ["log", "add", .. typed]);
        Assert.Equal((1, ""), (ran.ExitCode, ran.Out));
        Assert.StartsWith(complaint, ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder.File(ShopLog.FileName)));
    }

    [Fact]
    public async Task A_mark_with_a_slip_is_offered_with_its_task()
    {
        // SDR with a letter that no mark has: one slip away is that mark, or another with the same two letters.
        var ran = await Ran.In(folder.Path, "log", "add", "tray", "SDA", "45m");
        Assert.Equal((1, ""), (ran.ExitCode, ran.Out));
        var offered = System.Text.RegularExpressions.Regex.Match(ran.Error, "nearest: (SD[A-Z]|[A-Z]DA|S[A-Z]A) '(.+?)'");
        Assert.True(offered.Success, ran.Error);
        (await Ran.In(folder.Path, "log", "add", "tray", offered.Groups[1].Value, "45m", "-q")).WentWell();
        using var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        Assert.Equal(offered.Groups[2].Value, Assert.Single(log.All()).Task);
    }

    [Fact]
    public async Task Work_that_passes_over_what_comes_before_it_is_asked_about_with_what_to_type()
    {
        var first = (await Ran.In(folder.Path, "log", "add", "tray", "fetch", "20m")).WentWell().Out;
        Assert.DoesNotContain("written down", first, StringComparison.Ordinal);
        var said = (await Ran.In(folder.Path, "log", "add", "tray", "glue up", "20m")).WentWell().Out.ReplaceLineEndings(" ");
        Assert.Matches("[A-Z]{3} glue up: frame is written down as done, and [A-Z]{3} [^.]+, which comes before it, is not\\.", said);
        var mark = System.Text.RegularExpressions.Regex.Match(said, "and ([A-Z]{3}) [^.]+, which comes").Groups[1].Value;
        Assert.Contains($"shopdays log add tray {mark} TIME", said, StringComparison.Ordinal);
        Assert.Contains($"shopdays log add tray {mark} TIME", (await Ran.In(folder.Path, "plan", "tray")).Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains($"shopdays log add tray {mark} TIME", (await Ran.In(folder.Path, "progress", "tray")).Out.ReplaceLineEndings(" "), StringComparison.Ordinal);

        // What is begun is asked about too, and quiet keeps quiet.
        var begun = (await Ran.In(folder.Path, "log", "start", "tray", "coat 1")).WentWell().Out.ReplaceLineEndings(" ");
        Assert.Contains("is written down as begun, and", begun, StringComparison.Ordinal);
        Assert.Equal("", (await Ran.In(folder.Path, "log", "add", "tray", "rub down", "5m", "-q")).WentWell().Out);
    }

    [Fact]
    public async Task Work_timed_by_itself_keeps_what_it_was_done_in()
    {
        (await Ran.In(folder.Path, "log", "add", "--timed", "rip", "3", "m", "20m", "--thickness", "50 mm", "--species", "white oak", "--method", "band saw", "-q")).WentWell();
        using var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        var work = Assert.Single(log.All()).Work!;
        Assert.Equal(("rip", "band saw", "ft of cut"), (work.Operation, work.Method, work.Unit));

        // 3 m in feet of 304.8 mm and 50 mm in inches of 25.4 mm (exact by definition since 1959); lbf of white oak: Wood Handbook, table 5-3b.
        Assert.Equal(3000 / 304.8, work.Quantity, 1e-9);
        Assert.Equal(50 / 25.4, work.Covariates[ShopDays.Work.Covariate.Thickness], 1e-9);
        Assert.Equal(1360, work.Covariates[ShopDays.Work.Covariate.Hardness]);
    }

    [Fact]
    public async Task Of_many_lines_one_with_a_mistake_is_told_by_its_number_and_the_others_are_logged()
    {
        using var bench = Bench.In(folder.Path, "log", "add", "--timed", "-");
        await bench.Type("rip 12 ft 20m # first\n\nrip 12 kg 20m\nrip 6 ft 10m");
        var (exitCode, said, complaints) = await bench.EndAnyhow();
        Assert.Equal(1, exitCode);
        Assert.Equal(2, said.Count);
        Assert.Equal("line 3: 'kg' does not count this operation; expected ft of cut\n1 line with mistakes; the others are logged\n", complaints);
    }

    [Theory]
    [InlineData("'NaN' is no number of setups; expected a number of zero or more, at most 10,000", "--timed", "rip", "12", "20m", "--setups", "NaN")]
    [InlineData("--thickness can only stand with --timed", "tray", "side", "20m", "--thickness", "50mm")]
    [InlineData("--quantity cannot stand with --timed", "--timed", "rip", "12", "20m", "--quantity", "3")]
    [InlineData("--setback: no setback is called 'dul edge'", "tray", "side", "20m", "--setback", "dul edge")]
    public async Task An_option_that_means_nothing_here_is_wrong_use(string complaint, params string[] typed)
    {
        var ran = await Ran.In(folder.Path, ["log", "add", .. typed]);
        Assert.Equal((2, ""), (ran.ExitCode, ran.Out));
        Assert.StartsWith(complaint, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_time_of_two_words_is_one_and_a_number_of_a_name_is_none()
    {
        (await Ran.In(folder.Path, "log", "add", "tray", "fetch", "1h", "30m", "half", "coat", "1", "5m", "-q")).WentWell();
        using var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        Assert.Equal([(90d, false), (5d, true)], log.All().Select(entry => (entry.Took.Minutes, entry.Finished)));
        Assert.Contains("coat 1", log.All()[1].Task, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_stretch_cannot_do_more_than_the_whole_and_the_last_of_it_makes_the_task_whole()
    {
        var refused = await Ran.In(folder.Path, "log", "add", "tray", "SDR", "20m", "half", "--quantity", "9999");
        Assert.Equal(1, refused.ExitCode);
        Assert.Contains("9999 is more than all of '", refused.Error, StringComparison.Ordinal);
        (await Ran.In(folder.Path, "log", "add", "tray", "SDR", "20m", "-q")).WentWell();
        (await Ran.In(folder.Path, "log", "add", "tray", "SDR", "20m", "--quantity", "1", "-q")).WentWell();
        using var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        Assert.Equal(log.All()[0].Work, log.All()[1].Work);
    }

    [Fact]
    public async Task A_job_that_has_a_file_is_not_taken_from_the_log_because_its_name_was_typed_wrong()
    {
        (await Ran.In(folder.Path, "log", "add", "tray", "fetch", "45m", "-q")).WentWell();
        var ran = await Ran.In(folder.Path, "log", "add", "tray.yaml", "fetch", "5m");
        Assert.Equal((3, ""), (ran.ExitCode, ran.Out));
        Assert.StartsWith("no job is called 'tray.yaml'", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_odd_time_is_asked_about_at_once_and_quiet_keeps_quiet()
    {
        (await Ran.In(folder.Path, "log", "add", "--timed", "rip", "12", "m", "20m", "-q")).WentWell();
        var usual = (await Ran.In(folder.Path, "log", "add", "--timed", "rip", "12", "m", "22m")).WentWell();
        Assert.Single(usual.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        var odd = (await Ran.In(folder.Path, "log", "add", "--timed", "rip", "12", "m", "40h")).WentWell();
        Assert.Contains("expected between", odd.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.All(new[] { "shopdays log keep 3 ", "shopdays log unusual 3 ", "shopdays log fix 3 --took TIME" }, command => Assert.Contains(command, odd.Out, StringComparison.Ordinal));
        var json = (await Ran.In(folder.Path, "log", "add", "--timed", "rip", "12", "m", "41h", "--json")).WentWell().ReadJson();
        Assert.Equal([4d], json.List("odd").Select(number => number.GetDouble()));
        Assert.Equal("", (await Ran.In(folder.Path, "log", "add", "--timed", "rip", "12", "m", "42h", "-q")).WentWell().Out);
    }

    public void Dispose() => folder.Dispose();
}
