using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using NodaTime.Text;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans;

/// <summary>Why a shop has no session in a whole year, and the least that would give it one.</summary>
internal static class ShutShop
{
    private const string None = "there is no session in the year from the start";

    private static readonly LocalTimePattern Time = LocalTimePattern.Create("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The reason.</summary>
    public static Unplannable Of(PlanRequest request, OpenHours hours)
    {
        var first = OpenHours.FirstDateOf(request);
        var lost = request.Calendars.SelectMany(calendar => calendar.Between(first, first.PlusDays(OpenHours.FirstDays - 1)).Unused, (calendar, one) => (Calendar: calendar, Unused: one)).ToList();
        var (limit, cure) = TooShort(request, hours, [.. lost.Where(one => one.Unused.Reason == UnusedReason.TooShort)])
            ?? Dark([.. lost.Where(one => one.Unused.Reason == UnusedReason.NoDaylight)])
            ?? Closed([.. lost.Where(one => one.Unused.Reason == UnusedReason.Closed)])
            ?? Promised(request, [.. lost.Where(one => one.Unused.Reason == UnusedReason.Appointment)])
            ?? (None, Longer(request, hours));
        return new(UnplannableKind.NoSessions, null, limit, cure);
    }

    private static (string Limit, string Cure)? TooShort(PlanRequest request, OpenHours hours, IReadOnlyList<(WorkingCalendar Calendar, UnusedHours Unused)> lost)
    {
        if (lost.Count == 0)
        {
            return null;
        }

        var (calendar, unused) = lost.MinBy(one => one.Calendar.LeastUseful.Minutes - Usable(one.Calendar, one.Unused));
        var usable = (int)Math.Floor(Usable(calendar, unused));
        return (
            $"{None}: between opening up and sweeping up none of its hours leave {WorkTimeText.Write(calendar.LeastUseful)} to work in, the least that is used ('least-session' in shop.yaml)",
            Longer(request, hours) + (IsCuredByLeastSession(request, usable) ? $", or a 'least-session' of {Minutes(usable)} in shop.yaml" : ""));
    }

    /// <summary>The least more hours of one day that give a session, long enough for what of the work takes longest in one go.</summary>
    private static string Longer(PlanRequest request, OpenHours hours)
    {
        var tasks = new WorkInHand(request.Orders).Tasks.Where(one => one.Task.Crew == 1).Select(one => new CompiledTask
        {
            Minutes = ProblemCompiler.MinutesOf(one.Task.IsSplittable ? Math.Min(one.Time.Minutes, one.Task.LeastUseful.Minutes) : one.Time.Minutes),
            IsNoisy = one.Task.IsNoisy,
        });
        var longest = tasks.OrderByDescending(task => task.Minutes).ThenByDescending(task => task.IsNoisy).FirstOrDefault() ?? new() { Minutes = 1 };
        return new LongerHours(request, hours).InTheYearFrom(new([longest], [], hours.Calendars, []), 1, hours.First)?.Words ?? "longer hours on some days of the week";
    }

    /// <summary>Whether nothing else stands in the way once shorter sessions are used.</summary>
    private static bool IsCuredByLeastSession(PlanRequest request, int minutes)
    {
        if (minutes < 1)
        {
            return false;
        }

        var lowered = request with { Calendars = [.. request.Calendars.Select(calendar => calendar with { LeastUseful = WorkTime.FromMinutes(minutes) })] };
        return Obstacles.Of(lowered, OpenHours.FirstYear(lowered)).Count == 0;
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

    private static (string Limit, string Cure)? Promised(PlanRequest request, IReadOnlyList<(WorkingCalendar Calendar, UnusedHours Unused)> lost)
    {
        var promised = new PromisedHours(request);
        var fewest = lost
            .Select(one => one.Unused.Date)
            .Distinct()
            .Select(date => promised.InTheWay(date, shop => shop.Calendars.Any(calendar => calendar.On(date).Sessions.Length > 0)))
            .Where(some => some.Count > 0)
            .MinBy(some => some.Count);
        return fewest is null ? null : ($"{None}: appointments take all its hours", PromisedHours.Move(fewest));
    }

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
