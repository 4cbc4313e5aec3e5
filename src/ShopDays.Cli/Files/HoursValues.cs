using NodaTime;
using ShopDays.Cli.Files.Yaml;
using ShopDays.Days;

namespace ShopDays.Cli.Files;

/// <summary>Readers of hours, weeks and dates.</summary>
internal static class HoursValues
{
    private static readonly (string Name, IsoDayOfWeek Day)[] Days =
    [
        ("monday", IsoDayOfWeek.Monday),
        ("tuesday", IsoDayOfWeek.Tuesday),
        ("wednesday", IsoDayOfWeek.Wednesday),
        ("thursday", IsoDayOfWeek.Thursday),
        ("friday", IsoDayOfWeek.Friday),
        ("saturday", IsoDayOfWeek.Saturday),
        ("sunday", IsoDayOfWeek.Sunday),
    ];

    /// <summary>Hours of one date in one piece.</summary>
    public static ValueReader<DayHours> InADay { get; } = Values.Of("hours such as 08:00-12:00", (text, _) => DayHours.Read(text));

    /// <summary>The hours of one date.</summary>
    public static ValueReader<ShopHours> OfOneDay { get; } = (node, reading) =>
    {
        var all = Values.OneOrMore(InADay)(node, reading).Value!;
        if (all.Any(one => !one.IsRead))
        {
            return Field<ShopHours>.Wrong(node.Place);
        }

        Field<DayHours>[] inOrder = [.. all.OrderBy(one => one.Value.From)];
        var overlaps = false;
        for (var later = 1; later < inOrder.Length; later++)
        {
            if (ShopHours.FirstOverlap([inOrder[later - 1].Value, inOrder[later].Value]) is var (first, second))
            {
                reading.Findings.Add(ShopMistakes.HoursOverlap(inOrder[later].Place, first, second));
                overlaps = true;
            }
        }

        return overlaps ? Field<ShopHours>.Wrong(node.Place) : Field<ShopHours>.Read(node.Place, new(all.Select(one => one.Value)));
    };

    /// <summary>Hours by the day of the week.</summary>
    public static ValueReader<IReadOnlyDictionary<IsoDayOfWeek, ShopHours>> OfAWeek { get; } = (node, reading) =>
    {
        var week = new Dictionary<IsoDayOfWeek, ShopHours>();
        if (Entries(node, "the week", reading) is not { } entries)
        {
            return Field<IReadOnlyDictionary<IsoDayOfWeek, ShopHours>>.Wrong(node.Place);
        }

        foreach (var entry in entries)
        {
            var day = Array.FindIndex(Days, one => one.Name == entry.Key.Value);
            if (day < 0)
            {
                reading.Findings.Add(ShopMistakes.UnknownDay(entry.Key.Place, entry.Key.Value, [.. Days.Select(one => one.Name)]));
            }

            var hours = OfOneDay(entry.Value, reading);
            if (day >= 0 && hours.IsRead)
            {
                week[Days[day].Day] = hours.Value!;
            }
        }

        return Field<IReadOnlyDictionary<IsoDayOfWeek, ShopHours>>.Read(node.Place, week);
    };

    /// <summary>Hours by the date.</summary>
    public static ValueReader<IReadOnlyDictionary<LocalDate, ShopHours>> OfDates { get; } = (node, reading) =>
    {
        var dates = new Dictionary<LocalDate, ShopHours>();
        if (Entries(node, "the extra dates", reading) is not { } entries)
        {
            return Field<IReadOnlyDictionary<LocalDate, ShopHours>>.Wrong(node.Place);
        }

        foreach (var entry in entries)
        {
            var date = Values.Date(entry.Key, reading);
            var hours = OfOneDay(entry.Value, reading);
            if (date.IsRead && hours.IsRead)
            {
                dates[date.Value] = hours.Value!;
                foreach (var one in hours.Value!.Items)
                {
                    SayWhenDoubled(entry.Value.Place, date.Value, one, reading);
                }
            }
        }

        return Field<IReadOnlyDictionary<LocalDate, ShopHours>>.Read(node.Place, dates);
    };

    /// <summary>A time of day.</summary>
    public static ValueReader<LocalTime> TimeOfDay { get; } = Values.Of("a time of day such as 10:00", (text, _) => DayHours.ReadTime(text));

    /// <summary>Hours that may go over midnight.</summary>
    public static ValueReader<DayHours> OverMidnight { get; } = Values.Of("hours such as 20:00-08:00", (text, _) => DayHours.ReadOverMidnight(text));

    /// <summary>A date, or a first and a last date.</summary>
    public static ValueReader<DateInterval> Dates { get; } = Values.Of("a date such as 2027-08-02, or 2027-08-02..2027-08-15", (text, _) => DateText.ReadSpan(text));

    /// <summary>Reads <c>closed</c>.</summary>
    public static ClosedDates Closed(Section section) =>
        new(section.Optional("closed", Values.OneOrMore(Dates)).Or([]).Where(one => one.IsRead).Select(one => one.Value!));

    /// <summary>A time of a date that the shop's clock never shows, for it is put forward over it; null for any other.</summary>
    /// <param name="place">Where the time is written.</param>
    /// <param name="date">The date.</param>
    /// <param name="time">The time.</param>
    /// <param name="reading">What is known; nothing is said while the shop's zone is not.</param>
    public static Finding? Skipped(Place place, LocalDate date, LocalTime time, Reading reading) =>
        reading.Zone is { } zone && ClockChange.GapAt(date + time, zone) is var (from, to) ? ShopMistakes.TimeSkipped(place, date + time, from, to) : null;

    /// <summary>The same of hours of a date: their beginning, or their end unless it is just when the clock is put forward.</summary>
    public static Finding? Skipped(Place place, LocalDate date, DayHours hours, Reading reading) =>
        Skipped(place, date, hours.From, reading)
        ?? (hours.EndWithTheDay || Skipped(place, date, hours.To.PlusNanoseconds(-1), reading) is null ? null : Skipped(place, date, hours.To, reading));

    /// <summary>Says of a time of a date that the shop's clock shows twice, for it is put back over it, which one is meant.</summary>
    /// <param name="place">Where the time is written.</param>
    /// <param name="time">The date and time.</param>
    /// <param name="isEnd">Whether hours end with it: those end with the second, all else begins with the first.</param>
    /// <param name="reading">What is known; nothing is said while the shop's zone is not.</param>
    public static void SayWhenDoubled(Place place, LocalDateTime time, bool isEnd, Reading reading)
    {
        if (reading.Zone is { } zone && ClockChange.IsDoubled(time, zone))
        {
            reading.Findings.Doubt(ClockDoubts.TimeDoubled(place, time, isEnd));
        }
    }

    /// <summary>The same of hours of a date: of their beginning and their end.</summary>
    public static void SayWhenDoubled(Place place, LocalDate date, DayHours hours, Reading reading)
    {
        SayWhenDoubled(place, date + hours.From, isEnd: false, reading);
        if (!hours.EndWithTheDay)
        {
            SayWhenDoubled(place, date + hours.To, isEnd: true, reading);
        }
    }

    private static IReadOnlyList<YamlEntry>? Entries(YamlNode node, string name, Reading reading)
    {
        switch (node)
        {
            case YamlMap map:
                return map.Entries;
            case YamlText { IsLeftOut: true }:
                reading.Findings.Add(ValueMistakes.NothingWritten(node.Place, $"the keys of {name}"));
                return null;
            default:
                reading.Findings.Add(ValueMistakes.NotKeys(node.Place, node.Shape, name));
                return null;
        }
    }
}
