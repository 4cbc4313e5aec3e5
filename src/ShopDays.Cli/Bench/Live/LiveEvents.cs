using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Files;

namespace ShopDays.Cli.Bench.Live;

/// <summary>
/// Tells open pages that something has changed (server-sent events, HTML Living Standard): the log, whoever wrote in it,
/// or what is worked out from it. A page that does not listen is right all the same, only later.
/// </summary>
internal sealed class LiveEvents(LogNow log, ShopKeeper keeper) : BackgroundService
{
    private const int MostListeners = 64;

    /// <summary>How often the log is looked at: open pages know of a change after twice that at the latest.</summary>
    internal static readonly TimeSpan LookEvery = TimeSpan.FromMilliseconds(250);

    private static readonly TimeSpan SignOfLife = TimeSpan.FromSeconds(15);

    private volatile TaskCompletionSource changed = Next();
    private int listeners;

    /// <summary>Maps the stream.</summary>
    public static void Map(WebApplication app) => app.MapGet("/live", (HttpContext context, LiveEvents events) => events.Tell(context));

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(LookEvery);
        var (number, worked) = (0L, 0L);
        // Disposed of by the end, the timer is simply over: that is no fault.
        using var end = stoppingToken.Register(timer.Dispose);
        while (await timer.WaitForNextTickAsync(CancellationToken.None).ConfigureAwait(false))
        {
            var now = (NumberOr(number), keeper.Worked);
            if (now != (number, worked))
            {
                (number, worked) = now;
                Interlocked.Exchange(ref changed, Next()).TrySetResult();
            }
        }
    }

    private static TaskCompletionSource Next() => new(TaskCreationOptions.RunContinuationsAsynchronously);

    private long NumberOr(long before)
    {
        try
        {
            // What has changed is worked out although nobody has asked for a page yet.
            keeper.Now();
            return log.Number();
        }
        catch (FileTroubleException)
        {
            // The page that is looked at next says so, with the reason.
            return before;
        }
    }

    private async Task Tell(HttpContext context)
    {
        if (Interlocked.Increment(ref listeners) > MostListeners)
        {
            Interlocked.Decrement(ref listeners);
            context.Response.StatusCode = StatusCodes.Status503ServiceUnavailable;
            return;
        }

        var stopping = context.RequestServices.GetRequiredService<IHostApplicationLifetime>().ApplicationStopping;
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, stopping);
        try
        {
            context.Response.ContentType = "text/event-stream";
            await context.Response.WriteAsync("retry: 2000\n\n", ends.Token);
            while (!ends.IsCancellationRequested)
            {
                await context.Response.Body.FlushAsync(ends.Token);
                var next = changed.Task;
                var isChange = await Task.WhenAny(next, Task.Delay(SignOfLife, ends.Token)) == next;
                await context.Response.WriteAsync(isChange ? "event: changed\ndata: now\n\n" : ": still there\n\n", ends.Token);
            }
        }
        catch (OperationCanceledException)
        {
            // The page was closed, or the program ends: there is nobody left to tell.
        }
        finally
        {
            Interlocked.Decrement(ref listeners);
        }
    }
}
