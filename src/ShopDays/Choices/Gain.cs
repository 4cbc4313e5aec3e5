namespace ShopDays.Choices;

/// <summary>What is gained by a difference: days before money, money before hours.</summary>
/// <param name="Days">Days by which the date that four courses in five keep is sooner; below zero when it is later.</param>
/// <param name="Amount">By how much the least price at the same risk is lower, or without money how many hours fewer; below zero when it is higher.</param>
public readonly record struct Gain(int Days, decimal Amount) : IComparable<Gain>
{
    /// <summary>What a difference gains.</summary>
    public static Gain Of(Difference difference) => new(
        -(difference.DaysAtP80 ?? 0),
        difference.Least is { } least ? -least.Amount : -(decimal)difference.HandsOn.Hours);

    /// <summary>Whether it is worth telling: sooner, or cheaper.</summary>
    public bool IsAny => Days > 0 || Amount > 0;

    /// <summary>The most days first, then the most money; what saves no day stands behind all that saves one.</summary>
    /// <param name="choices">What may be chosen.</param>
    /// <param name="gain">What each gains.</param>
    public static IReadOnlyList<T> InOrder<T>(IEnumerable<T> choices, Func<T, Gain> gain) =>
        [.. choices.Where(one => gain(one).IsAny).OrderByDescending(gain)];

    /// <inheritdoc/>
    public int CompareTo(Gain other) => (Math.Max(0, Days), Amount, Days).CompareTo((Math.Max(0, other.Days), other.Amount, other.Days));

    /// <summary>Whether the one gains less.</summary>
    public static bool operator <(Gain left, Gain right) => left.CompareTo(right) < 0;

    /// <summary>Whether the one gains more.</summary>
    public static bool operator >(Gain left, Gain right) => left.CompareTo(right) > 0;

    /// <summary>Whether the one gains no more.</summary>
    public static bool operator <=(Gain left, Gain right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the one gains no less.</summary>
    public static bool operator >=(Gain left, Gain right) => left.CompareTo(right) >= 0;
}
