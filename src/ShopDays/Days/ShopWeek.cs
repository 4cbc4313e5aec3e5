using System.Collections.Frozen;
using NodaTime;

namespace ShopDays.Days;

/// <summary>The hours of each day of an ordinary week, by the shop's wall clock.</summary>
public sealed class ShopWeek
{
    private readonly FrozenDictionary<IsoDayOfWeek, ShopHours> hours;

    /// <summary>A week from the hours of its days; days that are not named have none.</summary>
    /// <exception cref="ArgumentException">A key is not a day of the week.</exception>
    public ShopWeek(IReadOnlyDictionary<IsoDayOfWeek, ShopHours> hours)
    {
        ArgumentNullException.ThrowIfNull(hours);
        if (hours.Keys.Any(day => day is < IsoDayOfWeek.Monday or > IsoDayOfWeek.Sunday))
        {
            throw new ArgumentException("expected Monday to Sunday", nameof(hours));
        }

        this.hours = hours.ToFrozenDictionary();
    }

    /// <summary>The hours of a day of the week.</summary>
    public ShopHours this[IsoDayOfWeek day] => hours.GetValueOrDefault(day, ShopHours.None);
}
