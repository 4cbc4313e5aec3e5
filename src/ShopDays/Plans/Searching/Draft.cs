using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>
/// A schedule as the search keeps it: what it is worth, and when its blocks end, for the next pass in the other direction.
/// Used again and again.
/// </summary>
internal sealed class Draft(int blocks, int orders)
{
    /// <summary>
    /// For each block, by its number in the problem that is to be placed next, how long before the end of the schedule it
    /// ends, in minutes: in the other direction, when it would begin.
    /// </summary>
    public int[] Keys { get; } = new int[blocks];

    /// <summary>When each order is finished, in the clock of the schedule's direction.</summary>
    public int[] Finishes { get; } = new int[orders];

    /// <summary>What it is worth; of a backward one what the schedule forwards is likely to be worth.</summary>
    public ScheduleScore Score { get; set; } = ScheduleScore.None;

    /// <summary>Whether there is a schedule.</summary>
    public bool IsMade => Score != ScheduleScore.None;

    /// <summary>Becomes like another.</summary>
    public void CopyFrom(Draft other)
    {
        other.Keys.CopyTo(Keys, 0);
        other.Finishes.CopyTo(Finishes, 0);
        Score = other.Score;
    }
}
