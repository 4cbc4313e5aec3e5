using System.Collections.Immutable;
using NodaTime;

namespace ShopDays.Days;

/// <summary>Hours of the week that give no session from one date to another, all for one reason.</summary>
/// <param name="Worker">Whose hours.</param>
/// <param name="Days">The days of the week, Monday first.</param>
/// <param name="Hours">The hours as written.</param>
/// <param name="Reason">Why there is no session; never that the shop is closed, which is meant.</param>
/// <param name="First">The first of the dates.</param>
/// <param name="Last">The last, included.</param>
/// <param name="Dates">How many dates.</param>
public sealed record UnusedSpan(string Worker, ImmutableArray<IsoDayOfWeek> Days, DayHours Hours, UnusedReason Reason, LocalDate First, LocalDate Last, int Dates)
{
    /// <summary>What the hours are promised to; null for any other reason.</summary>
    public string? Appointment { get; init; }

    private const int Week = 7;

    /// <summary>The hours of a worker that cannot be used in a span of dates, both ends included, in order of their beginning.</summary>
    /// <remarks>
    /// A span ends with the first date of its weekday on which the hours can be used. Closed dates neither begin nor end
    /// one. Days of the week with the same hours are told together when they begin and end within the same week.
    /// </remarks>
    /// <exception cref="ArgumentException">The last date comes before the first.</exception>
    public static ImmutableArray<UnusedSpan> Of(WorkingCalendar calendar, LocalDate first, LocalDate last)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        var open = new List<UnusedSpan>();
        var ended = new List<UnusedSpan>();
        foreach (var day in new DateInterval(first, last).Select(calendar.On))
        {
            UnusedHours[] lost = [.. day.Unused.Where(one => one.Reason != UnusedReason.Closed)];
            if (lost.Length == 0 && day.Sessions.IsEmpty)
            {
                continue;
            }

            var over = open.FindAll(span => span.Days[0] == day.Date.DayOfWeek && !lost.Any(one => IsOf(span, one)));
            ended.AddRange(over);
            open.RemoveAll(over.Contains);
            foreach (var one in lost.DistinctBy(one => (one.Hours, one.Reason, one.Appointment)))
            {
                var at = open.FindIndex(span => span.Days[0] == day.Date.DayOfWeek && IsOf(span, one));
                if (at < 0)
                {
                    open.Add(new(one.Worker, [day.Date.DayOfWeek], one.Hours, one.Reason, one.Date, one.Date, 1) { Appointment = one.Appointment });
                }
                else
                {
                    open[at] = open[at] with { Last = one.Date, Dates = open[at].Dates + 1 };
                }
            }
        }

        return Together([.. ended.Concat(open).OrderBy(span => span.First).ThenBy(span => span.Hours.From)]);
    }

    private static bool IsOf(UnusedSpan span, UnusedHours one) => span.Hours == one.Hours && span.Reason == one.Reason && span.Appointment == one.Appointment;

    private static ImmutableArray<UnusedSpan> Together(IReadOnlyList<UnusedSpan> spans)
    {
        var told = new List<UnusedSpan>();
        foreach (var span in spans)
        {
            var at = told.FindIndex(other => other.Hours == span.Hours && other.Reason == span.Reason && other.Appointment == span.Appointment
                && Period.DaysBetween(other.First, span.First) < Week
                && Math.Abs(Period.DaysBetween(other.Last, span.Last)) < Week
                && !other.Days.Contains(span.Days[0]));
            if (at < 0)
            {
                told.Add(span);
                continue;
            }

            var other = told[at];
            told[at] = other with
            {
                Days = [.. other.Days.Add(span.Days[0]).Order()],
                Last = LocalDate.Max(other.Last, span.Last),
                Dates = other.Dates + span.Dates,
            };
        }

        return [.. told];
    }
}
