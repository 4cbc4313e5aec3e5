using System.Net;
using Xunit;

namespace ShopDays.Bench.Tests.Doors;

/// <summary>What nobody who means well sends: nothing of it runs, nothing of it is logged, and nothing outside the shop is read.</summary>
[Trait("Source", "OWASP Web Security Testing Guide, version 4.2: input validation, session management, and file handling; OWASP Cross-Site Request Forgery Prevention and Secure Headers, in their points; the inputs are our own")]
public sealed class HostileTests(BenchToLookAt shared) : IClassFixture<BenchToLookAt>
{
    private const int Machines = 6;

    private static readonly string[] Texts =
    [
        "<script>alert(1)</script>", "\"><img src=x onerror=alert(1)>", "'><svg/onload=alert(1)>", "</title><script>alert(1)</script>", "javascript:alert(1)",
        "' or '1'='1", "'; drop table entry; --", "\" union select key from entry --", "1; pragma user_version = 99", "') on conflict do nothing --",
        "../../etc/passwd", "..\\..\\windows\\win.ini", "/etc/passwd", "%2e%2e%2fshop.yaml", "jobs/../shop",
        "{{7*7}}", "${7*7}", "@(1+1)", "$(reboot)", "`reboot`", "; reboot", "| reboot", "& reboot &",
        "\r\nSet-Cookie: bench-pass=1", "a\r\nLocation: http://elsewhere.example/", "\u0000", "a\u0000b", "\u202Egnp.exe", "\uFEFF", "\u2028",
        "=1+1", "+1", "@SUM(1)", "NaN", "Infinity", "-1", "1e308", "99999999999999999999", "0x10", "١٢",
        new string('a', 5000), new string('\u0301', 300), "😀", "()&<>\"'/", "null",
    ];

    private static readonly string[] Paths =
    [
        "/../shop.yaml", "/..%2fshop.yaml", "/%2e%2e/shop.yaml", "/shop.yaml", "/shop.db", "/.bench/key", "/jobs/tray.yaml", "/look/../shop.db", "/look/x/bench.css", "/log/0", "/log/-1",
        "/log/99999999999999999999", "/log/1;drop", "/log/1/fix", "/piece?job=..%2f..%2fetc&part=passwd", "/piece?job=tray&part=%3Cscript%3E", "/job?job=%00", "/log?page=-5", "/log?page=x", "/log?page=99999999999",
        "/sheet?job=%27or%271", "/job/plan.pdf?job=../../x", "/wp-admin", "/.git/config", "//elsewhere.example/", "/%c0%ae%c0%ae/", "/job/plan.pdf", "/?key=abc", "/live/x", "/who",
    ];

    [Fact]
    public async Task No_text_in_any_field_of_any_form_runs_or_breaks_anything()
    {
        await using var bench = await OpenBench.Of();
        (string Path, string[] Fields)[] forms =
        [
            ("/start", ["who", "job", "task"]),
            ("/done", ["who", "job", "task", "how", "took", "note", "setback", "stopped", "once"]),
            ("/drop", ["who", "job", "task"]),
            ("/who", ["who", "back"]),
            ("/sheet", ["job", "who", "on", "once"]),
            ("/log/1/fix", ["took", "on", "worker", "finished", "setback", "note", "stopped", "why"]),
            ("/log/1/delete", ["why"]),
        ];
        var sent = 0;
        await Task.WhenAll(Enumerable.Range(0, Machines).Select(async machine =>
        {
            using var visitor = new Visitor(bench, (byte)(machine + 1));
            var token = await visitor.Token();
            foreach (var text in Texts.Where((_, place) => place % Machines == machine))
            {
                foreach (var (path, fields) in forms)
                {
                    var (status, page) = await visitor.SendWith(token, path, fields.Select(field => (field, text)));
                    Interlocked.Increment(ref sent);
                    Assert.True(status is HttpStatusCode.UnprocessableEntity or HttpStatusCode.Redirect or HttpStatusCode.BadRequest or HttpStatusCode.TooManyRequests, $"{path} answers {status} to {text}");
                    Assert.DoesNotContain("<script>alert", page, StringComparison.OrdinalIgnoreCase);
                    Assert.DoesNotContain("<img src=x", page, StringComparison.OrdinalIgnoreCase);
                    Assert.DoesNotContain("<svg/onload", page, StringComparison.OrdinalIgnoreCase);
                    Assert.DoesNotContain("   at ShopDays", page, StringComparison.Ordinal);
                }
            }
        }));
        Assert.True(sent >= 150);
        Assert.Empty(bench.Logged());
        Assert.Empty(bench.Begun());
    }

    [Fact]
    public async Task No_path_leads_out_of_the_pages()
    {
        var bench = shared.Bench;
        using var visitor = new Visitor(bench);
        foreach (var path in Paths)
        {
            var (status, page) = await visitor.Look(bench.Address.TrimEnd('/') + path);
            Assert.True((int)status < 500, $"{path}: {status}");
            Assert.DoesNotContain("Gannet Shed\nplace", page, StringComparison.Ordinal);
            Assert.DoesNotContain("root:", page, StringComparison.Ordinal);
            Assert.DoesNotContain("SQLite format", page, StringComparison.Ordinal);
            Assert.DoesNotContain("<script>", page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task What_a_maker_writes_is_shown_as_it_is_and_never_as_a_part_of_the_page()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        (string, string)[] fetch = [("who", "maker"), ("job", "tray"), ("task", "fetch and stack the boards")];
        await visitor.Send("/start", fetch);
        bench.Clock.AdvanceMinutes(5);
        await visitor.Send("/done", [.. fetch, ("how", "half"), ("note", "<b>bold</b> & \"so\""), ("stopped", "<i>here</i>")]);
        foreach (var path in new[] { "/", "/log", "/log/1", "/job" })
        {
            var page = await visitor.LookWhenWorkedOut(path);
            Assert.DoesNotContain("<b>bold", page, StringComparison.Ordinal);
            Assert.DoesNotContain("<i>here", page, StringComparison.Ordinal);
        }

        Assert.Contains("&lt;i&gt;here", (await visitor.Look("/")).Page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Origin", "http://elsewhere.example")]
    [InlineData("Origin", "null")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    public async Task A_change_that_comes_from_another_site_is_refused_even_with_a_token(string header, string value)
    {
        var bench = shared.Bench;
        using var visitor = new Visitor(bench);
        using var request = new HttpRequestMessage(HttpMethod.Post, "/start");
        request.Headers.Add(header, value);
        request.Content = new FormUrlEncodedContent([new("form-token", await visitor.Token()), new("who", "maker"), new("job", "tray"), new("task", "fetch and stack the boards")]);
        using var answer = await visitor.Ask(request);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Empty(bench.Begun());
    }

    [Theory]
    [InlineData("/start")]
    [InlineData("/done")]
    [InlineData("/drop")]
    [InlineData("/who")]
    [InlineData("/sheet")]
    [InlineData("/log/1/fix")]
    [InlineData("/log/1/delete")]
    [InlineData("/log/1/restore")]
    [InlineData("/log/1/keep")]
    [InlineData("/log/1/unusual")]
    public async Task A_change_without_a_token_is_refused(string path)
    {
        var bench = shared.Bench;
        using var visitor = new Visitor(bench);
        await visitor.Look("/");
        Assert.Equal(HttpStatusCode.Forbidden, (await visitor.SendWith("", path, ("who", "maker"), ("job", "tray"), ("task", "fetch and stack the boards"))).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await visitor.SendWith("CfDJ8forged", path, ("who", "maker"))).Status);
    }

    [Theory]
    [InlineData("elsewhere.example")]
    [InlineData("127.0.0.1.elsewhere.example")]
    [InlineData("192.0.2.7")]
    public async Task A_name_that_is_not_the_benchs_own_is_not_answered(string host)
    {
        var bench = shared.Bench;
        using var visitor = new Visitor(bench);
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        request.Headers.Host = host;
        using var answer = await visitor.Ask(request);
        Assert.Equal(HttpStatusCode.MisdirectedRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/job")]
    [InlineData("/log/77")]
    [InlineData("/nowhere")]
    [InlineData("/look/000000000000/bench.css")]
    public async Task Every_answer_says_what_a_browser_must_not_do(string path)
    {
        var bench = shared.Bench;
        using var visitor = new Visitor(bench);
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        using var answer = await visitor.Ask(request);
        string Said(string name) => answer.Headers.TryGetValues(name, out var values) ? string.Join(", ", values) : "";
        Assert.Contains("default-src 'none'", Said("Content-Security-Policy"), StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", Said("Content-Security-Policy"), StringComparison.Ordinal);
        Assert.Equal(("nosniff", "DENY", "same-origin", "same-origin"), (Said("X-Content-Type-Options"), Said("X-Frame-Options"), Said("Referrer-Policy"), Said("Cross-Origin-Opener-Policy")));
        Assert.Equal("", Said("Server"));
    }

    [Fact]
    public async Task A_form_larger_than_any_sheet_is_refused()
    {
        var bench = shared.Bench;
        using var visitor = new Visitor(bench);
        var token = await visitor.Token();
        var (status, _) = await visitor.SendWith(token, "/start", ("note", new string('x', 400_000)));
        Assert.True(status is HttpStatusCode.RequestEntityTooLarge, status.ToString());
    }
}
