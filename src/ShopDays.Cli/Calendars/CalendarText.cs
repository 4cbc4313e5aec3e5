using System.Text;
using NodaTime;

namespace ShopDays.Cli.Calendars;

/// <summary>A calendar as the text of its file (RFC 5545).</summary>
internal static class CalendarText
{
    /// <summary>Says who wrote it.</summary>
    public const string MadeBy = "PRODID:-//ShopDays//Plan in working days//EN";

    /// <summary>The property that says what it is of, so that no calendar is taken for that of another job.</summary>
    public const string OfName = "X-SHOPDAYS-OF:";

    /// <summary>The line that says what it is of.</summary>
    public static string OfLine(string of) => OfName + ContentLine.Text(of);

    /// <summary>
    /// Writes it. There is no METHOD: nobody is invited, and a calendar without one is what stands in the plan now (3.7.2).
    /// </summary>
    /// <param name="of">What it is of.</param>
    /// <param name="events">Its events.</param>
    /// <returns>The bytes of the file: UTF-8 without a mark at its head.</returns>
    public static byte[] Write(string of, IReadOnlyList<CalendarEvent> events)
    {
        var text = new StringBuilder();
        IEnumerable<string> lines =
        [
            "BEGIN:VCALENDAR",
            "VERSION:2.0",
            MadeBy,
            "CALSCALE:GREGORIAN",
            OfLine(of),
            .. Zones(events),
            .. events.OrderBy(one => one.Start).ThenBy(one => one.Uid, StringComparer.Ordinal).SelectMany(one => one.AllLines()),
            "END:VCALENDAR",
        ];
        foreach (var line in lines)
        {
            ContentLine.AddTo(text, line);
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static IEnumerable<string> Zones(IReadOnlyList<CalendarEvent> events)
    {
        var used = events.SelectMany(one => one.Zones, (one, zone) => (Zone: zone, one.Start, one.End)).GroupBy(one => one.Zone, StringComparer.Ordinal);
        return used
            .OrderBy(zone => zone.Key, StringComparer.Ordinal)
            .SelectMany(zone => ZoneRules.Lines(DateTimeZoneProviders.Tzdb[zone.Key], zone.Min(one => one.Start), zone.Max(one => one.End)));
    }
}
