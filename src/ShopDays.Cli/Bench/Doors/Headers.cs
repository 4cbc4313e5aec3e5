using Microsoft.AspNetCore.Http;

namespace ShopDays.Cli.Bench.Doors;

/// <summary>
/// What every answer tells the browser not to do (OWASP Secure Headers Project; Content Security Policy Level 3, W3C): run
/// or fetch anything that is not this program's own, be framed, guess at types, tell others where it came from, keep pages.
/// </summary>
internal static class Headers
{
    // Pages of their own must still say where they come from: without that, browsers send forms with no origin at all.
    private static readonly (string Name, string Value)[] All =
    [
        ("Content-Security-Policy", "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; connect-src 'self'; manifest-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"),
        ("X-Content-Type-Options", "nosniff"),
        ("X-Frame-Options", "DENY"),
        ("Referrer-Policy", "same-origin"),
        ("Cross-Origin-Opener-Policy", "same-origin"),
        ("Cross-Origin-Resource-Policy", "same-origin"),
        ("Cross-Origin-Embedder-Policy", "require-corp"),
        ("Permissions-Policy", "camera=(), microphone=(), geolocation=(), payment=(), usb=()"),
        ("X-Permitted-Cross-Domain-Policies", "none"),
    ];

    /// <summary>Puts them on an answer; pages are not kept, since the next one may say something else.</summary>
    public static void PutOn(HttpResponse response)
    {
        foreach (var (name, value) in All)
        {
            response.Headers[name] = value;
        }

        response.Headers.CacheControl = "no-store";
    }
}
