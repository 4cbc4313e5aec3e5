using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Tests.Paper;

/// <summary>A shop that works two evenings and a Saturday.</summary>
internal static class AShop
{
    public static Shop With(PaperSize paper, bool inches = true, params string[] workers)
    {
        var evening = Hours("18:30-21:00");
        return new()
        {
            Name = "Tern Cottage Workshop",
            Place = new ShopPlace(44.1, -69.11, DateTimeZoneProviders.Tzdb["America/New_York"]),
            Units = inches ? LengthUnit.Inch : LengthUnit.Millimetre,
            Format = inches ? LengthFormat.Inches(16) : LengthFormat.Millimetres,
            Currency = new Currency("USD", 2),
            Paper = paper,
            Week = new ShopWeek(new Dictionary<IsoDayOfWeek, ShopHours>
            {
                [IsoDayOfWeek.Tuesday] = evening,
                [IsoDayOfWeek.Thursday] = evening,
                [IsoDayOfWeek.Saturday] = Hours("08:00-12:00", "13:00-16:30"),
            }),
            Daylight = DaylightRule.Lamps,
            Closed = new ClosedDates(new DateInterval(new LocalDate(2027, 4, 17), new LocalDate(2027, 4, 23))),
            Extra = ExtraDates.None,
            Quiet = QuietHours.None,
            Overhead = new Overhead(WorkTime.FromMinutes(10), WorkTime.FromMinutes(15)),
            LeastSession = WorkTime.FromMinutes(45),
            Limits = new ShopLimits(),
            Workers = [.. (workers.Length == 0 ? ["maker"] : workers).Select(name => new Worker(name, null))],
            Money = null,
            Methods = new Dictionary<string, string>(),
            Allowances = new Allowances(),
        };
    }

    public static IEnumerable<Session> Sessions(Shop shop, LocalDate start) => shop.Workers.Count == 1
        ? shop.CalendarOf(shop.Workers[0]).From(start).SelectMany(day => day.Sessions)
        : shop.CalendarOf(shop.Workers[0]).From(start).Zip(shop.CalendarOf(shop.Workers[1]).From(start), (one, other) => one.Sessions.Concat(other.Sessions).OrderBy(session => session.Start.ToInstant())).SelectMany(day => day);

    private static ShopHours Hours(params string[] texts) => new(texts.Select(text => DayHours.Read(text).Value));
}
