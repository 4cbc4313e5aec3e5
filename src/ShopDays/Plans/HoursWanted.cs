using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using ShopDays.Days;
using ShopDays.Measures;

namespace ShopDays.Plans;

/// <summary>Hours that would do, with those that there are already in them: from door to door, on one day.</summary>
/// <param name="Workers">Who must be there, by name; all at the same time.</param>
/// <param name="OfSeveral">Whether there are others in the shop.</param>
/// <param name="Date">A date on which they would do.</param>
/// <param name="EveryWeek">Whether that is any date with its day of the week; otherwise it has hours of its own.</param>
/// <param name="Hours">The hours that all of them are there.</param>
/// <param name="More">Minutes that are not in their hours yet, of all of them together.</param>
internal sealed record HoursWanted(ImmutableArray<string> Workers, bool OfSeveral, LocalDate Date, bool EveryWeek, DayHours Hours, int More)
{
    /// <summary>Whether the clock shows their end twice on their date, having been put back: the second time is meant, as in the shop's file.</summary>
    public bool EndsTwice { get; init; }

    /// <summary>Such as <c>hours from 09:00 to 11:05 on Mondays, 5 min more</c>.</summary>
    public string Words
    {
        get
        {
            var length = HoursMinutes.Of(Hours);
            var span = $"from {HoursMinutes.Written(length.From)} to {HoursMinutes.Written(length.To)} on {Day}{(EndsTwice && !EveryWeek ? $", to the second {HoursMinutes.Written(length.To)}, after the clock is put back" : "")}";
            return Workers.Length > 1
                ? $"{string.Join(", ", Workers[..^1])} and {Workers[^1]} {(Workers.Length == 2 ? "both" : "all")} there {span}, {Time(length.To - length.From)} from door to door"
                : $"hours{(OfSeveral ? $" of {Workers[0]}" : "")} {span}{(More < length.To - length.From ? $", {Time(More)} more" : "")}";
        }
    }

    /// <summary>The same workers by their places in the shop.</summary>
    public int[] TeamOf(PlanRequest request) => [.. Workers.Select(name => request.Calendars.Index().First(one => one.Item.Worker == name).Index)];

    /// <summary>The shop with these hours on their date, as they would be written.</summary>
    public PlanRequest In(PlanRequest request)
    {
        var (from, to) = HoursMinutes.Of(Hours);
        return request with
        {
            Calendars = [.. request.Calendars.Select(calendar => Workers.Contains(calendar.Worker)
                ? calendar with { Extra = calendar.Extra.With(new(new Dictionary<LocalDate, ShopHours> { [Date] = HoursMinutes.With(LongerHours.HoursOn(calendar, Date), from, to) })) }
                : calendar)],
        };
    }

    private string Day => EveryWeek ? $"{Date.DayOfWeek}s" : LocalDatePattern.Iso.Format(Date);

    private static string Time(int minutes) => WorkTimeText.Write(WorkTime.FromMinutes(minutes));
}
