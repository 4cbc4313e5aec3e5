using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using NodaTime.Text;
using ShopDays.Days;
using ShopDays.Measures;

namespace ShopDays.Plans;

/// <summary>Why a shop has no session in a whole year, and the least that would give it one.</summary>
internal static class ShutShop
{
    private const string None = "there is no session in the year from the start";

    private static readonly LocalTimePattern Time = LocalTimePattern.Create("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The reason.</summary>
    public static Unplannable Of(PlanRequest request)
    {
        var first = OpenHours.FirstDateOf(request);
        var lost = request.Calendars.SelectMany(calendar => calendar.Between(first, first.PlusDays(OpenHours.FirstDays - 1)).Unused, (calendar, one) => (Calendar: calendar, Unused: one)).ToList();
        var (limit, cure) = TooShort([.. lost.Where(one => one.Unused.Reason == UnusedReason.TooShort)])
            ?? Dark([.. lost.Where(one => one.Unused.Reason == UnusedReason.NoDaylight)])
            ?? Closed([.. lost.Where(one => one.Unused.Reason == UnusedReason.Closed)])
            ?? Promised([.. lost.Where(one => one.Unused.Reason == UnusedReason.Appointment)])
            ?? (None, "hours on some days of the week");
        return new(UnplannableKind.NoSessions, null, limit, cure);
    }

    private static (string Limit, string Cure)? TooShort(IReadOnlyList<(WorkingCalendar Calendar, UnusedHours Unused)> lost)
    {
        if (lost.Count == 0)
        {
            return null;
        }

        var (calendar, unused) = lost.MinBy(one => one.Calendar.LeastUseful.Minutes - Usable(one.Calendar, one.Unused));
        var usable = Usable(calendar, unused);
        var least = calendar.LeastUseful;
        var longer = $"hours that are {Minutes(least.Minutes - usable)} longer on one day at least";
        return (
            $"{None}: between opening up and sweeping up none of its hours leave {WorkTimeText.Write(least)} to work in, the least that is used ('least-session')",
            usable < 1 ? longer : $"{longer}, or a 'least-session' of {Minutes(usable)}");
    }

    private static (string Limit, string Cure)? Dark(IReadOnlyList<(WorkingCalendar Calendar, UnusedHours Unused)> lost)
    {
        if (lost.Count == 0)
        {
            return null;
        }

        var limit = $"{None}: its hours are all in the dark";
        var best = lost.SelectMany(one => LightOf(one.Calendar, one.Unused.Date), (one, light) => (one.Calendar, one.Unused.Date, Light: light)).MaxBy(one => one.Light.Duration);
        return best.Calendar is null
            ? (limit, "another limit of 'daylight': on none of its dates is there any")
            : (limit, $"hours by day, between {At(best.Light.Start, best.Calendar)} and {At(best.Light.End, best.Calendar)} on {DateOf(best.Date)}, or another limit of 'daylight'");
    }

    private static (string Limit, string Cure)? Closed(IReadOnlyList<(WorkingCalendar Calendar, UnusedHours Unused)> lost)
    {
        if (lost.Count == 0)
        {
            return null;
        }

        var first = lost.FirstOrDefault(one => Usable(one.Calendar, one.Unused) >= one.Calendar.LeastUseful.Minutes, lost[0]).Unused;
        return ($"{None}: it is closed on every date that has hours", $"open the shop on one of them, such as {DateOf(first.Date)}, {first.Hours}");
    }

    private static (string Limit, string Cure)? Promised(IReadOnlyList<(WorkingCalendar Calendar, UnusedHours Unused)> lost) => lost.Count == 0
        ? null
        : ($"{None}: appointments take all its hours", $"another time for one of them, such as {lost[0].Unused.Appointment} on {DateOf(lost[0].Unused.Date)}");

    private static ImmutableArray<Interval> LightOf(WorkingCalendar calendar, LocalDate date)
    {
        var zone = calendar.Place.Zone;
        return Daylight.In(new(zone.AtStartOfDay(date).ToInstant(), zone.AtStartOfDay(date.PlusDays(1)).ToInstant()), calendar.Place, calendar.Daylight).Items;
    }

    private static double Usable(WorkingCalendar calendar, UnusedHours unused) => unused.Left.TotalMinutes - calendar.Overhead.OpenUp.Minutes - calendar.Overhead.SweepUp.Minutes;

    private static string Minutes(double minutes) => WorkTimeText.Write(WorkTime.FromMinutes(minutes));

    private static string At(Instant instant, WorkingCalendar calendar) => Time.Format(instant.InZone(calendar.Place.Zone).TimeOfDay);

    private static string DateOf(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
