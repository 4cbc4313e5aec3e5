using System.Collections.Immutable;
using NodaTime;
using ShopDays.Days;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>The workers' sessions from the job's beginning for some time ahead, and the same compiled.</summary>
internal sealed class OpenHours
{
    /// <summary>One round of the seasons: daylight that a task fits into is found, if there is any.</summary>
    public const int FirstDays = 366;

    /// <summary>Five years; what is not finished by then is said not to be.</summary>
    public const int MostDays = 1827;

    private OpenHours(PlanRequest request, int days)
    {
        Days = days;
        Start = request.Start;
        Zone = request.Zone;
        First = FirstDateOf(request);
        Origin = Zone.AtStartOfDay(First).ToInstant();
        Begin = request.UnderWay is { } underWay ? Math.Max(0, MinuteUpTo(underWay.From)) : 0;
        Sessions = [.. request.Calendars.Select(calendar => calendar.Between(First, First.PlusDays(days - 1)).Sessions)];
        Calendars = [.. Sessions.Select(sessions => CompiledCalendar.Of(sessions, Origin, First, Begin))];
    }

    /// <summary>How many days are looked at.</summary>
    public int Days { get; }

    /// <summary>The date of minute 0: that of the job's start, or on which the rest of it is planned.</summary>
    public LocalDate First { get; }

    /// <summary>The first minute that can be used: 0, or that from which the rest of the job is planned.</summary>
    public int Begin { get; }

    /// <summary>Minute 0.</summary>
    public Instant Origin { get; }

    /// <summary>Each worker's sessions.</summary>
    public ImmutableArray<ImmutableArray<Session>> Sessions { get; }

    /// <summary>Each worker's calendar.</summary>
    public ImmutableArray<CompiledCalendar> Calendars { get; }

    private DateTimeZone Zone { get; }

    private LocalDate Start { get; }

    /// <summary>The first year.</summary>
    public static OpenHours FirstYear(PlanRequest request) => new(request, FirstDays);

    /// <summary>Twice as many days, up to five years; null when five years were looked at.</summary>
    public OpenHours? Longer(PlanRequest request) => Days >= MostDays ? null : new(request, Math.Min(MostDays, 2 * Days));

    /// <summary>
    /// When a wait is over that begins with the job. Whole days are days of the calendar, also over a change of clocks:
    /// a client who wants three weeks does not count hours.
    /// </summary>
    public ZonedDateTime EndOf(OpeningWait wait) => wait.Duration == Duration.FromDays(wait.Duration.Days)
        ? Zone.AtStartOfDay(Start.PlusDays(wait.Duration.Days))
        : Zone.AtStartOfDay(Start) + wait.Duration;

    /// <summary>When the job began, and with it what is waited for from its beginning.</summary>
    public ZonedDateTime Opened => Zone.AtStartOfDay(Start);

    /// <summary>The first whole minute that is not before an instant; below 0 before minute 0.</summary>
    public int MinuteUpTo(Instant instant) => (int)Math.Clamp(Math.Ceiling((instant - Origin).TotalMinutes), -CompiledCalendar.Never, CompiledCalendar.Never);

    /// <summary>The date with which the hours that are planned in begin.</summary>
    public static LocalDate FirstDateOf(PlanRequest request) => request.UnderWay is { } underWay ? underWay.From.InZone(request.Zone).Date : request.Start;

    /// <summary>A minute by the shop's clock.</summary>
    public ZonedDateTime At(int minute) => InstantAt(minute).InZone(Zone);

    /// <summary>A minute as an instant.</summary>
    public Instant InstantAt(int minute) => Origin + Duration.FromMinutes(minute);
}
