using NodaTime;

namespace ShopDays.Days;

/// <summary>Where the shop stands, and which clock hangs on its wall.</summary>
public sealed record ShopPlace
{
    /// <summary>Names a place.</summary>
    /// <param name="latitude">Degrees, north positive, -90 to 90, both included.</param>
    /// <param name="longitude">Degrees, east positive, -180 to 180, both included.</param>
    /// <param name="zone">The zone whose wall clock the shop keeps.</param>
    /// <exception cref="ArgumentOutOfRangeException">The latitude or longitude is no place on earth.</exception>
    public ShopPlace(double latitude, double longitude, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        Latitude = Bounded(latitude, 90, nameof(latitude));
        Longitude = Bounded(longitude, 180, nameof(longitude));
        Zone = zone;
    }

    /// <summary>Degrees, north positive.</summary>
    public double Latitude { get; }

    /// <summary>Degrees, east positive.</summary>
    public double Longitude { get; }

    /// <summary>The zone of the shop's wall clock.</summary>
    public DateTimeZone Zone { get; }

    /// <summary>Whether the clock can belong to the longitude: mean noon comes within four hours of twelve.</summary>
    /// <param name="at">When; the zone's standard time of then is looked at.</param>
    /// <remarks>
    /// A forgotten minus sign in a longitude moves daylight by hours and is otherwise seen nowhere.
    /// The zones in use stay within about three and a half hours of the sun (western China, from memory).
    /// </remarks>
    public bool ClockSuitsLongitude(Instant at)
    {
        var clock = Zone.GetZoneInterval(at).StandardOffset.Seconds / 3600.0;
        var apart = Math.Abs(clock - (Longitude / 15)) % 24;
        return Math.Min(apart, 24 - apart) <= 4;
    }

    private static double Bounded(double degrees, double limit, string name) =>
        Math.Abs(degrees) <= limit ? degrees : throw new ArgumentOutOfRangeException(name, degrees, FormattableString.Invariant($"expected -{limit} to {limit} degrees"));
}
