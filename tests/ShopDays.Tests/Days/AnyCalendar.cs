using CsCheck;
using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;

namespace ShopDays.Tests.Days;

/// <summary>Calendars of every kind, half of them in the week of a clock change.</summary>
internal static class AnyCalendar
{
    private const int StepsInADay = 288;
    private static readonly LocalDate FirstDate = new(2027, 1, 1);

    private static readonly ShopPlace[] Places =
    [
        Shops.NewYork,
        Shops.Longyearbyen,
        Shops.At(52.5, 13.4, "Europe/Berlin"),
        Shops.At(61.2, -149.9, "America/Anchorage"),
        Shops.At(-31.55, 159.1, "Australia/Lord_Howe"),
        Shops.At(-43.95, -176.55, "Pacific/Chatham"),
        Shops.At(33.9, 35.5, "Asia/Beirut"),
        Shops.At(23.1, -82.4, "America/Havana"),
        Shops.At(1.3, 103.8, "Asia/Singapore"),
        Shops.At(-77.85, 166.67, "Antarctica/McMurdo"),
    ];

    /// <summary>Hours of a date, at every five minutes, up to three stretches.</summary>
    public static Gen<ShopHours> Hours { get; } = Gen.Int[0, StepsInADay].Array[0, 6].Select(steps =>
        new ShopHours(steps.Distinct().Order().Chunk(2).Where(pair => pair.Length == 2).Select(pair => DayHours.Between(At(pair[0]), At(pair[1])))));

    public static Gen<ShopWeek> Week { get; } = Hours.Array[7].Select(days =>
        new ShopWeek(days.Index().ToDictionary(day => (IsoDayOfWeek)(day.Index + 1), day => day.Item)));

    /// <summary>A calendar and the first of the seven dates to look at.</summary>
    public static Gen<(WorkingCalendar Calendar, LocalDate First)> WithDate { get; } =
        from place in Among(Places)
        from first in Gen.OneOf(Gen.Int[0, 364].Select(FirstDate.PlusDays), ChangeOf(place))
        from week in Week
        from rule in Gen.Select(Among(Enum.GetValues<DaylightLimit>()), Gen.Int[0, 60])
        from overhead in Gen.Select(Gen.Int[0, 30], Gen.Int[0, 30])
        from quiet in Gen.Select(Gen.Int[0, 143], Gen.Int[144, StepsInADay - 1], Gen.Bool)
        from closed in Gen.Select(Gen.Int[0, 8], Gen.Int[0, 2])
        from extra in Gen.Select(Gen.Int[0, 8], Hours)
        select (new WorkingCalendar
        {
            Worker = "maker",
            Place = place,
            Week = week,
            Daylight = new(rule.Item1, Duration.FromMinutes(rule.Item2)),
            Overhead = new(WorkTime.FromMinutes(overhead.Item1), WorkTime.FromMinutes(overhead.Item2)),
            Quiet = new(quiet.Item3 ? DayHours.Between(At(quiet.Item1), At(quiet.Item2)) : DayHours.Between(At(quiet.Item2), At(quiet.Item1))),
            Closed = new(new DateInterval(first.PlusDays(closed.Item1), first.PlusDays(closed.Item1 + closed.Item2))),
            Extra = new(new Dictionary<LocalDate, ShopHours> { [first.PlusDays(extra.Item1)] = extra.Item2 }),
        }, first);

    private static Gen<LocalDate> ChangeOf(ShopPlace place)
    {
        var start = FirstDate.AtMidnight().InUtc().ToInstant();
        var changes = place.Zone.GetZoneIntervals(start, start + Duration.FromDays(365)).Where(one => one.HasStart && one.Start > start).ToList();
        return changes.Count == 0
            ? Gen.Const(FirstDate)
            : Gen.Select(Among(changes), Gen.Int[-6, 0], (change, days) => change.Start.InZone(place.Zone).Date.PlusDays(days));
    }

    private static Gen<T> Among<T>(IReadOnlyList<T> items) => Gen.Int[0, items.Count - 1].Select(index => items[index]);

    private static LocalTime At(int step) => LocalTime.Midnight.PlusMinutes(step * 5);
}
