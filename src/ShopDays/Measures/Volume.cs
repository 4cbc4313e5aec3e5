namespace ShopDays.Measures;

/// <summary>A volume of timber.</summary>
/// <remarks><c>default</c> is zero.</remarks>
public readonly record struct Volume : IComparable<Volume>
{
    private Volume(double value) => CubicMillimetres = value;

    /// <summary>Nothing.</summary>
    public static Volume Zero => default;

    /// <summary>The figure in cubic millimetres.</summary>
    public double CubicMillimetres { get; }

    /// <summary>The volume in cubic metres.</summary>
    public double CubicMetres => CubicMillimetres / 1e9;

    /// <summary>The volume in board feet of 144 cubic inches.</summary>
    public double BoardFeet => CubicMillimetres / (144 * 25.4 * 25.4 * 25.4);

    /// <summary>Makes one from a figure in cubic millimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figure is not finite.</exception>
    public static Volume FromCubicMillimetres(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "a measure is a finite number");
        }

        return new(value);
    }

    /// <inheritdoc/>
    public int CompareTo(Volume other) => CubicMillimetres.CompareTo(other.CubicMillimetres);

    /// <summary>The sum.</summary>
    public static Volume operator +(Volume left, Volume right) => new(left.CubicMillimetres + right.CubicMillimetres);

    /// <summary>The difference.</summary>
    public static Volume operator -(Volume left, Volume right) => new(left.CubicMillimetres - right.CubicMillimetres);

    /// <summary>So many times as much.</summary>
    public static Volume operator *(Volume measure, double times) => new(measure.CubicMillimetres * times);

    /// <summary>A share.</summary>
    public static Volume operator /(Volume measure, double shares) => new(measure.CubicMillimetres / shares);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(Volume left, Volume right) => left.CubicMillimetres / right.CubicMillimetres;

    /// <summary>Less.</summary>
    public static bool operator <(Volume left, Volume right) => left.CubicMillimetres < right.CubicMillimetres;

    /// <summary>More.</summary>
    public static bool operator >(Volume left, Volume right) => left.CubicMillimetres > right.CubicMillimetres;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Volume left, Volume right) => left.CubicMillimetres <= right.CubicMillimetres;

    /// <summary>More or equal.</summary>
    public static bool operator >=(Volume left, Volume right) => left.CubicMillimetres >= right.CubicMillimetres;

    /// <summary>The figure with its unit, for logs and failing tests.</summary>
    public override string ToString() => FormattableString.Invariant($"{CubicMillimetres:0.###} mm3");
}
