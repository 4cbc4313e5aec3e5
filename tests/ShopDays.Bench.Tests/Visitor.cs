using System.Net;
using System.Text.RegularExpressions;
using Xunit;

namespace ShopDays.Bench.Tests;

/// <summary>A browser without a screen or a script: it keeps what it is told to keep, reads forms and sends them.</summary>
internal sealed partial class Visitor : IDisposable
{
    private readonly SocketsHttpHandler handler = new() { AllowAutoRedirect = false };
    private readonly HttpClient client;

    /// <summary>Comes to a bench.</summary>
    public Visitor(OpenBench bench)
        : this(new Uri(bench.Address))
    {
    }

    /// <summary>Comes to an address.</summary>
    public Visitor(Uri address) => client = new(handler, disposeHandler: false) { BaseAddress = address };

    private static CancellationToken Given => TestContext.Current.CancellationToken;

    /// <summary>Looks at a page.</summary>
    public async Task<(HttpStatusCode Status, string Page)> Look(string path)
    {
        using var answer = await client.GetAsync(new Uri(path, UriKind.RelativeOrAbsolute), Given);
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
    public Task<HttpResponseMessage> Ask(HttpRequestMessage request) => client.SendAsync(request, Given);

    /// <summary>Begins to read what is told as it happens.</summary>
    public async Task<StreamReader> Listen(string path) => new(await client.GetStreamAsync(new Uri(path, UriKind.Relative), Given));

    /// <summary>Sends a form with the token of the day's page.</summary>
    public async Task<(HttpStatusCode Status, string Page)> Send(string path, params IEnumerable<(string Field, string Value)> fields) => await SendWith(await Token(), path, fields);

    /// <summary>Sends a form with a token.</summary>
    public async Task<(HttpStatusCode Status, string Page)> SendWith(string token, string path, params IEnumerable<(string Field, string Value)> fields)
    {
        using var form = new FormUrlEncodedContent([new("form-token", token), .. fields.Select(field => new KeyValuePair<string, string>(field.Field, field.Value))]);
        using var answer = await client.PostAsync(new Uri(path, UriKind.Relative), form, Given);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync(Given));
    }

    /// <summary>The token of a form that is sent from here.</summary>
    public async Task<string> Token()
    {
        // The sheet's page has a form at all times.
        var (_, page) = await Look("/sheet?job=tray");
        return WebUtility.HtmlDecode(TokenField().Match(page).Groups[1].Value);
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
