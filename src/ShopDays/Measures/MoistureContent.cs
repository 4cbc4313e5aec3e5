namespace ShopDays.Measures;

/// <summary>Moisture of timber: mass of water over mass of oven-dry wood.</summary>
/// <remarks><c>default</c> is oven-dry.</remarks>
public readonly record struct MoistureContent : IComparable<MoistureContent>
{
    private MoistureContent(double percent) => Percent = percent;

    /// <summary>The moisture in percent of the oven-dry mass, 0 to 250.</summary>
    public double Percent { get; }

    /// <summary>Makes one from percent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or above 250: no timber holds so much water.</exception>
    public static MoistureContent FromPercent(double percent)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(percent, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(percent, 250);
        return new(percent);
    }

    /// <inheritdoc/>
    public int CompareTo(MoistureContent other) => Percent.CompareTo(other.Percent);

    /// <summary>Drier.</summary>
    public static bool operator <(MoistureContent left, MoistureContent right) => left.Percent < right.Percent;

    /// <summary>Wetter.</summary>
    public static bool operator >(MoistureContent left, MoistureContent right) => left.Percent > right.Percent;

    /// <summary>Drier or equal.</summary>
    public static bool operator <=(MoistureContent left, MoistureContent right) => left.Percent <= right.Percent;

    /// <summary>Wetter or equal.</summary>
    public static bool operator >=(MoistureContent left, MoistureContent right) => left.Percent >= right.Percent;

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Percent:0.#}%");
}
