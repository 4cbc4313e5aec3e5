using System.Globalization;
using NodaTime;

namespace ShopDays.Cli.Terminal;

/// <summary>Dates and hours as a maker says them, the same in every culture.</summary>
internal static class DateWords
{
    /// <summary>For example <c>Tue 6 Apr 2027</c>.</summary>
    public static string Of(LocalDate date) => date.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>For example <c>08:40</c>.</summary>
    public static string Hour(ZonedDateTime time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>For example <c>Tue 6 Apr 2027, 08:40</c>.</summary>
    public static string Of(ZonedDateTime time) => Of(time.Date) + ", " + Hour(time);
}
