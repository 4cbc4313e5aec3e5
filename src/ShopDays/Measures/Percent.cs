namespace ShopDays.Measures;

/// <summary>A share in hundredths: a margin, a tax, an allowance.</summary>
/// <remarks><c>default</c> is 0%. Moisture has a type of its own, <see cref="MoistureContent"/>.</remarks>
public readonly record struct Percent : IComparable<Percent>
{
    private Percent(double value) => Value = value;

    /// <summary>Nothing.</summary>
    public static Percent Zero => default;

    /// <summary>The figure in percent: 15 for 15%.</summary>
    public double Value { get; }

    /// <summary>The share of one: 0.15 for 15%.</summary>
    public double Share => Value / 100;

    /// <summary>Makes one from a figure in percent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figure is not finite.</exception>
    public static Percent FromPercent(double value) => double.IsFinite(value)
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "a measure is a finite number");

    /// <inheritdoc/>
    public int CompareTo(Percent other) => Value.CompareTo(other.Value);

    /// <summary>Less.</summary>
    public static bool operator <(Percent left, Percent right) => left.Value < right.Value;

    /// <summary>More.</summary>
    public static bool operator >(Percent left, Percent right) => left.Value > right.Value;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Percent left, Percent right) => left.Value <= right.Value;

    /// <summary>More or equal.</summary>
    public static bool operator >=(Percent left, Percent right) => left.Value >= right.Value;

    /// <summary>The figure with its sign, to two decimals.</summary>
    public override string ToString() => FormattableString.Invariant($"{Value:0.##}%");
}
