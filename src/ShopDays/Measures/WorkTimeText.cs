using System.Globalization;

namespace ShopDays.Measures;

/// <summary>Reads and writes hands-on time: <c>45m</c>, <c>1h30</c>, <c>1.5 h</c>, <c>PT1H30M</c>.</summary>
public static class WorkTimeText
{
    /// <summary>The longest time that is read, this one included: some five years of full days, so more is a slip.</summary>
    public static readonly WorkTime Longest = WorkTime.FromHours(10_000);

    private const string Expected = "a working time such as 45m, 1h30 or 1.5 h";

    private static readonly TimeSpanText Reader = new(Expected, TimeUnit.Minute, TimeUnit.Hour, "counts days, and a day's work has no fixed length");

    /// <summary>Reads a time of zero or more, up to <see cref="Longest"/>. A number alone is minutes.</summary>
    /// <param name="text">Hours, minutes and seconds, largest first; only the last may have a fraction.</param>
    public static TextResult<WorkTime> Read(string text)
    {
        if (Reader.Read(text, out var seconds) is { } fault)
        {
            return TextResult<WorkTime>.Failed(fault);
        }

        var time = WorkTime.FromMinutes((double)(seconds / TimeUnit.Minute.Seconds));
        return time > Longest
            ? TextResult<WorkTime>.Failed(0, $"{QuotedText.Of(text)} is longer than 10,000 hours", Expected)
            : TextResult<WorkTime>.Read(time);
    }

    /// <summary>
    /// The time to the nearest minute, halves away from zero: <c>45 min</c>, <c>2 h 05 min</c>, <c>2 h</c>. One beyond all
    /// measure, which only a file written by hand can hold, is in powers of ten: <c>3.0E+306 h</c>.
    /// </summary>
    public static string Write(WorkTime time)
    {
        // A decimal, in which the minutes are counted, ends at some 7.9E28.
        if (!(Math.Abs(time.Minutes) < 1e27))
        {
            return string.Create(CultureInfo.InvariantCulture, $"{time.Hours:0.0E+0} h");
        }

        var minutes = decimal.Round((decimal)time.Minutes, MidpointRounding.AwayFromZero);
        var sign = minutes < 0 ? "-" : "";
        var hours = decimal.Truncate(Math.Abs(minutes) / 60);
        var rest = Math.Abs(minutes) % 60;
        return sign + (hours, rest) switch
        {
            (0, _) => string.Create(CultureInfo.InvariantCulture, $"{rest:0} min"),
            (_, 0) => string.Create(CultureInfo.InvariantCulture, $"{hours:0} h"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{hours:0} h {rest:00} min"),
        };
    }
}
