using NodaTime;
using ShopDays.Cli.Files.Yaml;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Files;

/// <summary>Reads <c>shop.yaml</c>.</summary>
internal static class ShopFile
{
    private const string Holds = "the keys of a shop, such as shop, place, units and week";

    private static readonly (string Word, DaylightLimit Limit)[] Limits =
        [("none", DaylightLimit.None), ("sunrise-sunset", DaylightLimit.SunriseSunset), ("civil-twilight", DaylightLimit.CivilTwilight)];

    /// <summary>Reads a shop file.</summary>
    /// <param name="source">The file.</param>
    /// <param name="operations">The operations whose methods it may name.</param>
    /// <param name="findings">Where mistakes go.</param>
    /// <param name="otherwise">What a variant says instead; null for nothing.</param>
    public static ShopReading Read(SourceFile source, OperationCatalogue operations, Findings findings, YamlMap? otherwise = null)
    {
        var before = findings.Count;
        var reading = new Reading { Findings = findings };
        var root = Variants.Overlay.On(YamlFile.Read(source.Name, source.Bytes, Holds, findings), otherwise, findings);
        if (root is null || Section.Open(root, "a shop", reading) is not { } shop)
        {
            return new(null, reading, new(), new Dictionary<string, string>());
        }

        // The figures of all other keys depend on these.
        SharedKeys.ReadUnits(shop, areRequired: true);
        var currency = shop.Required("currency", CurrencyCode, "three letters of ISO 4217, such as EUR");
        shop.Reading = shop.Reading with { Currency = currency.Value };

        if (shop.Inner("climate", "the climate", AirReader.ReadYear) is { } air)
        {
            shop.Reading = shop.Reading with { Air = air, Stacked = air.Usual.Equilibrium };
        }

        var name = shop.Required("shop", Values.Name("the shop's name"), "the shop's name");
        var place = ReadPlace(shop);
        shop.Reading = shop.Reading with { Zone = place?.Zone };
        var week = shop.Required("week", HoursValues.OfAWeek, "hours by the day, such as saturday: [\"08:00-12:00\"]");
        var extra = shop.Optional("extra", HoursValues.OfDates);
        if (week.IsRead && week.Value!.Count == 0 && (extra.IsRead ? extra.Value!.Count == 0 : !extra.IsWritten) && findings.Count == before)
        {
            findings.Add(ShopMistakes.NoHours(week.Place));
        }

        var closed = HoursValues.Closed(shop);
        var quiet = shop.Optional("quiet", Values.OneOrMore(HoursValues.OverMidnight));
        var beforeWorkers = findings.Count;
        var workers = ShopSections.Workers(shop);
        var workersAreKnown = findings.Count == beforeWorkers;
        var read = new Shop
        {
            Name = name.Or(""),
            Place = place ?? new(0, 0, DateTimeZone.Utc),
            Units = shop.Reading.Units,
            Format = shop.Reading.Format,
            Currency = currency.Or(new("XXX", 2)),
            Paper = shop.Optional("paper", Values.Choice("a size of paper", [.. PaperSize.All.Select(one => (one.Name, one))]), PaperSize.A4),
            Week = new(week.Or(new Dictionary<IsoDayOfWeek, ShopHours>())),
            Daylight = shop.Inner("daylight", "the daylight", ReadDaylight) ?? DaylightRule.Lamps,
            Closed = closed,
            Extra = new(extra.Or(new Dictionary<LocalDate, ShopHours>())),
            Appointments = ShopSections.Appointments(shop, workers, workersAreKnown),
            Quiet = new(ReadOnes(quiet)),
            Overhead = shop.Inner("overhead", "the overhead", ReadOverhead) ?? Overhead.None,
            LeastSession = shop.Optional("least-session", ShopSections.SomeTime("the least session"), WorkTime.FromMinutes(45)),
            Limits = ShopSections.Limits(shop, workers) with { Nights = shop.Inner("nights", "the climate at night", NightsReader.Read) },
            NewTimber = shop.Optional("new-timber", GuessValues.Wait) is { IsRead: true } timber ? timber.Value : null,
            Workers = workers,
            Money = shop.Inner("money", "the money", new MoneyReader(source).Read),
            Learning = shop.Inner("learning", "the learning", ShopSections.Learning) ?? new(null),
            Methods = SharedKeys.Methods(shop, operations),
            Machines = ShopSections.Machines(shop, operations),
            Allowances = SharedKeys.Allowances(shop, new()),
        };
        shop.Close();
        return new(findings.Count == before ? read : null, shop.Reading, read.Allowances, read.Methods);
    }

    private static ValueReader<Currency> CurrencyCode { get; } = (node, reading) =>
    {
        var code = Values.Text("three letters of ISO 4217, such as EUR")(node, reading)
            .Unless(reading.Findings, text => Currencies.TryFind(text) is null ? ShopMistakes.UnknownCurrency(node.Place, text) : null);
        return code.Select(text => Currencies.TryFind(text)!);
    };

    private static ValueReader<DateTimeZone> Zone { get; } = (node, reading) =>
    {
        var zones = DateTimeZoneProviders.Tzdb;
        var name = Values.Text("a name of the IANA list, such as Europe/London")(node, reading)
            .Unless(reading.Findings, text => zones.GetZoneOrNull(text) is null ? ShopMistakes.UnknownZone(node.Place, text, zones.Ids) : null);
        return name.Select(text => zones[text]);
    };

    private static ShopPlace? ReadPlace(Section shop) =>
        shop.Required<ShopPlace>(
            "place",
            (node, reading) =>
            {
                if (Section.Open(node, "the place", reading) is not { } place)
                {
                    return Field<ShopPlace>.Wrong(node.Place);
                }

                var latitude = place.Required("latitude", Values.Number("a latitude", -90, 90), "degrees from -90 to 90, north positive");
                var longitude = place.Required("longitude", Values.Number("a longitude", -180, 180), "degrees from -180 to 180, east positive");
                var zone = place.Required("zone", Zone, "a name of the IANA list, such as Europe/London");
                place.Close();
                if (!latitude.IsRead || !longitude.IsRead || !zone.IsRead)
                {
                    return Field<ShopPlace>.Wrong(node.Place);
                }

                var read = new ShopPlace(latitude.Value, longitude.Value, zone.Value!);

                // Any instant would do: standard time has not moved by hours anywhere since.
                if (!read.ClockSuitsLongitude(Instant.FromUtc(2026, 1, 1, 0, 0)))
                {
                    reading.Findings.Add(ShopMistakes.ClockFarFromSun(longitude.Place, longitude.Value, zone.Value!.Id));
                }

                return Field<ShopPlace>.Read(node.Place, read);
            },
            "latitude, longitude and zone").Value;

    private static DaylightRule ReadDaylight(Section daylight) => new(
        daylight.Required("limit", Values.Choice("a daylight limit", Limits), "none, sunrise-sunset or civil-twilight").Or(DaylightLimit.None),
        daylight.Optional("margin", Values.Wait, Duration.Zero));

    private static Overhead ReadOverhead(Section overhead) => new(
        overhead.Optional("open-up", Values.Time, WorkTime.Zero),
        overhead.Optional("sweep-up", Values.Time, WorkTime.Zero));

    private static IEnumerable<T> ReadOnes<T>(Field<IReadOnlyList<Field<T>>> list) =>
        list.Or([]).Where(one => one.IsRead).Select(one => one.Value!);
}
