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
    private readonly FreshFolder folder = new();
    private WebApplication? app;

    private OpenBench()
    {
    }

    /// <summary>The shop's clock.</summary>
    public FakeClock Clock { get; } = new(Instant.FromUtc(2027, 3, 1, 9, 10));

    /// <summary>Where it is served, with a stroke at the end.</summary>
    public string Address => app!.Urls.Single() + "/";

    /// <summary>The shop's folder.</summary>
    public ShopFolder Folder => new(folder.Path);

    /// <summary>Opens it.</summary>
    /// <param name="shop">What the shop's file says; that of the tray's shop unless given.</param>
    public static async Task<OpenBench> Of(string shop = ATrayShop.Shop)
    {
        var bench = new OpenBench();
        bench.folder.WithShop(shop).WithJob("tray", ATrayShop.Job);
        await bench.Serve();
        return bench;
    }

    /// <summary>Closes it and opens it again: on another port, as a program that was started anew.</summary>
    public async Task StartAnew()
    {
        await app!.DisposeAsync();
        await Serve();
    }

    /// <summary>Closes it, as who presses Ctrl+C does.</summary>
    public Task Stop() => app!.StopAsync(TestContext.Current.CancellationToken);

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
        // What is being worked out is out of date at once, so that it is given up; a file that it has just made may still come in between.
        Clock.Advance(Duration.FromHours(1));
        if (app is not null)
        {
            await app.DisposeAsync();
        }

        for (var trial = 1; Directory.Exists(folder.Path); trial++)
        {
            try
            {
                folder.Dispose();
            }
            catch (IOException) when (trial < 100)
            {
                await Task.Delay(20);
            }
        }
    }

    private async Task Serve()
    {
        app = BenchServer.Build(Folder, new(0, IsOpen: false), Clock, LogLevel.Error);
        await app.StartAsync(TestContext.Current.CancellationToken);
    }
}
