using NodaTime;
using NodaTime.Text;
using ShopDays.Measures;

namespace ShopDays.Days;

/// <summary>Dates and spans of dates as text, year first (ISO 8601).</summary>
public static class DateText
{
    private const string Separator = "..";
    private const int LongestQuote = 40;

    /// <summary>Reads a date such as <c>2027-03-14</c>.</summary>
    public static TextResult<LocalDate> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return LocalDatePattern.Iso.Parse(text.Trim()).TryGetValue(default, out var date)
            ? TextResult<LocalDate>.Read(date)
            : TextResult<LocalDate>.Failed(0, $"{Quote(text.Trim())} is not a date", "year, month and day, such as 2027-03-14");
    }

    /// <summary>Reads a date, or a first and a last date such as <c>2027-08-02..2027-08-15</c>, both included.</summary>
    public static TextResult<DateInterval> ReadSpan(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var dots = text.IndexOf(Separator, StringComparison.Ordinal);
        var after = dots < 0 ? 0 : dots + Separator.Length;
        var first = Read(dots < 0 ? text : text[..dots]);
        if (!first.IsRead)
        {
            return TextResult<DateInterval>.Failed(first.Fault.Offset, first.Fault.What, first.Fault.Expected);
        }

        var last = Read(text[after..]);
        if (!last.IsRead)
        {
            return TextResult<DateInterval>.Failed(after + last.Fault.Offset, last.Fault.What, last.Fault.Expected);
        }

        return last.Value < first.Value
            ? TextResult<DateInterval>.Failed(0, $"{Quote(text)} ends before it begins", "the earlier date first, such as 2027-08-02..2027-08-15")
            : TextResult<DateInterval>.Read(new DateInterval(first.Value, last.Value));
    }

    internal static string Quote(string text) =>
        text.Length <= LongestQuote ? $"'{text}'" : $"'{text.AsSpan(0, LongestQuote)}...'";
}
