using ShopDays.Cli.Files;
using ShopDays.Measures;

namespace ShopDays.Cli.Calendars;

/// <summary>Why a file is not written over by a calendar.</summary>
internal static class CalendarMistakes
{
    private const string AnotherName = "give the calendar another name, or move this file away";

    public static Finding NotACalendar(Place place) =>
        Finding.At(place, "this file is there already and is no calendar") with { Expected = "BEGIN:VCALENDAR at its head", Cure = AnotherName };

    public static Finding CalendarOfOthers(Place place, string madeBy) =>
        Finding.At(place, $"this calendar was not written by shopdays but by {QuotedText.Of(madeBy)}") with { Cure = AnotherName };

    public static Finding CalendarOfOtherWork(Place place, string of, string expected) =>
        Finding.At(place, $"this calendar is of {QuotedText.Of(of)}, and its events would all be called off") with { Expected = $"one of {QuotedText.Of(expected)}", Cure = AnotherName };

    public static Finding CalendarNotUnderstood(Place place, string what, string expected) =>
        Finding.At(place, $"{what} in the calendar that is there already") with { Expected = expected, Cure = "take back the file as it was written; without it, old events would stay beside the new ones" };

    public static Finding CalendarEndsEarly(Place place, string open) =>
        Finding.At(place, "the calendar that is there already ends here") with { Expected = $"END:{open}", Cure = "take back the whole file" };
}
