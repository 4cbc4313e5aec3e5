using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using ShopDays.Cli.Bench.Pages;

namespace ShopDays.Cli.Bench.Doing;

/// <summary>
/// How a change is answered: with the page that it was made from, loaded anew, so that loading it again changes nothing
/// twice; or, where nothing was changed, with the reason and what was typed.
/// </summary>
internal static class Answered
{
    /// <summary>The name of what carries a sentence to the next page, and no further.</summary>
    public const string SaidName = "bench-said";

    private const int MostKept = 3500;

    /// <summary>The next page, with a sentence.</summary>
    public static IResult Done(HttpContext context, string words, string back)
    {
        context.Response.Cookies.Append(SaidName, Kept(words), new() { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", MaxAge = TimeSpan.FromMinutes(1), IsEssential = true });
        return Back(back);
    }

    /// <summary>As much of a sentence as a browser surely keeps (RFC 6265, 6.1: 4096 bytes): all of one that is too long would be lost.</summary>
    private static string Kept(string words)
    {
        var kept = words;
        while (Uri.EscapeDataString(kept).Length > MostKept)
        {
            var length = (kept.Length * 3 / 4) - 1;
            kept = kept[..(char.IsHighSurrogate(kept[length - 1]) ? length - 1 : length)];
        }

        return kept.Length < words.Length ? kept + "…" : words;
    }

    /// <summary>Why nothing was changed, with what was typed: not every browser keeps that for who goes back.</summary>
    public static IResult Refused(Fields fields, string why) => new RazorComponentResult<Refusal>(new { Why = why, fields.Typed }) { StatusCode = StatusCodes.Status422UnprocessableEntity };

    /// <summary>A page of this program and of no other: an address that leads elsewhere leads to the day's work.</summary>
    private static RedirectHttpResult Back(string address) =>
        TypedResults.LocalRedirect(address.Length > 0 && address[0] == '/' && !address.StartsWith("//", StringComparison.Ordinal) && !address.StartsWith("/\\", StringComparison.Ordinal) && address.All(sign => sign is > ' ' and < '\x7f') ? address : "/", permanent: false, preserveMethod: false);
}
