using System.Runtime.Intrinsics;

namespace ShopDays.Plans;

/// <summary>How much heavy work one worker may still do on the day of each session.</summary>
internal sealed class HeavyRoom
{
    private readonly CompiledCalendar calendar;
    private readonly int[] whole;
    private readonly int[] left;
    private readonly List<(int Session, int Minutes)> taken = [];
    private int touched;

    /// <summary>Nothing heavy done yet.</summary>
    public HeavyRoom(CompiledCalendar calendar, int perDay)
    {
        this.calendar = calendar;
        whole = new int[calendar.Count + Vector256<int>.Count];
        Array.Fill(whole, CompiledCalendar.Never);
        whole.AsSpan(0, calendar.Count).Fill(perDay);
        left = [.. whole];
    }

    /// <summary>Minutes left at each session, shared by the sessions of a day; behind the last there is no end of them.</summary>
    public int[] Left => left;

    /// <summary>Whether what is taken can be given back.</summary>
    public bool Remembers { get; set; }

    /// <summary>Nothing heavy done yet, but for some minutes on day 0.</summary>
    public void Reset(int onDay0)
    {
        whole.AsSpan(0, touched).CopyTo(left);
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
        var days = calendar.Day;
        var day = days[session];
        for (var earlier = session - 1; earlier >= 0 && days[earlier] == day; earlier--)
        {
            left[earlier] -= minutes;
        }

        for (; session < days.Length && days[session] == day; session++)
        {
            left[session] -= minutes;
        }

        touched = Math.Max(touched, session);
    }
}
