using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Parts;

/// <summary>The air that timber lies in, over the year.</summary>
/// <param name="Usual">The air in every month that has none of its own.</param>
/// <param name="Months">The air of single months, 1 to 12.</param>
public sealed record YearAir(Climate Usual, IReadOnlyDictionary<int, Climate> Months)
{
    /// <summary>The moisture that timber would come to in the air of a date.</summary>
    public MoistureContent EquilibriumOn(LocalDate date) => (Months.TryGetValue(date.Month, out var month) ? month : Usual).Equilibrium;
}
