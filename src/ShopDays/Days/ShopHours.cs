using System.Collections.Immutable;

namespace ShopDays.Days;

/// <summary>The hours that one worker means to be in the shop on one date, in order.</summary>
/// <remarks>Hours that touch are one stretch: nobody sweeps up and opens up again in between.</remarks>
public sealed class ShopHours
{
    /// <summary>Hours of one date, in any order.</summary>
    /// <exception cref="ArgumentException">Two of them overlap, or one goes on past midnight.</exception>
    public ShopHours(params IEnumerable<DayHours> hours)
    {
        ArgumentNullException.ThrowIfNull(hours);
        var ordered = hours.OrderBy(one => one.From).ToImmutableArray();
        if (ordered.Any(one => one.PassMidnight))
        {
            throw new ArgumentException("the hours of a date end at 24:00 at the latest", nameof(hours));
        }

        if (FirstOverlap(ordered) is var (earlier, later))
        {
            throw new ArgumentException($"the hours {earlier} and {later} overlap", nameof(hours));
        }

        Items = Joined(ordered);
    }

    /// <summary>A date without hours.</summary>
    public static ShopHours None { get; } = new();

    /// <summary>The stretches, in order, apart from each other.</summary>
    public ImmutableArray<DayHours> Items { get; }

    /// <summary>The first two that overlap, or nothing. Touching is not overlapping.</summary>
    public static (DayHours Earlier, DayHours Later)? FirstOverlap(IEnumerable<DayHours> hours)
    {
        var ordered = hours.OrderBy(one => one.From).ToList();
        for (var later = 1; later < ordered.Count; later++)
        {
            var earlier = ordered[later - 1];
            if (earlier.EndWithTheDay || earlier.PassMidnight || earlier.To > ordered[later].From)
            {
                return (earlier, ordered[later]);
            }
        }

        return null;
    }

    private static ImmutableArray<DayHours> Joined(ImmutableArray<DayHours> ordered)
    {
        var joined = ImmutableArray.CreateBuilder<DayHours>(ordered.Length);
        foreach (var next in ordered)
        {
            if (joined.Count > 0 && joined[^1].To == next.From)
            {
                joined[^1] = DayHours.Between(joined[^1].From, next.To);
            }
            else
            {
                joined.Add(next);
            }
        }

        return joined.ToImmutable();
    }
}
