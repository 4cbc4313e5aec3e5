using System.Collections.Immutable;
using NodaTime;

namespace ShopDays.Days;

/// <summary>The light of one date at a place: all day, none, or the hours between sunrise and sunset.</summary>
public abstract record Daylight
{
    private protected Daylight()
    {
    }

    /// <summary>The light of a date, from its midnight to the next by the shop's clock.</summary>
    /// <remarks>
    /// Measured against the tables of the U.S. Naval Observatory from 78 N to 78 S, which are rounded to the minute:
    /// within 36 s where the sun's height changes by more than 0.05 degree a minute, within 56 s down to 0.01, and
    /// within 79 s on the first and last days of a polar night. Level ground at the height of the sea, as in almanacs.
    /// </remarks>
    public static Daylight On(LocalDate date, ShopPlace place, DaylightLimit limit)
    {
        var day = new Interval(place.Zone.AtStartOfDay(date).ToInstant(), place.Zone.AtStartOfDay(date.PlusDays(1)).ToInstant());
        if (limit == DaylightLimit.None)
        {
            return new LightAllDay();
        }

        var horizon = new Horizon(place, limit);
        var crossings = horizon.CrossingsIn(day).ToList();
        if (crossings.Count == 0)
        {
            return horizon.IsLight(day.Start) ? new LightAllDay() : new DarkAllDay();
        }

        return new LightPartOfDay(
            Light(day, horizon),
            [.. crossings.Where(crossing => crossing.IsRising).Select(crossing => crossing.At)],
            [.. crossings.Where(crossing => !crossing.IsRising).Select(crossing => crossing.At)]);
    }

    /// <summary>What of a span there is light enough for, the margin taken off, in whole minutes.</summary>
    /// <remarks>Cut inwards to the minute: the air bends the light by more than that from day to day.</remarks>
    public static Stretches In(Interval span, ShopPlace place, DaylightRule rule)
    {
        if (rule.Limit == DaylightLimit.None)
        {
            return new(span);
        }

        var wide = new Interval(span.Start - rule.Margin, span.End + rule.Margin);
        var cut = Light(wide, new Horizon(place, rule.Limit)).Items
            .Select(light => (
                Start: light.Start == wide.Start ? span.Start : MinuteAfter(light.Start + rule.Margin),
                End: light.End == wide.End ? span.End : MinuteBefore(light.End - rule.Margin)))
            .Where(light => light.Start < light.End)
            .Select(light => new Interval(light.Start, light.End));
        return new Stretches(cut).Within(span);
    }

    private static Stretches Light(Interval span, Horizon horizon)
    {
        var light = new List<Interval>();
        Instant? began = horizon.IsLight(span.Start) ? span.Start : null;
        foreach (var crossing in horizon.CrossingsIn(span))
        {
            if (!crossing.IsRising && began is { } start)
            {
                light.Add(new Interval(start, crossing.At));
            }

            began = crossing.IsRising ? crossing.At : null;
        }

        if (began is { } last)
        {
            light.Add(new Interval(last, span.End));
        }

        return new(light);
    }

    private static Instant MinuteAfter(Instant instant)
    {
        var minute = MinuteBefore(instant);
        return minute == instant ? minute : minute + Duration.FromMinutes(1);
    }

    private static Instant MinuteBefore(Instant instant)
    {
        var seconds = instant.ToUnixTimeSeconds();
        var over = seconds % NodaConstants.SecondsPerMinute;
        return Instant.FromUnixTimeSeconds(seconds - (over < 0 ? over + NodaConstants.SecondsPerMinute : over));
    }
}

/// <summary>The sun does not go down, or lamps make it no matter.</summary>
public sealed record LightAllDay : Daylight;

/// <summary>The sun does not come up.</summary>
public sealed record DarkAllDay : Daylight;

/// <summary>The sun comes up, or goes down, or both, perhaps more than once.</summary>
/// <param name="Light">The stretches of light within the date.</param>
/// <param name="Rises">When light begins, in order; empty on a date with only a sunset.</param>
/// <param name="Sets">When light ends, in order; empty on a date with only a sunrise.</param>
public sealed record LightPartOfDay(Stretches Light, ImmutableArray<Instant> Rises, ImmutableArray<Instant> Sets) : Daylight;
