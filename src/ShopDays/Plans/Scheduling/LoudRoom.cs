namespace ShopDays.Plans.Scheduling;

/// <summary>
/// How long a stretch of noise each session of a worker may still hold at most. It is worked out where noise was turned
/// away, and holds from then on, since free time only grows less: quiet evenings are passed over many at a time.
/// </summary>
internal sealed class LoudRoom
{
    private readonly CompiledCalendar calendar;
    private readonly FreeTime free;
    private readonly RoomRow most;
    private int touched;

    /// <summary>Nothing known of any session.</summary>
    public LoudRoom(CompiledCalendar calendar, FreeTime free)
    {
        (this.calendar, this.free) = (calendar, free);
        most = new(calendar.Count, RoomRow.Most);
    }

    /// <summary>Minutes at most, of sessions of which nothing is known and behind the last session without end.</summary>
    public RoomRow Most => most;

    /// <summary>Forgets what is known.</summary>
    public void Reset()
    {
        most.Reset(touched);
        touched = 0;
    }

    /// <summary>Looks through a session. What is taken later must not be given back.</summary>
    public void Look(int session)
    {
        var longest = 0;
        var minute = calendar.From[session];
        while (free.TryNext(session, minute, key: -1, least: 1, also: null, out var found) && found.Session == session)
        {
            var quiet = calendar.QuietAfter(session, found.From);
            var end = Math.Min(found.To, calendar.NoiseEndsAt(quiet, found.From));
            longest = Math.Max(longest, end - found.From);
            minute = end < found.To ? calendar.QuietEnd(quiet) : end;
        }

        most[session] = longest;
        touched = Math.Max(touched, session + 1);
    }
}
