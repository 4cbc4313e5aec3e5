using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.Logging;
using NodaTime;
using NodaTime.Testing;
using ShopDays.Cli.Bench;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Cli.Tests.Running;
using ShopDays.Logbook;
using Xunit;

namespace ShopDays.Bench.Tests;

/// <summary>The pages of a small shop on a free port of this machine, on Monday 1 March 2027 from 09:10 on; the clock goes only when it is told to.</summary>
internal sealed class OpenBench : IAsyncDisposable
{
    private readonly FreshFolder folder;
    private WebApplication app;

    private OpenBench(FreshFolder folder, FakeClock clock, WebApplication app) => (this.folder, Clock, this.app) = (folder, clock, app);

    /// <summary>The shop's clock.</summary>
    public FakeClock Clock { get; }

    /// <summary>Where it is served, with a stroke at the end.</summary>
    public string Address => app.Urls.Single() + "/";

    /// <summary>The shop's folder.</summary>
    public ShopFolder Folder => new(folder.Path);

    /// <summary>Opens it.</summary>
    /// <param name="shop">What the shop's file says; that of the tray's shop unless given.</param>
    public static async Task<OpenBench> Of(string shop = ATrayShop.Shop)
    {
        var folder = new FreshFolder().WithShop(shop).WithJob("tray", ATrayShop.Job);
        var clock = new FakeClock(Instant.FromUtc(2027, 3, 1, 9, 10));
        return new(folder, clock, await Served(folder, clock));
    }

    /// <summary>Closes it and opens it again: on another port, as a program that was started anew.</summary>
    public async Task StartAnew()
    {
        await app.DisposeAsync();
        app = await Served(folder, Clock);
    }

    /// <summary>All that is logged.</summary>
    public IReadOnlyList<LogEntry> Logged()
    {
        using var log = ShopLog.OpenToRead(Folder);
        return log?.All() ?? [];
    }

    /// <summary>All that is begun and not logged.</summary>
    public IReadOnlyList<BegunWork> Begun()
    {
        using var log = ShopLog.OpenToRead(Folder);
        return log?.Begun.All() ?? [];
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await app.DisposeAsync();
        folder.Dispose();
    }

    private static async Task<WebApplication> Served(FreshFolder folder, FakeClock clock)
    {
        var app = BenchServer.Build(new(folder.Path), new(0, IsOpen: false), clock, LogLevel.Error);
        await app.StartAsync(TestContext.Current.CancellationToken);
        return app;
    }
}
