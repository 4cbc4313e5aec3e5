namespace ShopDays.Measures;

/// <summary>Hands-on time: what the maker's arm spends. Waits are NodaTime durations and do not mix with it.</summary>
/// <remarks><c>default</c> is zero.</remarks>
public readonly record struct WorkTime : IComparable<WorkTime>
{
    private WorkTime(double value) => Minutes = value;

    /// <summary>Nothing.</summary>
    public static WorkTime Zero => default;

    /// <summary>The figure in minutes.</summary>
    public double Minutes { get; }

    /// <summary>The time in hours.</summary>
    public double Hours => Minutes / 60;

    /// <summary>Makes one from hours.</summary>
    public static WorkTime FromHours(double hours) => FromMinutes(hours * 60);

    /// <summary>Makes one from a figure in minutes.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figure is not finite.</exception>
    public static WorkTime FromMinutes(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "a measure is a finite number");
        }

        return new(value);
    }

    /// <inheritdoc/>
    public int CompareTo(WorkTime other) => Minutes.CompareTo(other.Minutes);

    /// <summary>The sum.</summary>
    public static WorkTime operator +(WorkTime left, WorkTime right) => new(left.Minutes + right.Minutes);

    /// <summary>The difference.</summary>
    public static WorkTime operator -(WorkTime left, WorkTime right) => new(left.Minutes - right.Minutes);

    /// <summary>So many times as much.</summary>
    public static WorkTime operator *(WorkTime measure, double times) => new(measure.Minutes * times);

    /// <summary>A share.</summary>
    public static WorkTime operator /(WorkTime measure, double shares) => new(measure.Minutes / shares);

    /// <summary>How many times one goes into the other.</summary>
    public static double operator /(WorkTime left, WorkTime right) => left.Minutes / right.Minutes;

    /// <summary>Less.</summary>
    public static bool operator <(WorkTime left, WorkTime right) => left.Minutes < right.Minutes;

    /// <summary>More.</summary>
    public static bool operator >(WorkTime left, WorkTime right) => left.Minutes > right.Minutes;

    /// <summary>Less or equal.</summary>
    public static bool operator <=(WorkTime left, WorkTime right) => left.Minutes <= right.Minutes;

    /// <summary>More or equal.</summary>
    public static bool operator >=(WorkTime left, WorkTime right) => left.Minutes >= right.Minutes;

    /// <summary>The figure with its unit, for logs and failing tests.</summary>
    public override string ToString() => FormattableString.Invariant($"{Minutes:0.###} min");
}
