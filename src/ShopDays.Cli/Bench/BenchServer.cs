using System.Globalization;
using System.Net;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Console;
using NodaTime;
using ShopDays.Cli.Bench.Doing;
using ShopDays.Cli.Bench.Doors;
using ShopDays.Cli.Bench.Live;
using ShopDays.Cli.Bench.Look;
using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Bench.Sheets;
using ShopDays.Cli.Files;

namespace ShopDays.Cli.Bench;

/// <summary>The pages of the bench as a web server within this program.</summary>
internal static class BenchServer
{
    /// <summary>Most of what a form may hold, in bytes: a whole sheet with notes has a tenth of it.</summary>
    private const int LargestForm = 256 * 1024;

    private const int MostFields = 2000;
    private const int MostConnections = 200;

    /// <summary>Changes a second, from one machine: a hand taps slower.</summary>
    private const int ChangesASecond = 20;

    /// <summary>Builds it; it serves once it is started.</summary>
    /// <param name="folder">The shop.</param>
    /// <param name="place">Where it is served.</param>
    /// <param name="clock">Tells the moment.</param>
    /// <param name="level">From which on the server's own remarks are written to the error stream.</param>
    /// <exception cref="FileTroubleException">What must be kept in the shop's folder cannot be.</exception>
    public static WebApplication Build(ShopFolder folder, BenchPlace place, IClock clock, LogLevel level)
    {
        var key = place.IsOpen ? BenchKey.Of(folder) : null;
        var lines = new Lines();
        var builder = WebApplication.CreateEmptyBuilder(new() { ContentRootPath = folder.Path });
        // That a port is taken is said by the command, in a sentence; the host's own word on it is for who wrote the host.
        builder.Logging.AddSimpleConsole().AddFilter("Microsoft.Extensions.Hosting", LogLevel.None).SetMinimumLevel(level);
        builder.Services.Configure<ConsoleLoggerOptions>(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = LargestForm;
            kestrel.Limits.MaxConcurrentConnections = MostConnections;
            kestrel.Limits.MaxRequestLineSize = 4096;
            kestrel.Limits.MaxRequestHeadersTotalSize = 16 * 1024;
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
            kestrel.Limits.KeepAliveTimeout = TimeSpan.FromSeconds(30);
            kestrel.Listen(place.IsOpen ? IPAddress.Any : IPAddress.Loopback, place.Port, door => door.Use(lines.Admit));
        });
        AddServices(builder.Services, folder, place, key, clock);
        var app = builder.Build();
        app.Use(next => context => context.RequestServices.GetRequiredService<Door>().AnswerAll(context, next));
        app.UseRouting();
        app.UseRateLimiter();
        Shown.Map(app);
        Done.Map(app);
        Corrections.Map(app);
        PlanPapers.Map(app);
        LiveEvents.Map(app);
        Looks.Map(app);
        app.MapFallback(context => Door.Refuse(context, StatusCodes.Status404NotFound, "There is no such page."));
        return app;
    }

    private static void AddServices(IServiceCollection services, ShopFolder folder, BenchPlace place, BenchKey? key, IClock clock)
    {
        services.AddRoutingCore();
        services.AddRazorComponents();
        services.AddAntiforgery(tokens =>
        {
            tokens.Cookie.Name = "bench-form";
            tokens.Cookie.SameSite = SameSiteMode.Strict;
            tokens.Cookie.HttpOnly = true;
            tokens.FormFieldName = "form-token";
        });

        // Kept in the shop's folder: a page that stands open on a phone can still be sent after the program was started anew.
        services.AddDataProtection().SetApplicationName("shopdays bench").PersistKeysToFileSystem(new(Path.Combine(BenchKey.FolderIn(folder), "signing")));
        services.Configure<FormOptions>(form => (form.ValueCountLimit, form.KeyLengthLimit, form.ValueLengthLimit) = (MostFields, 200, 8 * 1024));
        services.AddRateLimiter(pace =>
        {
            pace.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
            pace.AddPolicy(Done.Pace, context => RateLimitPartition.GetTokenBucketLimiter(
                context.Connection.RemoteIpAddress?.ToString() ?? "",
                _ => new() { TokenLimit = ChangesASecond, TokensPerPeriod = ChangesASecond, ReplenishmentPeriod = TimeSpan.FromSeconds(1), QueueLimit = 2 * ChangesASecond }));
        });
        services
            .AddSingleton(folder)
            .AddSingleton(place)
            .AddSingleton(clock)
            .AddSingleton<LogNow>()
            .AddSingleton<ShopReckoning>()
            .AddSingleton<ShopKeeper>()
            .AddSingleton<LiveEvents>()
            .AddSingleton<Shown>()
            .AddSingleton<Done>()
            .AddSingleton<Corrections>()
            .AddSingleton<PlanPapers>()
            .AddSingleton<Attempts>()
            .AddSingleton(one => new Door(place, key, one.GetRequiredService<Attempts>(), one.GetRequiredService<Microsoft.AspNetCore.Antiforgery.IAntiforgery>()))
            .AddHostedService(one => one.GetRequiredService<LiveEvents>());
    }

    /// <summary>The addresses at which it is served, once it is started.</summary>
    public static IReadOnlyList<string> AddressesOf(WebApplication app, BenchPlace place)
    {
        var port = app.Urls.Select(url => new Uri(url.Replace("0.0.0.0", "127.0.0.1", StringComparison.Ordinal)).Port).First();
        return [.. ((string[])["127.0.0.1", .. place.IsOpen ? BenchPlace.Addresses : []]).Select(host => string.Create(CultureInfo.InvariantCulture, $"http://{host}:{port}/"))];
    }
}
