using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files;

/// <summary>Reads the air that timber lies in.</summary>
internal static class AirReader
{
    private static readonly (string Name, int Month)[] Months =
    [
        ("january", 1), ("february", 2), ("march", 3), ("april", 4), ("may", 5), ("june", 6),
        ("july", 7), ("august", 8), ("september", 9), ("october", 10), ("november", 11), ("december", 12),
    ];

    private static readonly ValueReader<Percent> Humidity = (node, reading) => Values.Percentage(node, reading).Unless(reading.Findings, percent => percent.Value > 100
        ? ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, "the humidity of air", "0% to 100%")
        : null);

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

    /// <summary>Reads one air.</summary>
    public static Climate ReadClimate(Section climate)
    {
        var temperature = climate.Required("temperature", Values.Degrees, "the temperature there, such as 14 C");
        var humidity = climate.Required("humidity", Humidity, "the relative humidity there, such as 70%");
        return new(temperature.Or(Temperature.FromCelsius(20)), humidity.Or(Percent.FromPercent(50)));
    }
}
