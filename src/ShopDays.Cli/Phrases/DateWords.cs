using NodaTime;
using NodaTime.Text;
using ShopDays.Days;

namespace ShopDays.Cli.Phrases;

/// <summary>Dates and times of day as a maker says them, the same in every culture.</summary>
internal static class DateWords
{
    private static readonly LocalDatePattern LongDay = LocalDatePattern.CreateWithInvariantCulture("dddd d MMMM uuuu");
    private static readonly LocalDatePattern ShortDay = LocalDatePattern.CreateWithInvariantCulture("ddd d MMM");
    private static readonly LocalDatePattern ShortDayOfYear = LocalDatePattern.CreateWithInvariantCulture("ddd d MMM uuuu");
    private static readonly LocalDatePattern DayOfMonth = LocalDatePattern.CreateWithInvariantCulture("d MMMM");
    private static readonly LocalDatePattern DayOfYear = LocalDatePattern.CreateWithInvariantCulture("d MMM uuuu");
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    /// <summary><c>Tue 6 Apr 2027</c>.</summary>
    public static string Of(LocalDate date) => ShortDayOfYear.Format(date);

    /// <summary><c>Tue 6 Apr 2027, 08:30</c>.</summary>
    public static string Of(ZonedDateTime time) => $"{Of(time.Date)}, {At(time)}";

    /// <summary><c>Tuesday 6 April 2027</c>.</summary>
    public static string Long(LocalDate date) => LongDay.Format(date);

    /// <summary><c>Tue 6 Apr</c>, where the year is plain.</summary>
    public static string Short(LocalDate date) => ShortDay.Format(date);

    /// <summary><c>6 April</c>.</summary>
    public static string Month(LocalDate date) => DayOfMonth.Format(date);

    /// <summary><c>6 Apr 2027</c>.</summary>
    public static string Plain(LocalDate date) => DayOfYear.Format(date);

    /// <summary><c>08:30</c>; <c>01:10 (second time)</c> where the clock was put back and shows it again.</summary>
    public static string At(ZonedDateTime time) => Clock.Format(time.TimeOfDay) + (ClockChange.IsSecondPass(time) ? " (second time)" : "");

    /// <summary><c>08:30</c>, whichever time the clock shows it.</summary>
    public static string ClockAt(ZonedDateTime time) => Clock.Format(time.TimeOfDay);

    /// <summary><c>Tue 6 Apr, 08:30</c>, with the year where it is another one.</summary>
    public static string When(ZonedDateTime time, int year) => time.Year == year ? When(time) : Of(time);

    /// <summary><c>Tue 6 Apr, 08:30</c>.</summary>
    public static string When(ZonedDateTime time) => $"{Short(time.Date)}, {At(time)}";
}
