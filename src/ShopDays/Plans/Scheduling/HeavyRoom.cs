namespace ShopDays.Plans.Scheduling;

/// <summary>How much heavy work one worker may still do on the day of each session.</summary>
internal sealed class HeavyRoom
{
    private readonly CompiledCalendar calendar;
    private readonly (int First, int Last)[] sameDay;
    private readonly int perDay;
    private readonly int[] left;
    private readonly RoomRow room;
    private readonly List<(int Session, int Minutes)> taken = [];
    private int touched;

    /// <summary>Nothing heavy done yet.</summary>
    public HeavyRoom(CompiledCalendar calendar, int perDay)
    {
        this.calendar = calendar;
        this.perDay = perDay;
        var days = calendar.Day;
        sameDay = new (int, int)[calendar.Count];
        for (var (first, session) = (0, 0); session < sameDay.Length; session++)
        {
            first = days[session] == days[first] ? first : session;
            sameDay.AsSpan(first..(session + 1)).Fill((first, session));
        }

        left = new int[calendar.Count];
        room = new(calendar.Count, perDay);
        touched = calendar.Count;
    }

    /// <summary>The same as <see cref="Left"/>, to look ahead.</summary>
    public RoomRow Room => room;

    /// <summary>Minutes left at each session, shared by the sessions of a day.</summary>
    public int[] Left => left;

    /// <summary>Whether what is taken can be given back.</summary>
    public bool Remembers { get; set; }

    /// <summary>Nothing heavy done yet, but for some minutes on day 0.</summary>
    public void Reset(int onDay0)
    {
        left.AsSpan(0, touched).Fill(perDay);
        room.Reset(touched);
        touched = 0;
        taken.Clear();
        if (onDay0 > 0 && calendar.Count > 0 && calendar.Day[0] == 0)
        {
            Add(0, onDay0);
        }
    }

    /// <summary>Takes some minutes of the day of a session.</summary>
    public void Take(int session, int minutes)
    {
        Add(session, minutes);
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
            Add(session, -minutes);
        }

        taken.Clear();
    }

    /// <summary>Forgets what could be given back.</summary>
    public void Forget() => taken.Clear();

    private void Add(int session, int minutes)
    {
        unchecked
        {
            var (first, last) = sameDay[session];
            for (var one = first; one <= last; one++)
            {
                left[one] -= minutes;
                room[one] = left[one];
            }

            touched = Math.Max(touched, last + 1);
        }
    }
}
