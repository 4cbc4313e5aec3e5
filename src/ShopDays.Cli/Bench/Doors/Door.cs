using System.Text.Encodings.Web;
using System.Net;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http;
using ShopDays.Cli.Files;

namespace ShopDays.Cli.Bench.Doors;

/// <summary>
/// Who is let in, and what may be changed from where. In this order: the name by which the pages are called must be one of
/// this machine's, so that no page from elsewhere reaches them by a name of its own; from another machine the key is needed;
/// and a change must come from a page of this program, by what the browser says (Fetch Metadata, W3C; RFC 6454) and by the
/// token in its form.
/// </summary>
internal sealed class Door(BenchPlace place, BenchKey? key, Attempts attempts, IAntiforgery antiforgery)
{
    /// <summary>The name of what a browser keeps once it has been let in.</summary>
    public const string PassName = "bench-pass";

    /// <summary>The name of the key in an address.</summary>
    public const string KeyName = "key";

    private async Task Answer(HttpContext context, RequestDelegate next)
    {
        Headers.PutOn(context.Response);
        var request = context.Request;
        if (!place.Names.Contains(request.Host.Host))
        {
            await Refuse(context, StatusCodes.Status421MisdirectedRequest, "This is not a name of the bench.");
        }
        else if (!IsAtHome(context))
        {
            await AskForTheKey(context);
        }
        else if (KeyIn(request) is { } typed && key?.Opens(typed) == true)
        {
            // Scanned once more by a phone that is in already: the key goes out of the address all the same.
            LetIn(context, key);
        }
        else if (IsChange(request) && await WhyNot(context) is { } why)
        {
            await Refuse(context, StatusCodes.Status403Forbidden, why);
        }
        else
        {
            await next(context);
        }
    }

    /// <summary>Lets a request through or answers it; one that is larger than anything that is sent here, or no form at all, is told so, and so is one whose files cannot be read or written.</summary>
    public async Task AnswerAll(HttpContext context, RequestDelegate next)
    {
        try
        {
            await Answer(context, next);
        }
        catch (FileTroubleException trouble) when (!context.Response.HasStarted)
        {
            await Refuse(context, StatusCodes.Status503ServiceUnavailable, $"{trouble.Message}. Nothing was changed; load the page again when that is put right.");
        }
        catch (Exception bad) when (!context.Response.HasStarted && StatusOf(bad) is not null)
        {
            await Refuse(context, StatusOf(bad)!.Value, "This is no form of the bench, or larger than anything that is sent here; nothing was changed.");
        }
    }

    /// <summary>Answers with a sentence.</summary>
    public static Task Refuse(HttpContext context, int status, string why)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/html; charset=utf-8";
        return context.Response.WriteAsync($"""
            <!DOCTYPE html>
            <html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><meta name="color-scheme" content="light dark"><title>The bench</title></head>
            <body><main><h1>{HtmlEncoder.Default.Encode(why)}</h1><p><a href="/">To the day's work</a></p></main></body></html>

            """);
    }

    /// <summary>What is answered to a form that cannot be read, whoever found that out; null for a fault of the program's own.</summary>
    private static int? StatusOf(Exception bad) => bad switch
    {
        BadHttpRequestException request => request.StatusCode,
        AntiforgeryValidationException { InnerException: { } inner } => StatusOf(inner) ?? StatusCodes.Status400BadRequest,
        InvalidDataException => StatusCodes.Status400BadRequest,
        _ => null,
    };

    private static bool IsChange(HttpRequest request) => !HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method);

    /// <summary>What is typed as a key in the address of a page; null for nothing.</summary>
    private static string? KeyIn(HttpRequest request) => HttpMethods.IsGet(request.Method) && request.Query[KeyName].ToString() is { Length: > 0 } typed ? typed : null;

    /// <summary>Has the browser keep the pass, and takes the key out of the address, where it is seen and kept.</summary>
    private static void LetIn(HttpContext context, BenchKey key)
    {
        context.Response.Cookies.Append(PassName, key.Pass, new() { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", MaxAge = TimeSpan.FromDays(400), IsEssential = true });
        context.Response.Redirect("/");
    }

    private bool IsAtHome(HttpContext context) =>
        context.Connection.RemoteIpAddress is { } remote && IPAddress.IsLoopback(remote)
        || (key is not null && context.Request.Cookies.TryGetValue(PassName, out var kept) && key.IsPass(kept ?? ""));

    private async Task AskForTheKey(HttpContext context)
    {
        var from = context.Connection.RemoteIpAddress?.ToString() ?? "";
        if (attempts.AreSpent(from))
        {
            context.Response.Headers.RetryAfter = "60";
            await Refuse(context, StatusCodes.Status429TooManyRequests, "Too many keys that do not fit. Wait a minute.");
            return;
        }

        if (key is not null && KeyIn(context.Request) is { } typed)
        {
            if (key.Opens(typed))
            {
                LetIn(context, key);
                return;
            }

            attempts.Count(from);
        }

        await Refuse(context, StatusCodes.Status401Unauthorized, "This bench is for the shop's own phones. Scan the code that stands on the terminal where it was started, or open the address printed there.");
    }

    private async Task<string?> WhyNot(HttpContext context)
    {
        var headers = context.Request.Headers;
        var origin = headers.Origin.ToString();
        if (headers["Sec-Fetch-Site"].ToString() is not ("" or "same-origin" or "none") || (origin.Length > 0 && !origin.Equals($"{context.Request.Scheme}://{context.Request.Host}", StringComparison.OrdinalIgnoreCase)))
        {
            return "A change must come from a page of the bench itself.";
        }

        // Another than UTF-8 is no browser's: forms are written in their page's own signs.
        if (context.Request.GetTypedHeaders().ContentType is { Charset: { Length: > 0 } signs } && !signs.AsSpan().Trim('"').Equals("utf-8", StringComparison.OrdinalIgnoreCase))
        {
            return "This is no form of the bench; nothing was changed.";
        }

        return await antiforgery.IsRequestValidAsync(context) ? null : "This page is too old to be sent. Go back, load it again, and send it once more; nothing was changed.";
    }
}
