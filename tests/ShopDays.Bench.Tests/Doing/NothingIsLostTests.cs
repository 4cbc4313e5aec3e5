using System.Net;
using System.Text.RegularExpressions;
using NodaTime;
using Xunit;

namespace ShopDays.Bench.Tests.Doing;

/// <summary>What a maker typed, or what a page stands for, is not dropped behind their back: it is kept, or it is said that it is not.</summary>
public sealed class NothingIsLostTests
{
    private static readonly (string, string)[] Fetch = [("who", "maker"), ("job", "tray"), ("task", "fetch and stack the boards")];

    [Theory]
    [InlineData("note", "the edge was dull")]
    [InlineData("setback", "cold")]
    [InlineData("took", "30m")]
    public async Task A_pause_that_comes_with_what_a_pause_does_not_keep_is_refused_and_the_task_goes_on(string field, string value)
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(5);
        var (status, page) = await visitor.Send("/done", [.. Fetch, ("how", "pause"), (field, value)]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.Contains("A pause keeps where you stopped and nothing else", page, StringComparison.Ordinal);
        Assert.Null(Assert.Single(bench.Begun()).PausedAt);
    }

    [Fact]
    public async Task A_page_that_was_sent_before_does_not_end_a_task_that_was_begun_anew_since()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        (string, string)[] half = [.. Fetch, ("how", "half"), ("once", "0192f5a0-0000-7000-8000-00000000000c")];
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(5);
        await visitor.Send("/done", half);
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(5);
        var (status, page) = await visitor.Send("/done", half);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.Contains("was begun anew since", page, StringComparison.Ordinal);
        Assert.Single(bench.Logged());
        Assert.Single(bench.Begun());
    }

    [Fact]
    public async Task A_task_is_begun_for_nobody_but_who_is_named()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        var (status, _) = await visitor.Send("/start", [("who", "somebody who has left"), .. Fetch[1..]]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.Empty(bench.Begun());
    }

    [Fact]
    public async Task A_sheet_that_cannot_be_read_says_at_which_tasks()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        var marks = Regex.Matches((await visitor.Look("/sheet?job=tray")).Page, "name=\"took-([A-Z]+)\"").Select(match => match.Groups[1].Value).ToList();
        var (status, page) = await visitor.Send("/sheet", ("who", "maker"), ("job", "tray"), ("on", "2027-03-01"), ($"took-{marks[0]}", "10m"), ($"took-{marks[1]}", "soon"), ($"took-{marks[2]}", "0m"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.Contains($"Time of {marks[1]} ", page, StringComparison.Ordinal);
        Assert.Contains($"Time of {marks[2]} ", page, StringComparison.Ordinal);
        Assert.DoesNotContain($"Time of {marks[0]} ", page, StringComparison.Ordinal);
        Assert.Empty(bench.Logged());
    }

    [Fact]
    public async Task A_sign_that_turns_the_direction_of_writing_is_refused_wherever_in_a_note_it_stands()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(5);
        var (status, _) = await visitor.Send("/done", [.. Fetch, ("how", "done"), ("note", new string('a', 400) + "\u202Eb")]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.Empty(bench.Logged());
    }

    [Fact]
    [Trait("Source", "RFC 6265, 6.1: a browser keeps 4096 bytes of a cookie at least, with its name and all that is said of it")]
    public async Task What_is_said_of_a_change_is_never_longer_than_a_browser_keeps()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(5);
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri("/done", UriKind.Relative));
        request.Content = new FormUrlEncodedContent([
            new("form-token", await visitor.Token()),
            .. Fetch.Select(one => new KeyValuePair<string, string>(one.Item1, one.Item2)),
            new("how", "done"),
            new("note", string.Concat(Enumerable.Repeat("\U0001F528", 250))),
        ]);
        using var answer = await visitor.Ask(request);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.All(answer.Headers.GetValues("Set-Cookie"), cookie => Assert.InRange(cookie.Length, 1, 4096));
        Assert.Contains("Logged 1", (await visitor.Look("/")).Page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_log_that_is_taken_away_while_the_bench_is_open_is_not_shown_any_longer()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(5);
        await visitor.Send("/done", [.. Fetch, ("how", "done")]);
        Assert.Contains("1 entry", (await visitor.Look("/log")).Page, StringComparison.Ordinal);
        foreach (var file in Directory.GetFiles(bench.Folder.Path, "shop.db*"))
        {
            File.Delete(file);
        }

        Assert.Contains("Nothing is logged yet", (await visitor.Look("/log")).Page, StringComparison.Ordinal);
        await visitor.Send("/start", ("who", "maker"), ("job", "tray"), ("task", "choose and chalk out all parts"));
        var (_, page) = await visitor.Look("/");
        Assert.Matches("class=\"at-hand\"[\\s\\S]*choose and chalk out all parts[\\s\\S]*class=\"clock\"", page);
        Assert.Equal("choose and chalk out all parts", Assert.Single(bench.Begun()).Task);
    }

    [Fact]
    public async Task A_mistake_in_a_file_is_told_no_longer_once_the_file_is_put_back_as_it_had_been()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        var file = Path.Combine(bench.Folder.Path, "shop.yaml");
        await visitor.LookWhenWorkedOut("/");
        File.Move(file, file + ".away");
        bench.Clock.Advance(Duration.FromSeconds(2));
        string page;
        do
        {
            (_, page) = await visitor.Look("/");
        }
        while (!page.Contains("shop.yaml is not there", StringComparison.Ordinal));

        File.Move(file + ".away", file);
        bench.Clock.Advance(Duration.FromSeconds(2));
        Assert.DoesNotContain("shop.yaml is not there", await visitor.LookWhenWorkedOut("/"), StringComparison.Ordinal);
    }
}
