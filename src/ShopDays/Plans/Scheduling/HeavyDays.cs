namespace ShopDays.Plans.Scheduling;

/// <summary>What a task that is being fitted in does on a day and on the day before it, in minutes.</summary>
internal struct HeavyDays
{
    private int day;

    /// <summary>Of the day that was gone on to.</summary>
    public int Today { get; private set; }

    /// <summary>Of the day before that.</summary>
    public int DayBefore { get; private set; }

    /// <summary>Goes on to a day, the same or a later one.</summary>
    public void GoOnTo(int next)
    {
        if (next != day)
        {
            (DayBefore, Today, day) = (next == day + 1 ? Today : 0, 0, next);
        }
    }

    /// <summary>Does some more on it.</summary>
    public void Add(int minutes) => Today += minutes;
}
