using System.Collections.Concurrent;
using System.Globalization;
using System.Net;
using Xunit;

namespace ShopDays.Bench.Tests.Doing;

/// <summary>
/// Several hands that send sheet after sheet, each from a phone of its own, until nobody answers any more. Each sheet has a
/// time of its own, by which it is found in the log.
/// </summary>
internal sealed class WritingHands : IDisposable
{
    private const int Most = 4;
    private const int SheetsOfOne = 100;

    private readonly ConcurrentBag<int> answered = [];
    private readonly SemaphoreSlim oneMore = new(0);
    private int sent;

    /// <summary>Minutes of each sheet that was answered as logged.</summary>
    public IReadOnlyList<int> Answered => [.. answered.Order()];

    /// <summary>How many were sent, answered or not.</summary>
    public int Sent => sent;

    private static CancellationToken Given => TestContext.Current.CancellationToken;

    /// <summary>Has them write while something is done to who serves.</summary>
    /// <param name="address">Where it is served.</param>
    /// <param name="first">A number above all that were used before.</param>
    /// <param name="enough">So many are answered before it is done.</param>
    /// <param name="act">What is done; nobody may answer after it.</param>
    public async Task WriteWhile(Uri address, int first, int enough, Func<Task> act)
    {
        using var looking = new Visitor(address);
        var page = await looking.LookWhenWorkedOut("/sheet?job=tray");
        var at = page.IndexOf("name=\"took-", StringComparison.Ordinal) + "name=\"".Length;
        var field = page[at..page.IndexOf('"', at)];
        var writing = Enumerable.Range(0, Most).Select(hand => Task.Run(() => Write(address, field, first + (hand * SheetsOfOne)), Given)).ToList();
        for (var sheet = 0; sheet < enough; sheet++)
        {
            await oneMore.WaitAsync(Given);
        }

        await act();
        await Task.WhenAll(writing);
    }

    /// <inheritdoc/>
    public void Dispose() => oneMore.Dispose();

    private async Task Write(Uri address, string field, int first)
    {
        using var visitor = new Visitor(address);
        var token = await visitor.Token();
        for (var minutes = first; ; minutes++)
        {
            Assert.True(minutes < first + SheetsOfOne, "who was to be ended answers on and on");
            Interlocked.Increment(ref sent);
            try
            {
                var (status, _) = await visitor.SendWith(token, "/sheet", ("job", "tray"), ("who", "maker"), ("on", "2026-01-05"), ("once", Guid.CreateVersion7().ToString()), (field, string.Create(CultureInfo.InvariantCulture, $"{minutes}m")));
                Assert.Equal(HttpStatusCode.Redirect, status);
            }
            catch (HttpRequestException)
            {
                // Nobody answers any more: this sheet was not said to be logged, and its maker knows that.
                return;
            }

            answered.Add(minutes);
            oneMore.Release();
        }
    }
}
