using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files;

/// <summary>Reads what air timber lies in: the shop's, and that of the room in which a piece will stand.</summary>
internal static class AirReader
{
    /// <summary>Timber indoors never comes to more: above it the air would have to be wet.</summary>
    private const double DampestHome = 30;

    private static readonly (string Name, int Month)[] Months =
    [
        ("january", 1), ("february", 2), ("march", 3), ("april", 4), ("may", 5), ("june", 6),
        ("july", 7), ("august", 8), ("september", 9), ("october", 10), ("november", 11), ("december", 12),
    ];

    private static readonly ValueReader<Percent> Humidity = (node, reading) => Values.Percentage(node, reading).Unless(reading.Findings, percent => percent.Value > 100
        ? ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, "the humidity of air", "0% to 100%")
        : null);

    private static readonly ValueReader<MoistureContent> HomeMoisture = (node, reading) => node is YamlMap
        ? ByClimate(node, reading)
        : Values.Percentage(node, reading)
            .Unless(reading.Findings, percent => percent.Value > DampestHome ? ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, "the moisture of timber indoors", "0% to 30%") : null)
            .Select(percent => MoistureContent.FromPercent(percent.Value));

    /// <summary>Reads the air of a shop: the usual one, and that of months which differ.</summary>
    public static YearAir ReadYear(Section climate)
    {
        var usual = ReadClimate(climate);
        var months = new Dictionary<int, Climate>();
        climate.Inner<object>("months", "the months of the climate", section =>
        {
            foreach (var (name, month) in Months)
            {
                if (section.Inner(name, "the climate of a month", ReadClimate) is { } own)
                {
                    months[month] = own;
                }
            }

            return months;
        });
        return new(usual, months);
    }

    /// <summary>Reads between what moistures timber goes up and down where a piece will stand.</summary>
    public static MoistureRange? ReadHome(Section job)
    {
        MoistureRange? range = null;
        job.Inner<object>("home", "the place where the piece will stand", home =>
        {
            const string Expected = "a moisture such as 6%, or {temperature: 21 C, humidity: 30%}";
            var driest = home.Required("driest", HomeMoisture, Expected);
            var dampest = home.Required("dampest", HomeMoisture, Expected);
            dampest = dampest.Unless(home.Findings, most => driest.IsRead && most < driest.Value ? DrierAtItsDampest(dampest.Place, driest.Value, most) : null);
            range = driest.IsRead && dampest.IsRead ? new(driest.Value, dampest.Value) : null;
            return home;
        });
        return range;
    }

    private static Finding DrierAtItsDampest(Place place, MoistureContent driest, MoistureContent dampest) =>
        Finding.At(place, $"{dampest} at its dampest is drier than {driest} at its driest") with { Expected = "the higher of the two as the dampest" };

    private static Field<MoistureContent> ByClimate(YamlNode node, Reading reading)
    {
        var before = reading.Findings.Count;
        var section = Section.Open(node, "the air of a room", reading)!;
        var climate = ReadClimate(section);
        section.Close();
        return reading.Findings.Count == before ? Field<MoistureContent>.Read(node.Place, climate.Equilibrium) : Field<MoistureContent>.Wrong(node.Place);
    }

    private static Climate ReadClimate(Section climate)
    {
        var temperature = climate.Required("temperature", Values.Degrees, "the temperature there, such as 14 C");
        var humidity = climate.Required("humidity", Humidity, "the relative humidity there, such as 70%");
        return new(temperature.Or(Temperature.FromCelsius(20)), humidity.Or(Percent.FromPercent(50)));
    }
}
