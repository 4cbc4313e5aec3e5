using Xunit;

namespace ShopDays.Bench.Tests;

/// <summary>One bench for all tests that only look: a task is half done and begun again, and where it was stopped is noted.</summary>
public sealed class BenchAtWork : IAsyncLifetime
{
    private OpenBench? bench;

    /// <summary>Its pages: each kind of them once.</summary>
    public static IReadOnlyList<string> Pages { get; } = ["", "job", "piece?job=tray&part=side", "piece?job=tray&board=A", "waits", "rates", "log", "log/1", "sheet?job=tray", "log/77"];

    /// <summary>Where it is served.</summary>
    public string Address => bench!.Address;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        (string, string)[] fetch = [("who", "maker"), ("job", "tray"), ("task", "fetch and stack the boards")];
        await visitor.Send("/start", fetch);
        bench.Clock.AdvanceMinutes(9);
        await visitor.Send("/done", [.. fetch, ("how", "half"), ("stopped", "the thick board is still outside")]);
        await visitor.Send("/start", fetch);
        bench.Clock.AdvanceMinutes(5);
        await visitor.LookWhenWorkedOut("/job");
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => bench!.DisposeAsync();
}
