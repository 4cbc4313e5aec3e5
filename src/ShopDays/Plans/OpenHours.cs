using System.Collections.Immutable;
using NodaTime;
using ShopDays.Days;
using ShopDays.Plans.Scheduling;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>The workers' sessions from the first order's beginning for some time ahead, and the same compiled.</summary>
internal sealed class OpenHours
{
    /// <summary>One round of the seasons: daylight that a task fits into is found, if there is any.</summary>
    public const int FirstDays = 366;

    /// <summary>Five years; what is not finished by then is said not to be.</summary>
    public const int MostDays = 1827;

    private OpenHours(PlanRequest request, int days)
    {
        Days = days;
        Zone = request.Zone;
        First = FirstDateOf(request);
        Origin = Zone.AtStartOfDay(First).ToInstant();
        Begin = request.Orders.Min(BeginOf);
        Clock = CompiledClock.Of(Zone, Origin, days);
        Sessions = [.. request.Calendars.Select(calendar => calendar.Between(First, First.PlusDays(days - 1)).Sessions)];
        Calendars = [.. Sessions.Select(sessions => CompiledCalendar.Of(sessions, Origin, First, Begin))];
    }

    /// <summary>How many days are looked at.</summary>
    public int Days { get; }

    /// <summary>The date of minute 0: that of the first order's start, or on which the rest of one is planned.</summary>
    public LocalDate First { get; }

    /// <summary>The first minute that can be used: 0, or that from which the rest of a job is planned.</summary>
    public int Begin { get; }

    /// <summary>Minute 0.</summary>
    public Instant Origin { get; }

    /// <summary>How the shop's clock is put forward and back.</summary>
    public CompiledClock Clock { get; }

    /// <summary>Each worker's sessions.</summary>
    public ImmutableArray<ImmutableArray<Session>> Sessions { get; }

    /// <summary>Each worker's calendar.</summary>
    public ImmutableArray<CompiledCalendar> Calendars { get; }

    /// <summary>The zone of the shop's clock.</summary>
    public DateTimeZone Zone { get; }

    /// <summary>The first year.</summary>
    public static OpenHours FirstYear(PlanRequest request) => new(request, FirstDays);

    /// <summary>Twice as many days, up to five years; null when five years were looked at.</summary>
    public OpenHours? Longer(PlanRequest request) => Days >= MostDays ? null : new(request, Math.Min(MostDays, 2 * Days));

    /// <summary>The first moment of a date.</summary>
    public ZonedDateTime StartOf(LocalDate date) => Zone.AtStartOfDay(date);

    /// <summary>When a job began, and with it what is waited for from its beginning.</summary>
    public ZonedDateTime OpeningOf(OrderInHand order) => Zone.AtStartOfDay(order.Start);

    /// <summary>The first minute in which a job can be worked on: that of its start, or from which the rest of it is planned.</summary>
    public int BeginOf(OrderInHand order) => Math.Max(0, MinuteUpTo(order.UnderWay?.From ?? OpeningOf(order).ToInstant()));

    /// <summary>The first minute in which work may begin for the sake of a task's own dates, and the minute before which it must.</summary>
    public (int NotBefore, int StartBy) DatesOf(ShopTask task)
    {
        var from = task.NotBefore is { } first ? MinuteOf(first) : 0;
        if (task.Appointed is not { } appointed)
        {
            return (from, CompiledCalendar.Never);
        }

        if (appointed.At is not { } time)
        {
            return (Math.Max(from, MinuteOf(appointed.On)), MinuteOf(appointed.On.PlusDays(1)));
        }

        // A time that the clock skips is one by the clock before, and of one that comes twice the first is meant (RFC 5545, 3.3.5).
        var at = MinuteUpTo(Zone.AtLeniently(appointed.On + time).ToInstant());
        return (Math.Max(from, at), at + 1);
    }

    /// <summary>The first minute of a date.</summary>
    public int MinuteOf(LocalDate date) => MinuteUpTo(Zone.AtStartOfDay(date).ToInstant());

    /// <summary>The first whole minute that is not before an instant; below 0 before minute 0.</summary>
    public int MinuteUpTo(Instant instant) => (int)Math.Clamp(Math.Ceiling((instant - Origin).TotalMinutes), -CompiledCalendar.Never, CompiledCalendar.Never);

    /// <summary>The first minute after a date; below 0 where that is before minute 0.</summary>
    public int MinuteAtEndOf(LocalDate date)
    {
        var minutes = (Zone.AtStartOfDay(date.PlusDays(1)).ToInstant() - Origin).TotalMinutes;
        return (int)Math.Clamp(Math.Floor(minutes), -1, CompiledCalendar.Never - 1);
    }

    /// <summary>The date with which the hours that are planned in begin.</summary>
    public static LocalDate FirstDateOf(PlanRequest request) => request.Orders.Min(order => order.UnderWay is { } underWay ? underWay.From.InZone(request.Zone).Date : order.Start);

    /// <summary>A minute by the shop's clock.</summary>
    public ZonedDateTime At(int minute) => InstantAt(minute).InZone(Zone);

    /// <summary>A minute as an instant.</summary>
    public Instant InstantAt(int minute) => Origin + Duration.FromMinutes(minute);
}
