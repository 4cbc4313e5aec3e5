using ShopDays.Measures;

namespace ShopDays.Parts;

/// <summary>How cold and damp a shop is at night, over the year; a shop that is heated through has none.</summary>
/// <param name="Usual">The temperature in every month that has none of its own.</param>
/// <param name="Months">The temperature of single months, 1 to 12.</param>
/// <param name="Humidity">The relative humidity, 0 to 100 %; null when it is not known.</param>
/// <param name="WarmRoom">The temperature of a heated room in which work can spend the night; null when there is none.</param>
public sealed record ShopNights(Temperature Usual, IReadOnlyDictionary<int, Temperature> Months, Percent? Humidity = null, Temperature? WarmRoom = null)
{
    /// <summary>The months of a year.</summary>
    public static IReadOnlyList<int> AllMonths { get; } = [.. Enumerable.Range(1, 12)];

    /// <summary>The shop's own temperature in the nights of a month.</summary>
    public Temperature InShop(int month) => Months.TryGetValue(month, out var own) ? own : Usual;

    /// <summary>Whether work is better off in the warm room in a month: it is there, and warmer than the shop.</summary>
    public bool IsWarmRoomUsed(int month) => WarmRoom is { } room && room > InShop(month);

    /// <summary>The temperature in which work spends the nights of a month.</summary>
    public Temperature WhereWorkLies(int month) => IsWarmRoomUsed(month) ? WarmRoom!.Value : InShop(month);

    /// <summary>The month in which work lies coldest; of several the first.</summary>
    public int ColdestMonth => AllMonths.MinBy(month => WhereWorkLies(month).Celsius);

    /// <summary>The month in which work lies warmest; of several the first.</summary>
    public int WarmestMonth => AllMonths.MaxBy(month => WhereWorkLies(month).Celsius);
}
