using Xunit;

namespace ShopDays.Bench.Tests;

/// <summary>One bench for all tests of a class that change nothing in it.</summary>
public sealed class BenchToLookAt : IAsyncLifetime
{
    private OpenBench? bench;

    /// <summary>The bench.</summary>
    internal OpenBench Bench => bench!;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync() => bench = await OpenBench.Of();

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => bench!.DisposeAsync();
}
