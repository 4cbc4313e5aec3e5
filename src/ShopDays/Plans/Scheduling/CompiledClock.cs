using NodaTime;

namespace ShopDays.Plans.Scheduling;

/// <summary>How far the shop's clock is put forward or back while a plan runs, in whole minutes from its origin.</summary>
internal sealed class CompiledClock
{
    private const int Day = 24 * 60;

    private readonly int[] changes;
    private readonly int[] ahead;

    private CompiledClock(int[] changes, int[] ahead) => (this.changes, this.ahead) = (changes, ahead);

    /// <summary>A clock that is never put forward or back.</summary>
    public static CompiledClock Even { get; } = new([], [0]);

    /// <summary>Whether it is ever put forward or back.</summary>
    public bool Changes => changes.Length > 0;

    /// <summary>The most that it is put forward at once: by so much a day may be shorter than others.</summary>
    public int MostForward => Enumerable.Range(0, changes.Length).Select(change => ahead[change + 1] - ahead[change]).Append(0).Max();

    /// <summary>The clock of a zone.</summary>
    /// <param name="zone">The zone.</param>
    /// <param name="origin">Minute 0.</param>
    /// <param name="days">Days from there that are looked at.</param>
    public static CompiledClock Of(DateTimeZone zone, Instant origin, int days)
    {
        var spells = zone.GetZoneIntervals(origin, origin + Duration.FromDays(days)).ToList();
        return new(
            [.. spells.Skip(1).Select(spell => (int)Math.Ceiling((spell.Start - origin).TotalMinutes))],
            [.. spells.Select(spell => (spell.WallOffset - spells[0].WallOffset).Seconds / 60)]);
    }

    /// <summary>
    /// The minute at which the clock shows the same time some days later. A time that is skipped then is one by the clock
    /// before, and of one that comes twice the first is meant (RFC 5545, 3.3.5).
    /// </summary>
    public int DaysAfter(int minute, int days)
    {
        var shown = minute + AheadAt(minute) + (days * Day);
        var spell = 0;
        while (spell < changes.Length && shown - ahead[spell] >= changes[spell] && shown - ahead[spell + 1] >= changes[spell])
        {
            spell++;
        }

        return shown - ahead[spell];
    }

    /// <summary>The minute some minutes later, of which whole days go by the calendar.</summary>
    public int After(int minute, int minutes) => DaysAfter(minute, minutes / Day) + (minutes % Day);

    private int AheadAt(int minute)
    {
        var at = 0;
        while (at < changes.Length && changes[at] <= minute)
        {
            at++;
        }

        return ahead[at];
    }
}
