using NodaTime;

namespace ShopDays.Times;

/// <summary>How rates are learned from a log.</summary>
/// <param name="AsOf">The date from which the age of each time is counted.</param>
/// <param name="Maker">Whose rates they are: the others' times count with a pace of their own taken out.</param>
/// <param name="HalfLife">The age at which a time counts half; null when age does not matter.</param>
public sealed record Learning(LocalDate AsOf, string Maker, Duration? HalfLife = null)
{
    /// <summary>How much a time of that date counts, above 0 up to 1; what lies ahead counts whole.</summary>
    public double WeightOf(LocalDate on)
    {
        var days = Period.DaysBetween(on, AsOf);
        return HalfLife is { } halfLife && days > 0 ? Math.Pow(2, -days / halfLife.TotalDays) : 1;
    }
}
