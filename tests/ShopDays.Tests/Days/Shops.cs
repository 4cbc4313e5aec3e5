using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;

namespace ShopDays.Tests.Days;

/// <summary>Places, hours and calendars in the words that a maker writes.</summary>
internal static class Shops
{
    public static ShopPlace NewYork { get; } = At(40.7, -74.0, "America/New_York");

    public static ShopPlace Longyearbyen { get; } = At(78.22, 15.65, "Arctic/Longyearbyen");

    public static ShopPlace At(double latitude, double longitude, string zone) => new(latitude, longitude, DateTimeZoneProviders.Tzdb[zone]);

    public static ShopHours Hours(params string[] texts) => new(texts.Select(Span));

    public static DayHours Span(string text) => DayHours.ReadOverMidnight(text).Value;

    public static LocalDate Date(string text) => DateText.Read(text).Value;

    public static ClosedDates Closed(params string[] texts) => new(texts.Select(text => DateText.ReadSpan(text).Value!));

    public static ExtraDates Extra(string date, params string[] hours) => new(new Dictionary<LocalDate, ShopHours> { [Date(date)] = Hours(hours) });

    public static ShopWeek EveryDay(params string[] hours) =>
        new(Enum.GetValues<IsoDayOfWeek>().Where(day => day != IsoDayOfWeek.None).ToDictionary(day => day, _ => Hours(hours)));

    public static WorkingCalendar Calendar(ShopPlace place, params string[] hours) => new() { Worker = "maker", Place = place, Week = EveryDay(hours) };

    public static Overhead TenAndFifteen { get; } = new(WorkTime.FromMinutes(10), WorkTime.FromMinutes(15));

    /// <summary>Door to door, by the wall clock.</summary>
    public static string[] Stays(this ShopDay day) =>
        [.. day.Sessions.Select(session => FormattableString.Invariant($"{session.Start.TimeOfDay:HH:mm}-{session.End.TimeOfDay:HH:mm}"))];
}
