namespace ShopDays.Measures;

/// <summary>A mass: what a slab weighs.</summary>
/// <remarks><c>default</c> is zero.</remarks>
public readonly record struct Mass : IComparable<Mass>
{
    private Mass(double value) => Kilograms = value;

    /// <summary>Nothing.</summary>
    public static Mass Zero => default;

    /// <summary>The figure in kilograms.</summary>
    public double Kilograms { get; }

    /// <summary>The mass in pounds (0.45359237 kg exactly).</summary>
    public double Pounds => Kilograms / 0.45359237;

    /// <summary>Makes one from pounds.</summary>
    public static Mass FromPounds(double pounds) => FromKilograms(pounds * 0.45359237);

    /// <summary>Makes one from a figure in kilograms.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figure is not finite.</exception>
    public static Mass FromKilograms(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "a measure is a finite number");
        }

        return new(value);
    }

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);

    /// <summary>The sum.</summary>
    public static Mass operator +(Mass left, Mass right) => new(left.Kilograms + right.Kilograms);

    /// <summary>The difference.</summary>
    public static Mass operator -(Mass left, Mass right) => new(left.Kilograms - right.Kilograms);

    /// <summary>So many times as much.</summary>
    public static Mass operator *(Mass measure, double times) => new(measure.Kilograms * times);

    /// <summary>A share.</summary>
    public static Mass operator /(Mass measure, double shares) => new(measure.Kilograms / shares);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(Mass left, Mass right) => left.Kilograms / right.Kilograms;

    /// <summary>Less.</summary>
    public static bool operator <(Mass left, Mass right) => left.Kilograms < right.Kilograms;

    /// <summary>More.</summary>
    public static bool operator >(Mass left, Mass right) => left.Kilograms > right.Kilograms;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Mass left, Mass right) => left.Kilograms <= right.Kilograms;

    /// <summary>More or equal.</summary>
    public static bool operator >=(Mass left, Mass right) => left.Kilograms >= right.Kilograms;

    /// <summary>The figure with its unit, for logs and failing tests.</summary>
    public override string ToString() => FormattableString.Invariant($"{Kilograms:0.###} kg");
}
