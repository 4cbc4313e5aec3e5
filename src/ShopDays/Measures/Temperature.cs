namespace ShopDays.Measures;

/// <summary>A temperature of air.</summary>
/// <remarks><c>default</c> is the freezing point of water.</remarks>
public readonly record struct Temperature : IComparable<Temperature>
{
    private Temperature(double celsius) => Celsius = celsius;

    /// <summary>The temperature in degrees Celsius.</summary>
    public double Celsius { get; }

    /// <summary>The temperature in degrees Fahrenheit.</summary>
    public double Fahrenheit => (Celsius * 9 / 5) + 32;

    /// <summary>Makes one from degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figure is not finite, or below absolute zero.</exception>
    public static Temperature FromCelsius(double degrees)
    {
        if (!double.IsFinite(degrees) || degrees < -273.15)
        {
            throw new ArgumentOutOfRangeException(nameof(degrees), degrees, "there is no such temperature");
        }

        return new(degrees);
    }

    /// <summary>Makes one from degrees Fahrenheit.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figure is not finite, or below absolute zero.</exception>
    public static Temperature FromFahrenheit(double degrees) => FromCelsius((degrees - 32) * 5 / 9);

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => Celsius.CompareTo(other.Celsius);

    /// <summary>Colder.</summary>
    public static bool operator <(Temperature left, Temperature right) => left.Celsius < right.Celsius;

    /// <summary>Warmer.</summary>
    public static bool operator >(Temperature left, Temperature right) => left.Celsius > right.Celsius;

    /// <summary>Colder or as warm.</summary>
    public static bool operator <=(Temperature left, Temperature right) => left.Celsius <= right.Celsius;

    /// <summary>Warmer or as warm.</summary>
    public static bool operator >=(Temperature left, Temperature right) => left.Celsius >= right.Celsius;

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Celsius:0.#} °C");
}
