using System.Collections.Frozen;
using NodaTime;

namespace ShopDays.Days;

/// <summary>Dates with hours of their own, instead of the week's, even when the shop is otherwise closed.</summary>
/// <remarks>A named date wins over a closed span: whoever writes hours for one date means that date.</remarks>
public sealed class ExtraDates
{
    private readonly FrozenDictionary<LocalDate, ShopHours> hours;

    /// <summary>Extra dates with their hours.</summary>
    public ExtraDates(IReadOnlyDictionary<LocalDate, ShopHours> hours)
    {
        ArgumentNullException.ThrowIfNull(hours);
        this.hours = hours.ToFrozenDictionary();
    }

    /// <summary>No extra dates.</summary>
    public static ExtraDates None { get; } = new(FrozenDictionary<LocalDate, ShopHours>.Empty);

    /// <summary>The hours of a date that has its own; nothing for every other date.</summary>
    public ShopHours? On(LocalDate date) => hours.GetValueOrDefault(date);

    /// <summary>These dates, and another's before them where both have one.</summary>
    public ExtraDates With(ExtraDates others)
    {
        var both = hours.ToDictionary();
        foreach (var (date, own) in others.hours)
        {
            both[date] = own;
        }

        return new(both);
    }

    /// <summary>These dates without those that are closed.</summary>
    public ExtraDates Without(ClosedDates closed) => new(hours.Where(one => !closed.Contains(one.Key)).ToDictionary());
}
