using System.Text;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using NodaTime;
using NodaTime.Testing;
using ShopDays.Cli.Bench;
using ShopDays.Cli.Bench.Doors;
using ShopDays.Cli.Files;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Bench.Tests.Doors;

/// <summary>
/// The door of a bench that is open to the shop's network, put together as the program does it, without a network: nothing
/// is served, and who knocks comes from whatever address a test says. Behind it stands one page.
/// </summary>
internal sealed class OpenDoor : IAsyncDisposable
{
    /// <summary>What the page behind the door says.</summary>
    public const string Behind = "the page behind the door";

    /// <summary>An address of the shop's network (RFC 5737: of no network at all).</summary>
    public const string Phone = "192.0.2.7";

    /// <summary>Another.</summary>
    public const string OtherPhone = "192.0.2.8";

    private const string Host = "127.0.0.1:7373";

    private readonly FreshFolder folder = new();
    private readonly WebApplication app;

    /// <summary>Opens it.</summary>
    /// <param name="isOpen">Whether to the shop's network.</param>
    /// <param name="key">The key that is kept already; null for one that is made.</param>
    public OpenDoor(bool isOpen = true, string? key = null)
    {
        folder.WithATray();
        if (key is not null)
        {
            folder.With(".bench/key", key);
        }

        app = BenchServer.Build(Folder, new(BenchPlace.UsualPort, isOpen), Clock, LogLevel.Error);
    }

    /// <summary>The shop's folder.</summary>
    public ShopFolder Folder => new(folder.Path);

    /// <summary>The shop's clock.</summary>
    public FakeClock Clock { get; } = new(Instant.FromUtc(2027, 3, 1, 9, 10));

    /// <summary>The key.</summary>
    public BenchKey Key => BenchKey.Of(Folder);

    /// <summary>Knocks.</summary>
    /// <param name="from">The address of the machine.</param>
    /// <param name="path">What is asked for.</param>
    /// <param name="query">What is asked of it.</param>
    /// <param name="pass">What the browser has kept as its pass; null for none.</param>
    /// <param name="more">What else it says.</param>
    public async Task<HttpResponse> Knock(string from, string path = "/", string query = "", string? pass = null, Action<HttpContext>? more = null)
    {
        var scope = app.Services.CreateAsyncScope();
        var context = new DefaultHttpContext { RequestServices = scope.ServiceProvider };
        context.Features.Set<IHttpResponseBodyFeature>(new StreamResponseBodyFeature(new MemoryStream()));
        context.Connection.RemoteIpAddress = System.Net.IPAddress.Parse(from);
        (context.Request.Method, context.Request.Scheme, context.Request.Host) = ("GET", "http", new(Host));
        (context.Request.Path, context.Request.QueryString) = (path, new(query));
        if (pass is not null)
        {
            Keep(context, Door.PassName, pass);
        }

        more?.Invoke(context);
        await app.Services.GetRequiredService<Door>().AnswerAll(context, inside => inside.Response.WriteAsync(Behind, TestContext.Current.CancellationToken));
        await scope.DisposeAsync();
        return context.Response;
    }

    /// <summary>Knocks with a key in the address.</summary>
    public Task<HttpResponse> KnockWith(string key, string from = Phone) => Knock(from, query: QueryString.Create(Door.KeyName, key).Value!);

    /// <summary>Makes a request into the sending of a form, with a token of this program.</summary>
    public void SendAForm(HttpContext context)
    {
        var tokens = app.Services.GetRequiredService<IAntiforgery>().GetTokens(new DefaultHttpContext { RequestServices = context.RequestServices });
        context.Request.Method = "POST";
        context.Request.Headers.Origin = "http://" + Host;
        Keep(context, "bench-form", tokens.CookieToken!);
        context.Request.Form = new FormCollection(new() { [tokens.FormFieldName] = tokens.RequestToken });
    }

    /// <summary>What was answered.</summary>
    public static string Said(HttpResponse answer)
    {
        var body = (MemoryStream)answer.HttpContext.Features.GetRequiredFeature<IHttpResponseBodyFeature>().Stream;
        return Encoding.UTF8.GetString(body.ToArray());
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await app.DisposeAsync();
        folder.Dispose();
    }

    private static void Keep(HttpContext context, string name, string value)
    {
        var before = context.Request.Headers.Cookie.ToString();
        context.Request.Headers.Cookie = before.Length == 0 ? $"{name}={value}" : $"{before}; {name}={value}";
    }
}
