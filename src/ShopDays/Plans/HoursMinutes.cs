using NodaTime;
using ShopDays.Days;

namespace ShopDays.Plans;

/// <summary>Hours of one date in minutes from its midnight by the clock, 0 to 1440.</summary>
internal static class HoursMinutes
{
    /// <summary>The minutes of a whole day.</summary>
    public const int Day = 24 * 60;

    /// <summary>The first minute and the end of hours that do not pass midnight.</summary>
    public static (int From, int To) Of(DayHours hours) => (MinuteOf(hours.From), hours.EndWithTheDay ? Day : MinuteOf(hours.To));

    /// <summary>A minute as it is written: <c>24:00</c> at the day's end.</summary>
    public static string Written(int minute) => FormattableString.Invariant($"{minute / 60:00}:{minute % 60:00}");

    /// <summary>Hours from one minute to another.</summary>
    public static DayHours Between(int from, int to) => DayHours.Between(LocalTime.FromMinutesSinceMidnight(from), LocalTime.FromMinutesSinceMidnight(to % Day));

    /// <summary>Hours with others put to them; those that touch or overlap become one.</summary>
    public static ShopHours With(ShopHours hours, int from, int to)
    {
        var apart = new List<DayHours>();
        foreach (var one in hours.Items)
        {
            var (begin, end) = Of(one);
            if (end < from || begin > to)
            {
                apart.Add(one);
            }
            else
            {
                (from, to) = (Math.Min(from, begin), Math.Max(to, end));
            }
        }

        return new([.. apart, Between(from, to)]);
    }

    /// <summary>The minutes of all hours of a date.</summary>
    public static int Total(ShopHours hours) => hours.Items.Select(Of).Sum(one => one.To - one.From);

    private static int MinuteOf(LocalTime time) => (time.Hour * 60) + time.Minute;
}
