using NodaTime;
using ShopDays.Cli.Commands.Logging;
using ShopDays.Cli.Store;

namespace ShopDays.Cli.Bench.Now;

/// <summary>Tells work that goes on from work that somebody forgot to end.</summary>
internal static class Forgotten
{
    /// <summary>A stretch this much longer than the longest session was not worked through (common practice, no source).</summary>
    private static readonly Duration BeyondASession = Duration.FromHours(1);

    /// <summary>Whether a stretch has run on for longer than its worker's longest session, and some more.</summary>
    public static bool Is(LogShop shop, BegunWork work, Instant now)
    {
        var longest = shop.Shop.Workers
            .Where(worker => worker.Name == work.Worker)
            .Select(worker => shop.Shop.CalendarOf(worker).LongestSession(now.InZone(shop.Zone).Date))
            .FirstOrDefault() ?? TaskEnd.LongestStretch;
        return work.StretchBy(now) > Duration.FromMinutes(longest.Minutes) + BeyondASession;
    }
}
