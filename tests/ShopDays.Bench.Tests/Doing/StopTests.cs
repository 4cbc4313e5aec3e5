using System.Collections.Concurrent;
using System.Globalization;
using System.Net;
using Xunit;

namespace ShopDays.Bench.Tests.Doing;

public sealed class StopTests
{
    private const int Hands = 4;

    [Fact]
    public async Task What_was_answered_while_the_bench_is_closed_is_logged_once_and_whoever_listens_is_let_go()
    {
        await using var bench = await OpenBench.Of();
        using var first = new Visitor(bench);
        var field = FieldIn(await first.LookWhenWorkedOut("/sheet?job=tray"));
        using var listener = new Visitor(bench);
        using var heard = await listener.Listen("/live");

        // Each hand sends sheets with times of its own, so that each can be found in the log by its minutes.
        ConcurrentBag<int> sent = [];
        ConcurrentBag<int> answered = [];
        using var enough = new SemaphoreSlim(0);
        var hands = Enumerable.Range(0, Hands).Select(hand => Task.Run(() => Write(bench, hand, field, sent, answered, enough), TestContext.Current.CancellationToken)).ToList();
        for (var sheet = 0; sheet < 3 * Hands; sheet++)
        {
            await enough.WaitAsync(TestContext.Current.CancellationToken);
        }

        await bench.Stop();
        await Task.WhenAll(hands);

        // Read to its end: a stream that was cut off would throw, one that goes on would never end.
        Assert.StartsWith("retry:", await heard.ReadToEndAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        var logged = bench.Logged().Select(entry => (int)entry.Took.Minutes).Order().ToList();
        Assert.Equal(answered.Order(), logged);
        Assert.True(sent.Count > answered.Count, "nobody was writing any more when it was closed");
    }

    /// <summary>Sends sheet after sheet until nobody answers.</summary>
    private static async Task Write(OpenBench bench, int hand, string field, ConcurrentBag<int> sent, ConcurrentBag<int> answered, SemaphoreSlim enough)
    {
        using var visitor = new Visitor(bench);
        var token = await visitor.Token();
        for (var sheet = 1; ; sheet++)
        {
            var minutes = (100 * hand) + sheet;
            sent.Add(minutes);
            try
            {
                var (status, _) = await visitor.SendWith(token, "/sheet", ("job", "tray"), ("who", "maker"), ("on", "2027-03-01"), ("once", Guid.CreateVersion7().ToString()), (field, string.Create(CultureInfo.InvariantCulture, $"{minutes}m")));
                Assert.Equal(HttpStatusCode.Redirect, status);
            }
            catch (HttpRequestException)
            {
                // The bench is closed: this sheet was not answered, and its maker knows that.
                return;
            }

            answered.Add(minutes);
            enough.Release();
        }
    }

    private static string FieldIn(string page)
    {
        var at = page.IndexOf("name=\"took-", StringComparison.Ordinal) + "name=\"".Length;
        return page[at..page.IndexOf('"', at)];
    }
}
