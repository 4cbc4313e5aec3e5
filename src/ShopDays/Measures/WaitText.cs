using System.Globalization;
using NodaTime;

namespace ShopDays.Measures;

/// <summary>Reads and writes waits on the wall clock: <c>3d</c>, <c>12 h</c>, <c>1 d 6 h</c>, <c>PT12H</c>.</summary>
/// <remarks>A day is 24 hours here, and a week seven of them: glue knows no calendar.</remarks>
public static class WaitText
{
    /// <summary>The longest wait that is read, this one included: ten years, what thick slabs may need to dry.</summary>
    public static readonly Duration Longest = Duration.FromDays(3_650);

    private const string Expected = "a wait such as 45 min, 12h, 3d or 1w";
    private const long NanosecondsPerSecond = 1_000_000_000;

    private static readonly TimeSpanText Reader = new(Expected, null, TimeUnit.Week, "counts more than weeks");

    /// <summary>
    /// Reads a wait of zero or more, up to <see cref="Longest"/>, to the nearest nanosecond, halves away from zero. A
    /// number alone is refused, except <c>0</c>: it could be minutes, hours or days.
    /// </summary>
    /// <param name="text">Weeks, days, hours, minutes and seconds, largest first; only the last may have a fraction.</param>
    public static TextResult<Duration> Read(string text)
    {
        if (text.Trim() == "0")
        {
            return TextResult<Duration>.Read(Duration.Zero);
        }

        if (Reader.Read(text, out var seconds) is { } fault)
        {
            return TextResult<Duration>.Failed(fault);
        }

        return seconds > (decimal)Longest.TotalSeconds
            ? TextResult<Duration>.Failed(0, $"{QuotedText.Of(text)} is longer than ten years", Expected)
            : TextResult<Duration>.Read(Duration.FromNanoseconds((long)decimal.Round(seconds * NanosecondsPerSecond, MidpointRounding.AwayFromZero)));
    }

    /// <summary>The wait to the nearest minute, halves away from zero, without the parts that are nought: <c>1 d 6 h</c>.</summary>
    public static string Write(Duration wait)
    {
        var minutes = (long)Math.Round(wait.TotalMinutes, MidpointRounding.AwayFromZero);
        if (minutes == 0)
        {
            return "0 min";
        }

        var left = Math.Abs(minutes);
        (var days, var hours, var rest) = (left / 1_440, left / 60 % 24, left % 60);
        string[] parts = [Part(days, "d"), Part(hours, "h"), Part(rest, "min")];
        return (minutes < 0 ? "-" : "") + string.Join(' ', parts.Where(part => part.Length > 0));
    }

    private static string Part(long count, string unit) => count == 0 ? "" : count.ToString(CultureInfo.InvariantCulture) + " " + unit;
}
