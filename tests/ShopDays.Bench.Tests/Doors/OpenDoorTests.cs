using System.Net;
using Microsoft.AspNetCore.Http;
using ShopDays.Cli.Bench.Doors;
using Xunit;

namespace ShopDays.Bench.Tests.Doors;

/// <summary>A bench that is open to the shop's network: who has not the key stays outside, and what is changed comes from the bench's own pages.</summary>
[Trait("Source", "OWASP Cheat Sheet Series, in their points: Session Management (what a browser keeps; no key in an address), Authentication (wrong tries are limited), Cross-Site Request Forgery Prevention (origin, fetch metadata, token), HTTP Headers")]
public sealed class OpenDoorTests
{
    [Theory]
    [InlineData("/")]
    [InlineData("/job/plan.pdf")]
    [InlineData("/live")]
    [InlineData("/look/000000000000/bench.css")]
    public async Task Nobody_comes_in_from_another_machine_without_the_key(string path)
    {
        await using var door = new OpenDoor();
        var answer = await door.Knock(OpenDoor.Phone, path);
        Assert.Equal(StatusCodes.Status401Unauthorized, answer.StatusCode);
        Assert.DoesNotContain(OpenDoor.Behind, OpenDoor.Said(answer), StringComparison.Ordinal);
        Assert.Contains("Scan the code", OpenDoor.Said(answer), StringComparison.Ordinal);
    }

    [Fact]
    public async Task This_machine_needs_no_key()
    {
        await using var door = new OpenDoor();
        Assert.Equal(OpenDoor.Behind, OpenDoor.Said(await door.Knock("127.0.0.1")));
        Assert.Equal(OpenDoor.Behind, OpenDoor.Said(await door.Knock("::1")));
    }

    [Fact]
    public async Task The_right_key_is_kept_by_the_browser_where_no_script_and_no_other_site_gets_at_it_and_goes_out_of_the_address()
    {
        await using var door = new OpenDoor();
        var answer = await door.KnockWith(door.Key.Text);
        Assert.Equal((StatusCodes.Status302Found, "/"), (answer.StatusCode, answer.Headers.Location.ToString()));
        var kept = PassIn(answer);
        Assert.Contains("httponly", kept, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", kept, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("path=/;", kept + ";", StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(door.Key.Text, kept, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(OpenDoor.Behind, OpenDoor.Said(answer), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_browser_that_was_let_in_needs_no_key_any_more()
    {
        await using var door = new OpenDoor();
        var pass = ValueOf(PassIn(await door.KnockWith(door.Key.Text)));
        Assert.Equal(OpenDoor.Behind, OpenDoor.Said(await door.Knock(OpenDoor.Phone, pass: pass)));
        Assert.Equal(OpenDoor.Behind, OpenDoor.Said(await door.Knock(OpenDoor.OtherPhone, "/job", pass: pass)));
    }

    [Fact]
    public async Task A_browser_that_is_in_and_scans_the_code_once_more_loses_the_key_from_its_address_too()
    {
        await using var door = new OpenDoor();
        var again = await door.Knock(OpenDoor.Phone, query: "?key=" + door.Key.Text, pass: door.Key.Pass);
        var here = await door.KnockWith(door.Key.Text, from: "127.0.0.1");
        Assert.Equal((StatusCodes.Status302Found, "/"), (again.StatusCode, again.Headers.Location.ToString()));
        Assert.Equal((StatusCodes.Status302Found, "/"), (here.StatusCode, here.Headers.Location.ToString()));
    }

    [Fact]
    public async Task A_key_that_is_only_nearly_right_does_not_open()
    {
        const string Key = "4c8be1a07d5f2936c0d1e2f3a4b59687";
        await using var door = new OpenDoor(key: Key);
        Assert.True(door.Key.Opens(Key));
        string[] nearly = [Key[..^1], Key[..16], Key[..1], Key + "4", Key + Key, " " + Key, Key + " ", Key.ToUpperInvariant(), "4C" + Key[2..], Key[..^1] + "8", "5" + Key[1..], new('0', 32), door.Key.Pass, Key + "\0", "é" + Key, $"{Key},{Key}"];
        foreach (var wrong in nearly)
        {
            Assert.False(door.Key.Opens(wrong), wrong);
            var answer = await door.KnockWith(wrong);
            Assert.Equal(StatusCodes.Status401Unauthorized, answer.StatusCode);
            Assert.Equal(0, answer.Headers.SetCookie.Count);
            door.Clock.AdvanceMinutes(2);
        }
    }

    [Fact]
    public async Task A_pass_that_is_only_nearly_right_does_not_open()
    {
        await using var door = new OpenDoor();
        var pass = door.Key.Pass;
        foreach (var wrong in (string[])["", "1", pass[..^1], pass + pass[0], pass.ToUpperInvariant() + "x", door.Key.Text, new('0', pass.Length)])
        {
            Assert.Equal(StatusCodes.Status401Unauthorized, (await door.Knock(OpenDoor.Phone, pass: wrong)).StatusCode);
        }
    }

    [Fact]
    public async Task The_pass_of_one_shop_does_not_open_another()
    {
        await using var door = new OpenDoor();
        await using var other = new OpenDoor();
        Assert.NotEqual(door.Key.Text, other.Key.Text);
        Assert.Equal(StatusCodes.Status401Unauthorized, (await other.Knock(OpenDoor.Phone, pass: door.Key.Pass)).StatusCode);
    }

    [Fact]
    public async Task After_ten_wrong_keys_a_machine_waits_a_minute_even_with_the_right_one_and_another_machine_does_not()
    {
        await using var door = new OpenDoor();
        for (var time = 0; time < 10; time++)
        {
            Assert.Equal(StatusCodes.Status401Unauthorized, (await door.KnockWith("guess" + time)).StatusCode);
        }

        var spent = await door.KnockWith(door.Key.Text);
        Assert.Equal((StatusCodes.Status429TooManyRequests, "60"), (spent.StatusCode, spent.Headers.RetryAfter.ToString()));
        Assert.Equal(0, spent.Headers.SetCookie.Count);
        Assert.Equal(StatusCodes.Status302Found, (await door.KnockWith(door.Key.Text, OpenDoor.OtherPhone)).StatusCode);
        door.Clock.Advance(NodaTime.Duration.FromSeconds(59));
        Assert.Equal(StatusCodes.Status429TooManyRequests, (await door.KnockWith(door.Key.Text)).StatusCode);
        door.Clock.Advance(NodaTime.Duration.FromSeconds(1));
        Assert.Equal(StatusCodes.Status302Found, (await door.KnockWith(door.Key.Text)).StatusCode);
    }

    [Fact]
    public async Task Knocking_without_a_key_uses_up_no_tries_and_a_browser_that_is_in_is_not_shut_out_by_others_at_its_address()
    {
        await using var door = new OpenDoor();
        for (var time = 0; time < 30; time++)
        {
            await door.Knock(OpenDoor.Phone);
        }

        Assert.Equal(StatusCodes.Status302Found, (await door.KnockWith(door.Key.Text)).StatusCode);
        for (var time = 0; time < 10; time++)
        {
            await door.KnockWith("guess");
        }

        Assert.Equal(StatusCodes.Status429TooManyRequests, (await door.KnockWith("guess")).StatusCode);
        Assert.Equal(OpenDoor.Behind, OpenDoor.Said(await door.Knock(OpenDoor.Phone, pass: door.Key.Pass)));
    }

    [Fact]
    public async Task Tries_from_more_machines_than_any_shop_has_are_counted_together()
    {
        await using var door = new OpenDoor();
        for (var machine = 0; machine < 1010; machine++)
        {
            await door.KnockWith("guess", new IPAddress([198, 51, (byte)(machine / 250), (byte)(machine % 250)]).ToString());
        }

        Assert.Equal(StatusCodes.Status429TooManyRequests, (await door.KnockWith("guess", "203.0.113.1")).StatusCode);
        Assert.Equal(StatusCodes.Status401Unauthorized, (await door.KnockWith("guess", "198.51.0.1")).StatusCode);
    }

    [Fact]
    public async Task A_key_in_the_address_of_a_change_lets_nobody_in()
    {
        await using var door = new OpenDoor();
        var answer = await door.Knock(OpenDoor.Phone, "/start", "?key=" + door.Key.Text, more: door.SendAForm);
        Assert.Equal(StatusCodes.Status401Unauthorized, answer.StatusCode);
        Assert.Equal(0, answer.Headers.SetCookie.Count);
    }

    [Theory]
    [InlineData(null, null, null, StatusCodes.Status200OK)]
    [InlineData(null, "http://127.0.0.1:7373", "same-origin", StatusCodes.Status200OK)]
    [InlineData(null, "http://elsewhere.example", null, StatusCodes.Status403Forbidden)]
    [InlineData(null, "http://127.0.0.1:8080", null, StatusCodes.Status403Forbidden)]
    [InlineData(null, "https://127.0.0.1:7373", null, StatusCodes.Status403Forbidden)]
    [InlineData(null, "http://127.0.0.1:7373.elsewhere.example", null, StatusCodes.Status403Forbidden)]
    [InlineData(null, "null", null, StatusCodes.Status403Forbidden)]
    [InlineData(null, null, "cross-site", StatusCodes.Status403Forbidden)]
    [InlineData(null, null, "same-site", StatusCodes.Status403Forbidden)]
    [InlineData("elsewhere.example", null, null, StatusCodes.Status421MisdirectedRequest)]
    [InlineData("elsewhere.example:7373", "http://elsewhere.example:7373", "same-origin", StatusCodes.Status421MisdirectedRequest)]
    [InlineData("127.0.0.1.elsewhere.example", null, null, StatusCodes.Status421MisdirectedRequest)]
    [InlineData("", null, null, StatusCodes.Status421MisdirectedRequest)]
    public async Task A_change_comes_from_a_page_of_the_bench_under_a_name_of_its_own(string? host, string? origin, string? site, int status)
    {
        await using var door = new OpenDoor();
        var answer = await door.Knock(OpenDoor.Phone, "/start", pass: door.Key.Pass, more: context =>
        {
            door.SendAForm(context);
            context.Request.Host = host is null ? context.Request.Host : new(host);
            context.Request.Headers.Origin = origin;
            context.Request.Headers["Sec-Fetch-Site"] = site;
        });
        Assert.Equal(status, answer.StatusCode);
        Assert.Equal(status == StatusCodes.Status200OK, OpenDoor.Said(answer) == OpenDoor.Behind);
    }

    [Fact]
    public async Task A_change_with_the_pass_and_without_a_token_is_refused()
    {
        await using var door = new OpenDoor();
        var answer = await door.Knock(OpenDoor.Phone, "/start", pass: door.Key.Pass, more: context =>
        {
            door.SendAForm(context);
            context.Request.Form = FormCollection.Empty;
        });
        Assert.Equal(StatusCodes.Status403Forbidden, answer.StatusCode);
    }

    [Theory]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("PATCH")]
    [InlineData("START")]
    public async Task Whatever_is_no_looking_counts_as_a_change(string method)
    {
        await using var door = new OpenDoor();
        Assert.Equal(StatusCodes.Status403Forbidden, (await door.Knock(OpenDoor.Phone, pass: door.Key.Pass, more: context => context.Request.Method = method)).StatusCode);
    }

    [Fact]
    public async Task A_bench_for_this_machine_alone_has_no_key_and_answers_to_no_other_name_or_machine()
    {
        await using var door = new OpenDoor(isOpen: false);
        Assert.False(File.Exists(Path.Combine(door.Folder.Path, ".bench", "key")));
        Assert.Equal(StatusCodes.Status200OK, (await door.Knock("127.0.0.1")).StatusCode);
        Assert.Equal(StatusCodes.Status421MisdirectedRequest, (await door.Knock("127.0.0.1", more: context => context.Request.Host = new("elsewhere.example"))).StatusCode);
        Assert.Equal(StatusCodes.Status421MisdirectedRequest, (await door.Knock("127.0.0.1", more: context => context.Request.Host = new(OpenDoor.Phone))).StatusCode);
        Assert.Equal(StatusCodes.Status401Unauthorized, (await door.KnockWith("anything")).StatusCode);
    }

    [Fact]
    public async Task Every_refusal_says_what_a_browser_must_not_do()
    {
        await using var door = new OpenDoor();
        List<HttpResponse> answers = [await door.Knock(OpenDoor.Phone), await door.KnockWith(door.Key.Text), await door.Knock(OpenDoor.Phone, "/start", pass: door.Key.Pass, more: context => context.Request.Method = "POST"), await door.Knock("127.0.0.1", more: context => context.Request.Host = new("elsewhere.example"))];
        Assert.Equal([401, 302, 403, 421], answers.Select(answer => answer.StatusCode));
        Assert.All(answers, answer =>
        {
            var headers = answer.Headers;
            Assert.StartsWith("default-src 'none'", headers.ContentSecurityPolicy.ToString(), StringComparison.Ordinal);
            Assert.Contains("frame-ancestors 'none'", headers.ContentSecurityPolicy.ToString(), StringComparison.Ordinal);
            Assert.Equal(("nosniff", "DENY", "same-origin", "no-store"), (headers.XContentTypeOptions.ToString(), headers.XFrameOptions.ToString(), headers["Cross-Origin-Resource-Policy"].ToString(), headers.CacheControl.ToString()));
            Assert.False(headers.ContainsKey("X-Powered-By") || headers.ContainsKey("Access-Control-Allow-Origin"));
        });
    }

    private static string PassIn(HttpResponse answer) => Assert.Single(answer.Headers.SetCookie, one => one!.StartsWith(Door.PassName + "=", StringComparison.Ordinal))!;

    private static string ValueOf(string cookie) => cookie[(Door.PassName.Length + 1)..cookie.IndexOf(';', StringComparison.Ordinal)];
}
