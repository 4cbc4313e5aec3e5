namespace ShopDays.Measures;

/// <summary>An area: a face to plane, a kerf to saw.</summary>
/// <remarks><c>default</c> is zero.</remarks>
public readonly record struct Area : IComparable<Area>
{
    private Area(double value) => SquareMillimetres = value;

    /// <summary>Nothing.</summary>
    public static Area Zero => default;

    /// <summary>The figure in square millimetres.</summary>
    public double SquareMillimetres { get; }

    /// <summary>The area in square feet (92,903.04 mm2 exactly).</summary>
    public double SquareFeet => SquareMillimetres / 92_903.04;

    /// <summary>The figure in square metres.</summary>
    public double SquareMetres => SquareMillimetres / 1_000_000;

    /// <summary>The volume of a body of this section.</summary>
    public static Volume operator *(Area area, Length length) => Volume.FromCubicMillimetres(area.SquareMillimetres * length.Millimetres);

    /// <summary>Makes one from a figure in square feet.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figure is not finite.</exception>
    public static Area FromSquareFeet(double value) => FromSquareMillimetres(value * 92_903.04);

    /// <summary>Makes one from a figure in square metres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figure is not finite.</exception>
    public static Area FromSquareMetres(double value) => FromSquareMillimetres(value * 1_000_000);

    /// <summary>Makes one from a figure in square millimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figure is not finite.</exception>
    public static Area FromSquareMillimetres(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "a measure is a finite number");
        }

        return new(value);
    }

    /// <inheritdoc/>
    public int CompareTo(Area other) => SquareMillimetres.CompareTo(other.SquareMillimetres);

    /// <summary>The sum.</summary>
    public static Area operator +(Area left, Area right) => new(left.SquareMillimetres + right.SquareMillimetres);

    /// <summary>The difference.</summary>
    public static Area operator -(Area left, Area right) => new(left.SquareMillimetres - right.SquareMillimetres);

    /// <summary>So many times as much.</summary>
    public static Area operator *(Area measure, double times) => new(measure.SquareMillimetres * times);

    /// <summary>A share.</summary>
    public static Area operator /(Area measure, double shares) => new(measure.SquareMillimetres / shares);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(Area left, Area right) => left.SquareMillimetres / right.SquareMillimetres;

    /// <summary>Less.</summary>
    public static bool operator <(Area left, Area right) => left.SquareMillimetres < right.SquareMillimetres;

    /// <summary>More.</summary>
    public static bool operator >(Area left, Area right) => left.SquareMillimetres > right.SquareMillimetres;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(Area left, Area right) => left.SquareMillimetres <= right.SquareMillimetres;

    /// <summary>More or equal.</summary>
    public static bool operator >=(Area left, Area right) => left.SquareMillimetres >= right.SquareMillimetres;

    /// <summary>The figure with its unit, for logs and failing tests.</summary>
    public override string ToString() => FormattableString.Invariant($"{SquareMillimetres:0.###} mm2");
}
