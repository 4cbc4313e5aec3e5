using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using NodaTime;
using ShopDays.Cli.Files;

namespace ShopDays.Cli.Calendars;

/// <summary>
/// The name by which calendars know an event again: made from the shop and from what the event is about, so that a new plan
/// finds its old events. It is a hash in the form of a UUID, which gives nothing away (RFC 5545, 3.8.4.7; RFC 7986, 5.3).
/// </summary>
internal static class EventUid
{
    // Bits that a hash must give up to be a UUID of one's own making (RFC 9562, 5.8).
    private const int Version = 0x80;
    private const int Variant = 0x80;

    /// <summary>Of a session: by its date, its beginning and whose it is.</summary>
    public static string OfSession(Shop shop, string of, ZonedDateTime start, string worker) => Of(shop, "session", of, CalendarTime.Local(start.LocalDateTime), CalendarTime.Utc(start.ToInstant()), worker);

    /// <summary>Of what a wait leaves to be done: by the task that it follows, and which of its waits it is.</summary>
    public static string OfWait(Shop shop, string job, string task, int number) => Of(shop, "wait", job, task, number.ToString(CultureInfo.InvariantCulture));

    /// <summary>Of a date of a job, by its kind.</summary>
    public static string OfDate(Shop shop, string job, string kind) => Of(shop, "date", job, kind);

    private static string Of(Shop shop, params string[] about)
    {
        // A line feed stands in no name, so that no two rows of names run into one.
        string[] all = [shop.Name, shop.Place.Latitude.ToString("R", CultureInfo.InvariantCulture), shop.Place.Longitude.ToString("R", CultureInfo.InvariantCulture), .. about];
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', all)))[..16];
        hash[6] = (byte)((hash[6] & 0x0F) | Version);
        hash[8] = (byte)((hash[8] & 0x3F) | Variant);
        return new Guid(hash, bigEndian: true).ToString("D");
    }
}
