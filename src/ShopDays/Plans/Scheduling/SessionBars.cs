namespace ShopDays.Plans.Scheduling;

/// <summary>
/// What may cut work short in each session of a worker, beside the cap on heavy work: quiet hours, a wet coat, a place that is kept. Where nothing is
/// barred nobody has to look closer. What is given back stays barred, so that somebody looks in vain.
/// </summary>
internal sealed class SessionBars
{
    private readonly CompiledCalendar calendar;
    private readonly TaskNeeds[] always;

    /// <summary>Nothing barred but noise in quiet hours.</summary>
    public SessionBars(CompiledCalendar calendar)
    {
        this.calendar = calendar;
        Sessions = new TaskNeeds[calendar.Count];
        foreach (var quiet in calendar.Quiet)
        {
            Bar(TaskNeeds.Quiet, quiet.From, quiet.To);
        }

        always = [.. Sessions];
    }

    /// <summary>What may be barred in each session.</summary>
    public TaskNeeds[] Sessions { get; }

    /// <summary>Nothing barred but noise in quiet hours.</summary>
    public void Reset() => always.CopyTo(Sessions, 0);

    /// <summary>Bars something from a minute to another, which is not included.</summary>
    public void Bar(TaskNeeds what, int from, int to)
    {
        for (var session = calendar.SessionEndingAfter(from); session < Sessions.Length && calendar.From[session] < to; session++)
        {
            Sessions[session] |= what;
        }
    }
}
