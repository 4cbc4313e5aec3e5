using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using ShopDays.Days;

namespace ShopDays.Tests.Outside;

/// <summary>One date of an almanac page, in universal time to the minute.</summary>
public sealed record AlmanacDay(LocalDate Date, IReadOnlyList<Instant> Rises, IReadOnlyList<Instant> Sets, bool AllLight, bool AllDark);

/// <summary>A page of the almanac: a row a day of the month, a pair of columns a month.</summary>
public sealed partial class AlmanacTable
{
    private const int FirstColumn = 4;
    private const int MonthWidth = 11;

    private AlmanacTable(ShopPlace place, IReadOnlyList<AlmanacDay> days) => (Place, Days) = (place, days);

    public ShopPlace Place { get; }

    public IReadOnlyList<AlmanacDay> Days { get; }

    public static AlmanacTable Read(string name)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Outside", "data", "almanac", name + ".txt"));
        var head = Head().Match(lines[1]);
        var place = new ShopPlace(Degrees(head, "N"), Degrees(head, "E"), DateTimeZone.Utc);
        var year = int.Parse(head.Groups["year"].Value, CultureInfo.InvariantCulture);
        var rows = lines.Where(line => Row().IsMatch(line)).Select(line => line.PadRight(FirstColumn + (12 * MonthWidth))).ToList();
        var first = new LocalDate(year, 1, 1);
        var dates = Enumerable.Range(0, CalendarSystem.Iso.GetDaysInYear(year)).Select(first.PlusDays);
        return new(place, [.. dates.Select(date => Day(date, [.. rows.Where(row => int.Parse(row[..2], CultureInfo.InvariantCulture) == date.Day)]))]);
    }

    private static AlmanacDay Day(LocalDate date, List<string> rows)
    {
        var column = FirstColumn + ((date.Month - 1) * MonthWidth);
        var left = rows.ConvertAll(row => row.Substring(column, 4));
        var right = rows.ConvertAll(row => row.Substring(column + 5, 4));
        return new(date, Times(date, left), Times(date, right), left[0] is "****" or "////", left[0] is "----" or "====");
    }

    private static List<Instant> Times(LocalDate date, List<string> cells) =>
        [.. cells.Where(cell => Time().IsMatch(cell)).Select(cell =>
            (date + new LocalTime(int.Parse(cell[..2], CultureInfo.InvariantCulture), int.Parse(cell[2..], CultureInfo.InvariantCulture))).InUtc().ToInstant())];

    private static double Degrees(Match head, string positive)
    {
        var axis = positive == "N" ? "lat" : "long";
        var size = double.Parse(head.Groups[axis + "deg"].Value, CultureInfo.InvariantCulture)
            + (double.Parse(head.Groups[axis + "min"].Value, CultureInfo.InvariantCulture) / 60);
        return head.Groups[axis].Value == positive ? size : -size;
    }

    [GeneratedRegex(@"Location: (?<long>[EW])(?<longdeg>\d+) (?<longmin>\d+), (?<lat>[NS])(?<latdeg>\d+) (?<latmin>\d+).* for (?<year>\d{4})")]
    private static partial Regex Head();

    [GeneratedRegex(@"^\d\d  ")]
    private static partial Regex Row();

    [GeneratedRegex(@"^\d{4}$")]
    private static partial Regex Time();
}
