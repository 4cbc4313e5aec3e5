using System.Globalization;

namespace ShopDays.Measures;

/// <summary>Months of any year by their English names.</summary>
public static class MonthText
{
    /// <summary>The months, January first.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. CultureInfo.InvariantCulture.DateTimeFormat.MonthNames.Take(12)];

    /// <summary>The name of a month, 1 to 12.</summary>
    public static string Of(int month) => Names[month - 1];

    /// <summary>Months with those that follow each other drawn together, over the turn of the year too: <c>November to March, June</c>.</summary>
    /// <param name="months">Months, 1 to 12, each once, rising.</param>
    public static string Runs(IReadOnlyList<int> months)
    {
        if (months.Count == Names.Count)
        {
            return "all months";
        }

        var runs = months.Where(month => !months.Contains(Before(month))).Select(first =>
        {
            var last = first;
            while (months.Contains(After(last)))
            {
                last = After(last);
            }

            return first == last ? Of(first) : Of(first) + " to " + Of(last);
        });
        return string.Join(", ", runs);
    }

    /// <summary>The month after a month.</summary>
    public static int After(int month) => (month % Names.Count) + 1;

    private static int Before(int month) => month == 1 ? Names.Count : month - 1;
}
