using NodaTime;

namespace ShopDays.Days;

/// <summary>What bounds the light to work by.</summary>
public enum DaylightLimit
{
    /// <summary>Lamps: the sun does not matter.</summary>
    None,

    /// <summary>From the sun's upper edge coming up to its going down.</summary>
    SunriseSunset,

    /// <summary>As long as the sun's centre is less than 6 degrees below the horizon.</summary>
    CivilTwilight,
}

/// <summary>How a shop without good lamps cuts its hours to the light.</summary>
public sealed record DaylightRule
{
    /// <summary>A rule.</summary>
    /// <param name="limit">What bounds the light.</param>
    /// <param name="margin">What is lost of the light at both ends (trees, a north window); not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The margin is negative.</exception>
    public DaylightRule(DaylightLimit limit, Duration margin)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(margin, Duration.Zero);
        (Limit, Margin) = (limit, margin);
    }

    /// <summary>Work by lamps at any hour.</summary>
    public static DaylightRule Lamps { get; } = new(DaylightLimit.None, Duration.Zero);

    /// <summary>What bounds the light.</summary>
    public DaylightLimit Limit { get; }

    /// <summary>What is lost of the light at both ends.</summary>
    public Duration Margin { get; }
}
