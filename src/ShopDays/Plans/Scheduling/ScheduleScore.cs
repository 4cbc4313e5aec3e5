namespace ShopDays.Plans.Scheduling;

/// <summary>What schedules are compared by, in this order; less is better.</summary>
/// <param name="Late">What <see cref="LateOf"/> says of all orders: first how many dates are broken, then by how much, each times its weight.</param>
/// <param name="Finish">The minutes in which orders are finished, each times its weight; for a single order of weight 1 its finish.</param>
/// <param name="ShopDays">Days on which somebody works.</param>
/// <param name="CallDays">Days on which anybody but the first worker is called in.</param>
/// <param name="Changeovers">Turns from one set-up to another within sessions.</param>
internal readonly record struct ScheduleScore(long Late, long Finish, int ShopDays, int CallDays, int Changeovers) : IComparable<ScheduleScore>
{
    /// <summary>Worse than any schedule: what nothing is placed in.</summary>
    public static ScheduleScore None { get; } = new(long.MaxValue, long.MaxValue, int.MaxValue, int.MaxValue, int.MaxValue);

    /// <summary>A date that is broken weighs more than any minutes by which others are broken: many orders of weight 9, five years late.</summary>
    private const long Broken = 1L << 36;

    /// <summary>What one order adds to <see cref="Late"/>.</summary>
    /// <param name="weight">Its weight, 1 to 9.</param>
    /// <param name="minutes">By how many minutes it is finished after its date; 0 or less when the date is kept.</param>
    public static long LateOf(int weight, int minutes) => minutes <= 0 ? 0 : weight * (Broken + minutes);

    /// <summary>How many dates are broken, each times its order's weight.</summary>
    public long BrokenDates => Late / Broken;

    public static bool operator <(ScheduleScore one, ScheduleScore other) => one.CompareTo(other) < 0;

    public static bool operator >(ScheduleScore one, ScheduleScore other) => one.CompareTo(other) > 0;

    public static bool operator <=(ScheduleScore one, ScheduleScore other) => one.CompareTo(other) <= 0;

    public static bool operator >=(ScheduleScore one, ScheduleScore other) => one.CompareTo(other) >= 0;

    /// <inheritdoc/>
    public int CompareTo(ScheduleScore other)
    {
        if (Late != other.Late)
        {
            return Late.CompareTo(other.Late);
        }

        if (Finish != other.Finish)
        {
            return Finish.CompareTo(other.Finish);
        }

        if (ShopDays != other.ShopDays)
        {
            return ShopDays.CompareTo(other.ShopDays);
        }

        return CallDays != other.CallDays ? CallDays.CompareTo(other.CallDays) : Changeovers.CompareTo(other.Changeovers);
    }
}
