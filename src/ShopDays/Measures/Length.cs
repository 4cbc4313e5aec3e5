namespace ShopDays.Measures;

/// <summary>
/// A length, kept exactly as a whole number of eighths of a micrometre, so that every 1/64 in (3,175 of them)
/// and every micrometre is exact and two pieces that touch do not overlap by rounding.
/// </summary>
/// <remarks><c>default</c> is zero. May be negative as a difference. Range about ±1.1 million km.</remarks>
public readonly record struct Length : IComparable<Length>
{
    internal const long PerMillimetre = 8_000;
    internal const long PerInch = 203_200;

    private Length(long eighthMicrometres) => EighthMicrometres = eighthMicrometres;

    /// <summary>No length.</summary>
    public static Length Zero => default;

    /// <summary>The exact count of eighths of a micrometre.</summary>
    public long EighthMicrometres { get; }

    /// <summary>The length in millimetres.</summary>
    public double Millimetres => EighthMicrometres / (double)PerMillimetre;

    /// <summary>The length in inches (25.4 mm exactly).</summary>
    public double Inches => EighthMicrometres / (double)PerInch;

    /// <summary>The length in feet (304.8 mm exactly).</summary>
    public double Feet => Inches / 12;

    /// <summary>Makes a length from its exact count of eighths of a micrometre.</summary>
    public static Length FromEighthMicrometres(long count) => new(count);

    /// <summary>Makes a length from millimetres, rounded to the nearest eighth of a micrometre, halves away from zero.</summary>
    /// <exception cref="OverflowException">The number is beyond the range.</exception>
    public static Length FromMillimetres(decimal millimetres) => FromScaled(millimetres * PerMillimetre);

    /// <inheritdoc cref="FromMillimetres(decimal)"/>
    public static Length FromMillimetres(double millimetres) => FromScaled((decimal)millimetres * PerMillimetre);

    /// <summary>Makes a length from inches, rounded to the nearest eighth of a micrometre, halves away from zero.</summary>
    /// <exception cref="OverflowException">The number is beyond the range.</exception>
    public static Length FromInches(decimal inches) => FromScaled(inches * PerInch);

    /// <inheritdoc cref="FromInches(decimal)"/>
    public static Length FromInches(double inches) => FromScaled((decimal)inches * PerInch);

    /// <summary>Makes a length from feet, rounded to the nearest eighth of a micrometre, halves away from zero.</summary>
    /// <exception cref="OverflowException">The number is beyond the range.</exception>
    public static Length FromFeet(double feet) => FromInches((decimal)feet * 12);

    /// <summary>The shorter of two lengths.</summary>
    public static Length Min(Length left, Length right) => left <= right ? left : right;

    /// <summary>The longer of two lengths.</summary>
    public static Length Max(Length left, Length right) => left >= right ? left : right;

    /// <summary>The length without its sign.</summary>
    public Length Abs() => new(Math.Abs(EighthMicrometres));

    /// <inheritdoc/>
    public int CompareTo(Length other) => EighthMicrometres.CompareTo(other.EighthMicrometres);

    /// <summary>The sum.</summary>
    public static Length operator +(Length left, Length right) => new(left.EighthMicrometres + right.EighthMicrometres);

    /// <summary>The difference.</summary>
    public static Length operator -(Length left, Length right) => new(left.EighthMicrometres - right.EighthMicrometres);

    /// <summary>The opposite.</summary>
    public static Length operator -(Length length) => new(-length.EighthMicrometres);

    /// <summary>A length taken several times.</summary>
    public static Length operator *(Length length, int times) => new(length.EighthMicrometres * times);

    /// <summary>A length taken several times.</summary>
    public static Length operator *(int times, Length length) => length * times;

    /// <summary>An equal share of a length, rounded down to an eighth of a micrometre.</summary>
    /// <exception cref="DivideByZeroException"><paramref name="shares"/> is zero.</exception>
    public static Length operator /(Length length, int shares) => new(length.EighthMicrometres / shares);

    /// <summary>How many times one length goes into another.</summary>
    public static double operator /(Length left, Length right) => left.EighthMicrometres / (double)right.EighthMicrometres;

    /// <summary>The area of a rectangle.</summary>
    public static Area operator *(Length left, Length right) => Area.FromSquareMillimetres(left.Millimetres * right.Millimetres);

    /// <summary>Shorter.</summary>
    public static bool operator <(Length left, Length right) => left.EighthMicrometres < right.EighthMicrometres;

    /// <summary>Longer.</summary>
    public static bool operator >(Length left, Length right) => left.EighthMicrometres > right.EighthMicrometres;

    /// <summary>Shorter or equal.</summary>
    public static bool operator <=(Length left, Length right) => left.EighthMicrometres <= right.EighthMicrometres;

    /// <summary>Longer or equal.</summary>
    public static bool operator >=(Length left, Length right) => left.EighthMicrometres >= right.EighthMicrometres;

    /// <summary>The length in millimetres with its unit, for logs and failing tests.</summary>
    public override string ToString() => FormattableString.Invariant($"{Millimetres:0.######} mm");

    private static Length FromScaled(decimal scaled) => new((long)decimal.Round(scaled, MidpointRounding.AwayFromZero));
}
