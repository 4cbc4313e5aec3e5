using System.Net;
using Xunit;

namespace ShopDays.Bench.Tests.Doing;

public sealed class UnreadableLogTests
{
    private static readonly (string, string)[] Fetch = [("who", "maker"), ("job", "tray"), ("task", "fetch and stack the boards")];

    [Fact]
    public async Task A_log_that_cannot_be_read_is_told_of_and_once_it_is_put_right_the_bench_goes_on()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        var token = await visitor.Token();
        var log = Path.Combine(bench.Folder.Path, "shop.db");
        await File.WriteAllTextAsync(log, new string('x', 5000), TestContext.Current.CancellationToken);
        var looked = await visitor.Look("/");
        var sent = await visitor.SendWith(token, "/start", Fetch);
        Assert.Equal((HttpStatusCode.ServiceUnavailable, HttpStatusCode.ServiceUnavailable), (looked.Status, sent.Status));
        Assert.Contains(log, looked.Page, StringComparison.Ordinal);
        Assert.Contains("Nothing was changed", sent.Page, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ShopDays", looked.Page + sent.Page, StringComparison.Ordinal);

        // Whoever listens goes on listening: what tells of changes has seen the log unreadable, and is still there.
        await Task.Delay(2 * Cli.Bench.Live.LiveEvents.LookEvery, TestContext.Current.CancellationToken);
        File.Delete(log);
        using var heard = await visitor.Listen("/live");
        Assert.Equal(HttpStatusCode.Redirect, (await visitor.SendWith(token, "/start", Fetch)).Status);
        Assert.Single(bench.Begun());
        string? line;
        do
        {
            line = await heard.ReadLineAsync(TestContext.Current.CancellationToken);
            Assert.NotNull(line);
        }
        while (line != "event: changed");
    }
}
