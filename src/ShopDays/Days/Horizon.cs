using System.Diagnostics;
using NodaTime;

namespace ShopDays.Days;

/// <summary>The sun coming up to, or going down past, the bound of daylight.</summary>
/// <param name="At">When.</param>
/// <param name="IsRising">Whether the light begins there; otherwise it ends.</param>
internal readonly record struct SunCrossing(Instant At, bool IsRising);

/// <summary>The bound between light and dark at a place: when the sun passes it.</summary>
/// <remarks>
/// The sun's height is looked at every half hour, and wherever it turns near the bound its highest or lowest
/// point is found too. So a day with two sunsets is found, and a sun that peeps out for a minute.
/// </remarks>
internal sealed class Horizon
{
    private static readonly Duration Step = Duration.FromMinutes(30);
    private static readonly Duration Exact = Duration.FromNanoseconds(1000);
    private readonly ShopPlace place;
    private readonly double altitude;

    /// <param name="place">Where.</param>
    /// <param name="limit">Which bound; not <see cref="DaylightLimit.None"/>.</param>
    public Horizon(ShopPlace place, DaylightLimit limit)
    {
        this.place = place;

        // 50 minutes of arc: 34 of refraction at the horizon and 16 for the sun's own radius (Meeus 1998, ch. 15).
        altitude = limit switch
        {
            DaylightLimit.SunriseSunset => -50.0 / 60,
            DaylightLimit.CivilTwilight => -6,
            DaylightLimit.None => throw new ArgumentException("lamps have no horizon", nameof(limit)),
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>Degrees of the sun above the bound; negative in the dark.</summary>
    public double Above(Instant instant) => SunPosition.At(instant).AltitudeAt(place) - altitude;

    /// <summary>Whether it is light.</summary>
    public bool IsLight(Instant instant) => Above(instant) >= 0;

    /// <summary>Every crossing in a span, in order; right to a microsecond of the formulas.</summary>
    public IEnumerable<SunCrossing> CrossingsIn(Interval span)
    {
        var knots = Knots(span);
        for (var next = 1; next < knots.Count; next++)
        {
            var rises = knots[next].Above >= 0;
            if (knots[next - 1].Above >= 0 == rises)
            {
                continue;
            }

            var at = Crossing(knots[next - 1].At, knots[next].At, rises);
            if (span.Contains(at))
            {
                yield return new(at, rises);
            }
        }
    }

    private List<(Instant At, double Above)> Knots(Interval span)
    {
        // One step more at either end: a turn is seen only from both its sides.
        var even = new List<(Instant At, double Above)>();
        for (var at = span.Start - Step; at < span.End + Step + Step; at += Step)
        {
            even.Add((at, Above(at)));
        }

        var turns = new List<(Instant At, double Above)>();
        for (var middle = 1; middle < even.Count - 1; middle++)
        {
            var side = even[middle].Above >= 0 ? 1 : -1;
            var depth = side * even[middle].Above;
            // Within half an hour of its turn the sun moves less than half a degree up or down.
            if (depth < 1 && depth <= side * even[middle - 1].Above && depth <= side * even[middle + 1].Above)
            {
                turns.Add(Turn(even[middle - 1].At, even[middle + 1].At, side));
            }
        }

        return [.. even.Concat(turns).OrderBy(knot => knot.At)];
    }

    /// <summary>The lowest (side 1) or highest (side -1) point between two instants that have one of them.</summary>
    private (Instant At, double Above) Turn(Instant from, Instant to, int side)
    {
        while (to - from > Duration.FromMilliseconds(100))
        {
            var third = (to - from) / 3;
            if (side * Above(from + third) < side * Above(to - third))
            {
                to -= third;
            }
            else
            {
                from += third;
            }
        }

        return (from, Above(from));
    }

    private Instant Crossing(Instant before, Instant after, bool rises)
    {
        while (after - before > Exact)
        {
            var middle = before + ((after - before) / 2);
            if (IsLight(middle) == rises)
            {
                after = middle;
            }
            else
            {
                before = middle;
            }
        }

        return after;
    }
}
