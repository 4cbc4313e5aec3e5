using System.Globalization;
using NodaTime;
using NodaTime.Text;
using ShopDays.Measures;

namespace ShopDays.Days;

/// <summary>Hours of a day as text: two times with a hyphen or a dash between them.</summary>
internal static class DayHoursText
{
    private const string Example = "two times with a hyphen between them, such as 08:00-12:00";
    private static readonly char[] Dashes = ['-', '\u2013'];
    private static readonly LocalTimePattern Time = LocalTimePattern.Create("H:mm", CultureInfo.InvariantCulture);
    private static readonly LocalTimePattern Printed = LocalTimePattern.Create("HH:mm", CultureInfo.InvariantCulture);

    public static string Write(LocalTime time) => Printed.Format(time);

    public static TextResult<DayHours> Read(string text, bool mayPassMidnight)
    {
        var dash = text.IndexOfAny(Dashes);
        if (dash < 0)
        {
            return TextResult<DayHours>.Failed(0, $"{DateText.Quote(text)} is not a pair of times", Example);
        }

        if (ReadTime(text[..dash]) is not { } from)
        {
            return NoTime(text, 0, dash, "00:00 to 23:59");
        }

        var last = text[(dash + 1)..].Trim();
        if ((last == "24:00" ? LocalTime.Midnight : ReadTime(last)) is not { } to)
        {
            return NoTime(text, dash + 1, text.Length, "00:01 to 24:00");
        }

        if (from == to && last != "24:00")
        {
            return Wrong(text, "end as they begin", "an end after the beginning, 24:00 for the whole day");
        }

        var hours = DayHours.Between(from, to);
        return hours.PassMidnight && !mayPassMidnight
            ? Wrong(text, "end before they begin", "hours within one day; what goes on past 24:00 is written on the next day")
            : TextResult<DayHours>.Read(hours);
    }

    public static TextResult<LocalTime> ReadOneTime(string text) => ReadTime(text) is { } time
        ? TextResult<LocalTime>.Read(time)
        : TextResult<LocalTime>.Failed(0, $"{DateText.Quote(text.Trim())} is not a time of day", "hours and minutes from 00:00 to 23:59, such as 08:00");

    private static LocalTime? ReadTime(string text) =>
        Time.Parse(text.Trim()).TryGetValue(default, out var time) ? time : null;

    private static TextResult<DayHours> NoTime(string text, int start, int end, string range)
    {
        var part = text[start..end];
        var offset = start + part.Length - part.TrimStart().Length;
        return TextResult<DayHours>.Failed(offset, $"{DateText.Quote(part.Trim())} is not a time of day", $"hours and minutes from {range}, such as 08:00");
    }

    private static TextResult<DayHours> Wrong(string text, string what, string expected) =>
        TextResult<DayHours>.Failed(0, $"the hours {DateText.Quote(text)} {what}", expected);
}
