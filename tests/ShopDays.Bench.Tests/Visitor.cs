using System.Net;
using System.Net.Sockets;
using System.Text.RegularExpressions;
using Xunit;

namespace ShopDays.Bench.Tests;

/// <summary>A browser without a screen or a script: it keeps what it is told to keep, reads forms and sends them.</summary>
internal sealed partial class Visitor : IDisposable
{
    private readonly SocketsHttpHandler handler = new() { AllowAutoRedirect = false };
    private readonly HttpClient client;
    private Uri at;
    private string? token;

    /// <summary>Comes to a bench.</summary>
    public Visitor(OpenBench bench)
        : this(new Uri(bench.Address))
    {
    }

    /// <summary>Comes to an address.</summary>
    public Visitor(Uri address)
    {
        at = address;
        // Nothing here is a test of speed: a page that takes long on a busy machine is waited for.
        client = new(handler, disposeHandler: false) { Timeout = Timeout.InfiniteTimeSpan };
    }

    /// <summary>Comes to a bench as one of several machines, each of which may change so much a second.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="machine">Which; all of them are this one, under several of its own addresses (RFC 1122, 3.2.1.3) where it has them.</param>
    public Visitor(OpenBench bench, byte machine)
        : this(bench)
    {
        if (!OperatingSystem.IsMacOS())
        {
            handler.ConnectCallback = async (context, given) =>
            {
                var socket = new Socket(SocketType.Stream, ProtocolType.Tcp);
                try
                {
                    socket.Bind(new IPEndPoint(new IPAddress([127, 0, 0, machine]), 0));
                    await socket.ConnectAsync(context.DnsEndPoint, given);
                    return new NetworkStream(socket, ownsSocket: true);
                }
                catch
                {
                    socket.Dispose();
                    throw;
                }
            };
        }
    }

    private static CancellationToken Given => TestContext.Current.CancellationToken;

    /// <summary>Looks at a page.</summary>
    public async Task<(HttpStatusCode Status, string Page)> Look(string path)
    {
        using var answer = await client.GetAsync(new Uri(at, path), Given);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync(Given));
    }

    /// <summary>Looks at a page until what it shows is of this moment; a slow machine needs longer than a page waits.</summary>
    public async Task<string> LookWhenWorkedOut(string path)
    {
        while (true)
        {
            var (_, page) = await Look(path);
            if (!page.Contains("being worked out", StringComparison.OrdinalIgnoreCase))
            {
                return page;
            }

            await Task.Delay(100, Given);
        }
    }

    /// <summary>Asks for something and gets the whole answer.</summary>
    public Task<HttpResponseMessage> Ask(HttpRequestMessage request)
    {
        request.RequestUri = new(at, request.RequestUri!);
        return client.SendAsync(request, Given);
    }

    /// <summary>Goes on at a bench that was opened anew, with what was kept.</summary>
    public void GoOnAt(OpenBench bench) => at = new(bench.Address);

    /// <summary>Begins to read what is told as it happens.</summary>
    public async Task<StreamReader> Listen(string path) => new(await client.GetStreamAsync(new Uri(at, path), Given));

    /// <summary>Sends a form with the token that is kept.</summary>
    public async Task<(HttpStatusCode Status, string Page)> Send(string path, params IEnumerable<(string Field, string Value)> fields) => await SendWith(await Token(), path, fields);

    /// <summary>Sends a form with a token.</summary>
    public async Task<(HttpStatusCode Status, string Page)> SendWith(string signed, string path, params IEnumerable<(string Field, string Value)> fields)
    {
        using var form = new FormUrlEncodedContent([new("form-token", signed), .. fields.Select(field => new KeyValuePair<string, string>(field.Field, field.Value))]);
        using var answer = await client.PostAsync(new Uri(at, path), form, Given);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync(Given));
    }

    /// <summary>The token of a form that is sent from here: of the first page with a form, as of one that stays open.</summary>
    public async Task<string> Token()
    {
        // The sheet's page has a form at all times.
        token ??= WebUtility.HtmlDecode(TokenField().Match((await Look("/sheet?job=tray")).Page).Groups[1].Value);
        return token;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        client.Dispose();
        handler.Dispose();
    }

    [GeneratedRegex("name=\"form-token\" value=\"([^\"]*)\"")]
    private static partial Regex TokenField();
}
