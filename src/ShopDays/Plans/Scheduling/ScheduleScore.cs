namespace ShopDays.Plans.Scheduling;

/// <summary>What schedules are compared by, in this order; less is better.</summary>
/// <param name="Late">Minutes by which orders are finished after their dates, each times its weight.</param>
/// <param name="Finish">The minutes in which orders are finished, each times its weight; for a single order of weight 1 its finish.</param>
/// <param name="ShopDays">Days on which somebody works.</param>
/// <param name="Changeovers">Turns from one set-up to another within sessions.</param>
internal readonly record struct ScheduleScore(long Late, long Finish, int ShopDays, int Changeovers) : IComparable<ScheduleScore>
{
    /// <summary>Worse than any schedule: what nothing is placed in.</summary>
    public static ScheduleScore None { get; } = new(long.MaxValue, long.MaxValue, int.MaxValue, int.MaxValue);

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

        return ShopDays != other.ShopDays ? ShopDays.CompareTo(other.ShopDays) : Changeovers.CompareTo(other.Changeovers);
    }
}
