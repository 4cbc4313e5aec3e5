using Xunit;

namespace ShopDays.Bench.Tests.Doing;

public sealed class StopTests
{
    [Fact]
    public async Task What_was_answered_while_the_bench_is_closed_is_logged_once_and_whoever_listens_is_let_go()
    {
        await using var bench = await OpenBench.Of();
        using var listener = new Visitor(bench);
        using var heard = await listener.Listen("/live");
        using var hands = new WritingHands();
        await hands.WriteWhile(new(bench.Address), first: 1, enough: 12, bench.Stop);

        // Read to its end: a stream that was cut off would throw, one that goes on would never end.
        Assert.StartsWith("retry:", await heard.ReadToEndAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(hands.Answered, bench.Logged().Select(entry => (int)entry.Took.Minutes).Order());
        Assert.True(hands.Sent > hands.Answered.Count, "nobody was writing any more when it was closed");
    }
}
