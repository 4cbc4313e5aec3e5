using System.Net;
using NodaTime;
using Xunit;

namespace ShopDays.Bench.Tests.Doing;

public sealed class TapsTests
{
    private static readonly (string, string)[] Fetch = [("who", "maker"), ("job", "tray"), ("task", "fetch and stack the boards")];

    [Fact]
    public async Task A_task_that_is_begun_paused_gone_on_with_and_done_is_logged_without_its_pause()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(7);
        await visitor.Send("/done", [.. Fetch, ("how", "pause")]);
        bench.Clock.AdvanceMinutes(30);
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(5);
        var (status, _) = await visitor.Send("/done", [.. Fetch, ("how", "done"), ("note", "by hand"), ("setback", "cold")]);
        var entry = Assert.Single(bench.Logged());
        Assert.Equal(HttpStatusCode.Redirect, status);
        Assert.Equal((12.0, true, "by hand", Logbook.Setback.Cold, "tray"), (entry.Took.Minutes, entry.Finished, entry.Note, entry.Setback, entry.Job));
        Assert.NotNull(entry.Work);
        Assert.Empty(bench.Begun());
    }

    [Fact]
    public async Task A_form_that_comes_twice_logs_once()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(9);
        (string, string)[] done = [.. Fetch, ("how", "done"), ("once", "0192f5a0-0000-7000-8000-00000000000a")];
        var first = await visitor.Send("/done", done);
        var second = await visitor.Send("/done", done);
        Assert.Equal((HttpStatusCode.Redirect, HttpStatusCode.Redirect), (first.Status, second.Status));
        Assert.Single(bench.Logged());
    }

    [Fact]
    public async Task Time_at_a_task_that_is_done_can_be_added_afterwards_and_every_task_of_the_job_stands_on_the_sheet_once()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(9);
        await visitor.Send("/done", [.. Fetch, ("how", "done")]);
        var page = await visitor.LookWhenWorkedOut("/sheet?job=tray");
        var marks = System.Text.RegularExpressions.Regex.Matches(page, "name=\"took-([A-Z]+)\"").Select(match => match.Groups[1].Value).ToList();
        var done = System.Text.RegularExpressions.Regex.Match(page, "took-([A-Z]+)\"><span class=\"mark\">[A-Z]+</span> fetch and stack the boards").Groups[1].Value;
        Assert.Distinct(marks);
        Assert.Equal(29, marks.Count);

        await visitor.Send("/sheet", ("who", "maker"), ("job", "tray"), ("on", "2027-02-27"), ($"took-{done}", "12m"));
        Assert.Equal([12, 9], bench.Logged().Select(entry => entry.Took.Minutes));
        Assert.All(bench.Logged(), entry => Assert.Equal("fetch and stack the boards", entry.Task));
    }

    [Fact]
    public async Task A_sheet_that_comes_twice_logs_its_tasks_once()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        var (_, page) = await visitor.Look("/sheet?job=tray");
        var marks = System.Text.RegularExpressions.Regex.Matches(page, "name=\"took-([A-Z]+)\"").Select(match => match.Groups[1].Value).ToList();
        (string, string)[] sheet = [("who", "maker"), ("job", "tray"), ("on", "2027-03-01"), ("once", "0192f5a0-0000-7000-8000-00000000000b"), ($"took-{marks[0]}", "10m"), ($"took-{marks[1]}", "1h05"), ($"half-{marks[1]}", "yes")];
        await visitor.Send("/sheet", sheet);
        await visitor.Send("/sheet", sheet);
        Assert.Equal([(10.0, true), (65.0, false)], bench.Logged().Select(entry => (entry.Took.Minutes, entry.Finished)));
    }

    [Fact]
    public async Task One_worker_is_at_one_task_at_a_time()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        var (status, page) = await visitor.Send("/start", ("who", "maker"), ("job", "tray"), ("task", "choose and chalk out all parts"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.Contains("Pause or end that first", page, StringComparison.Ordinal);
        Assert.Single(bench.Begun());
    }

    [Fact]
    public async Task A_pause_from_a_page_that_is_out_of_date_lays_nothing_else_aside()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(5);
        await visitor.Send("/done", [.. Fetch, ("how", "pause")]);
        await visitor.Send("/start", ("who", "maker"), ("job", "tray"), ("task", "choose and chalk out all parts"));
        bench.Clock.AdvanceMinutes(5);
        await visitor.Send("/done", [.. Fetch, ("how", "pause")]);
        Assert.Equal("choose and chalk out all parts", Assert.Single(bench.Begun(), work => work.PausedAt is null).Task);
    }

    [Fact]
    public async Task A_task_that_ran_on_overnight_is_asked_about_and_not_counted()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        bench.Clock.Advance(Duration.FromHours(23));
        var (_, page) = await visitor.Look("/");
        Assert.Contains("How long did it take?", page, StringComparison.Ordinal);
        var (refused, why) = await visitor.Send("/done", [.. Fetch, ("how", "done")]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused);
        Assert.Contains("Say how long it took", why, StringComparison.Ordinal);
        Assert.Empty(bench.Logged());
        await visitor.Send("/done", [.. Fetch, ("how", "done"), ("took", "20m")]);
        var entry = Assert.Single(bench.Logged());
        Assert.Equal((20.0, new LocalDate(2027, 3, 1), (Instant?)null), (entry.Took.Minutes, entry.On.Date, entry.On.Ended));
    }

    [Fact]
    public async Task A_long_task_that_is_gone_on_with_in_the_morning_is_not_taken_for_a_forgotten_one()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(180);
        await visitor.Send("/done", [.. Fetch, ("how", "pause")]);
        bench.Clock.Advance(Duration.FromHours(20));
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(150);
        var (_, page) = await visitor.Look("/");
        Assert.DoesNotContain("How long did it take?", page, StringComparison.Ordinal);
        await visitor.Send("/done", [.. Fetch, ("how", "done")]);
        Assert.Equal(330, Assert.Single(bench.Logged()).Took.Minutes);
    }

    [Fact]
    public async Task A_task_goes_on_while_the_program_is_started_anew_and_its_page_can_still_be_sent()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        await bench.StartAnew();
        bench.Clock.AdvanceMinutes(11);
        visitor.GoOnAt(bench);
        var (_, page) = await visitor.Look("/");
        Assert.Contains(">0:11<", page, StringComparison.Ordinal);
        await visitor.Send("/done", [.. Fetch, ("how", "done")]);
        Assert.Equal(11, Assert.Single(bench.Logged()).Took.Minutes);
    }

    [Fact]
    public async Task What_is_logged_changes_the_forecast_on_the_next_page()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        var (_, before) = await visitor.Look("/job");
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(170);
        await visitor.Send("/done", [.. Fetch, ("how", "done")]);
        var after = await visitor.LookWhenWorkedOut("/job");
        Assert.NotEqual(Table(before), Table(after));

        static string Table(string page) => page[page.IndexOf("<table", StringComparison.Ordinal)..];
    }

    [Fact]
    public async Task An_entry_is_put_right_deleted_and_put_back_and_its_trace_says_so()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(9);
        await visitor.Send("/done", [.. Fetch, ("how", "done")]);
        await visitor.Send("/log/1/fix", ("took", "14m"), ("on", "2027-03-01"), ("worker", "maker"), ("finished", "yes"), ("setback", "none"), ("note", "looked again"), ("stopped", ""), ("why", "slip"));
        Assert.Equal((14.0, "looked again"), (bench.Logged()[0].Took.Minutes, bench.Logged()[0].Note));
        await visitor.Send("/log/1/delete", ("why", "twice"));
        Assert.Empty(bench.Logged());
        await visitor.Send("/log/1/restore");
        Assert.Single(bench.Logged());
        var (_, page) = await visitor.Look("/log/1");
        Assert.Equal(3, System.Text.RegularExpressions.Regex.Count(page, "<li>(corrected|deleted|restored)"));
    }
}
