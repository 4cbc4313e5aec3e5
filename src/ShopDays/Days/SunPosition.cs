using NodaTime;

namespace ShopDays.Days;

/// <summary>Where the sun stands, for an observer anywhere.</summary>
/// <param name="Declination">Radians north of the equator.</param>
/// <param name="GreenwichHourAngle">Radians that the sun stands west of the Greenwich meridian.</param>
/// <remarks>
/// Meeus, Astronomical Algorithms (1998): apparent place from chapter 25 (the shorter theory, good to
/// 0.01 degree), sidereal time from chapter 12, altitude from chapter 13. Figures from memory, and held
/// against almanac tables in the tests; the errors measured there stand at <see cref="Daylight.On"/>.
/// </remarks>
internal readonly record struct SunPosition(double Declination, double GreenwichHourAngle)
{
    private const double DaysPerCentury = 36525;

    /// <summary>The even time of the sun's theory runs ahead of clocks by this: 32.184 s and 37 leap seconds, since 2017.</summary>
    private const double ClockLagInDays = 69.184 / 86400;

    private static readonly Instant Epoch = Instant.FromUtc(2000, 1, 1, 12, 0);

    public static SunPosition At(Instant instant)
    {
        var days = (instant - Epoch).TotalDays;
        var t = (days + ClockLagInDays) / DaysPerCentury;
        var meanLongitude = 280.46646 + (t * (36000.76983 + (t * 0.0003032)));
        var anomaly = Radians(357.52911 + (t * (35999.05029 - (t * 0.0001537))));
        var centre = ((1.914602 - (t * (0.004817 + (t * 0.000014)))) * Math.Sin(anomaly))
            + ((0.019993 - (t * 0.000101)) * Math.Sin(2 * anomaly))
            + (0.000289 * Math.Sin(3 * anomaly));
        var node = Radians(125.04 - (1934.136 * t));
        var nutation = -0.00478 * Math.Sin(node);
        var longitude = Radians(meanLongitude + centre - 0.00569 + nutation);
        var tilt = Radians(23.4392911 - (t * (0.0130042 + (t * 0.00000016))) + (0.00256 * Math.Cos(node)));
        var declination = Math.Asin(Math.Sin(tilt) * Math.Sin(longitude));
        var rightAscension = Math.Atan2(Math.Cos(tilt) * Math.Sin(longitude), Math.Cos(longitude));
        var siderealTime = Radians(280.46061837 + (360.98564736629 * days) + (nutation * Math.Cos(tilt)));
        return new(declination, siderealTime - rightAscension);
    }

    /// <summary>How high the sun's centre stands above the horizon of a place, in degrees, without refraction.</summary>
    public double AltitudeAt(ShopPlace place)
    {
        var latitude = Radians(place.Latitude);
        var hourAngle = GreenwichHourAngle + Radians(place.Longitude);
        var sine = (Math.Sin(latitude) * Math.Sin(Declination)) + (Math.Cos(latitude) * Math.Cos(Declination) * Math.Cos(hourAngle));
        return Math.Asin(Math.Clamp(sine, -1, 1)) * 180 / Math.PI;
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
