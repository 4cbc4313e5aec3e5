using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Days;

namespace ShopDays.Cli.Json;

/// <summary>Hours that give no session, for other programs.</summary>
internal static class UnusedJson
{
    /// <summary>The hours as objects to be written.</summary>
    public static IEnumerable<object> Of(IReadOnlyList<UnusedSpan> spans, Shop shop) => spans.Select(span => new
    {
        span.Worker,
        span.Days,
        Hours = span.Hours.ToString(),
        span.Reason,
        First = JsonAnswer.Date(span.First),
        Last = JsonAnswer.Date(span.Last),
        span.Dates,
        Text = UnusedWords.Of(span, shop),
    });
}
