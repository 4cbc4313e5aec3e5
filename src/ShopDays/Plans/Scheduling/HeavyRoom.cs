namespace ShopDays.Plans.Scheduling;

/// <summary>
/// How much heavy work one worker may still do on the day of each session: what the day's cap leaves, and what the days
/// before and after leave of the cap on two days running, whichever of them was filled first.
/// </summary>
internal sealed class HeavyRoom
{
    /// <summary>Day 0 stands behind the day before it and one that is never looked at.</summary>
    private const int DaysBefore = 2;

    private readonly CompiledCalendar calendar;
    private readonly (int First, int Behind)[] sessionsOf;
    private readonly int perDay;
    private readonly int inTwoDays;
    private readonly bool daysTouch;
    private readonly int[] done;
    private readonly int[] left;
    private readonly RoomRow room;
    private readonly List<(int Session, int Minutes)> taken = [];
    private int touched;
    private int daysTouched;

    /// <summary>Nothing heavy done yet.</summary>
    /// <param name="calendar">The worker's hours.</param>
    /// <param name="perDay">The cap of a day.</param>
    /// <param name="inTwoDays">The cap of a day and the next, as <see cref="HeavyCaps.OfTwoDays"/> gives it.</param>
    public HeavyRoom(CompiledCalendar calendar, int perDay, int inTwoDays)
    {
        this.calendar = calendar;
        this.perDay = perDay;
        this.inTwoDays = inTwoDays;
        daysTouch = inTwoDays < 2L * perDay;
        var days = calendar.Day;
        sessionsOf = new (int, int)[calendar.Days + DaysBefore + 2];
        for (var session = days.Length - 1; session >= 0; session--)
        {
            ref var own = ref sessionsOf[days[session] + DaysBefore];
            own = (session, own.Behind == 0 ? session + 1 : own.Behind);
        }

        done = new int[sessionsOf.Length];
        left = new int[calendar.Count];
        room = new(calendar.Count, perDay);
        (touched, daysTouched) = (calendar.Count, done.Length);
    }

    /// <summary>The same as <see cref="Left"/>, to look ahead.</summary>
    public RoomRow Room => room;

    /// <summary>Minutes left at each session, shared by the sessions of a day.</summary>
    public int[] Left => left;

    /// <summary>Whether what is taken can be given back.</summary>
    public bool Remembers { get; set; }

    /// <summary>Nothing heavy done yet, but for some minutes on day 0 and on the day before it.</summary>
    public void Reset(int onDay0, int onDayBefore)
    {
        left.AsSpan(0, touched).Fill(perDay);
        room.Reset(touched);
        done.AsSpan(0, daysTouched).Clear();
        (touched, daysTouched) = (0, 0);
        taken.Clear();
        if (onDay0 > 0)
        {
            Add(0, onDay0);
        }

        if (onDayBefore > 0)
        {
            Add(-1, onDayBefore);
        }
    }

    /// <summary>What is left at a session for work of which some is found a place already, and not taken.</summary>
    /// <param name="session">The session.</param>
    /// <param name="onDay">Minutes of it on the session's day.</param>
    /// <param name="onDayBefore">Minutes of it on the day before.</param>
    public int LeftBeside(int session, int onDay, int onDayBefore)
    {
        var day = calendar.Day[session] + DaysBefore;
        return Math.Min(left[session], inTwoDays - done[day] - done[day - 1] - onDayBefore) - onDay;
    }

    /// <summary>Takes some minutes of the day of a session.</summary>
    public void Take(int session, int minutes)
    {
        Add(calendar.Day[session], minutes);
        if (Remembers)
        {
            taken.Add((session, minutes));
        }
    }

    /// <summary>Gives back all that was taken since the worker began to remember.</summary>
    public void GoBack()
    {
        foreach (var (session, minutes) in taken)
        {
            Add(calendar.Day[session], -minutes);
        }

        taken.Clear();
    }

    /// <summary>Forgets what could be given back.</summary>
    public void Forget() => taken.Clear();

    private void Add(int day, int minutes)
    {
        unchecked
        {
            var at = day + DaysBefore;
            done[at] += minutes;
            daysTouched = Math.Max(daysTouched, at + 1);
            Look(at);
            if (daysTouch)
            {
                Look(at - 1);
                Look(at + 1);
            }
        }
    }

    private void Look(int at)
    {
        unchecked
        {
            var (first, behind) = sessionsOf[at];
            if (first == behind)
            {
                return;
            }

            var most = Math.Min(perDay, inTwoDays - Math.Max(done[at - 1], done[at + 1])) - done[at];
            for (var one = first; one < behind; one++)
            {
                left[one] = most;
                room[one] = most;
            }

            touched = Math.Max(touched, behind);
        }
    }
}
