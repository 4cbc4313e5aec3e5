using NodaTime;

namespace ShopDays.Cli.Calendars;

/// <summary>Goes on from an older calendar: what is new, what has changed, what is called off.</summary>
internal static class CalendarUpdate
{
    /// <summary>
    /// The events of the new calendar. One that says the same as before stays in its version; one that changed gets the next
    /// number. One that the plan does not have any more is called off, unless it is over: what was done is not undone by a plan
    /// of the rest.
    /// </summary>
    /// <param name="before">The events of the older calendar by their names; none where there was none.</param>
    /// <param name="planned">The events of the plan.</param>
    /// <param name="now">The moment.</param>
    public static IReadOnlyList<CalendarEvent> Of(IReadOnlyDictionary<string, CalendarEvent> before, IReadOnlyList<CalendarEvent> planned, Instant now)
    {
        var kept = planned.Select(one => one.Uid).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. planned.Select(one => before.GetValueOrDefault(one.Uid) switch
            {
                null => one with { Stamp = now },
                var old when old.SaysTheSame(one) => old,
                var old => one with { Stamp = now, Sequence = old.Sequence + 1 },
            }),
            .. before.Values.Where(old => !kept.Contains(old.Uid)).Select(old => old.IsCancelled || old.End <= now
                ? old
                : old with { IsCancelled = true, Alarm = [], Stamp = now, Sequence = old.Sequence + 1 }),
        ];
    }
}
