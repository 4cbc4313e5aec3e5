using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files;

/// <summary>Reads the air that timber lies in.</summary>
internal static class AirReader
{
    /// <summary>Nowhere is the air damper over a month, in percent (common practice, no source): fog for some nights is not an average.</summary>
    private const double DampestOnAverage = 95;

    /// <summary>The months by their names in a file.</summary>
    public static IReadOnlyList<(string Name, int Month)> Months { get; } = [.. MonthText.Names.Select((name, at) => (name.ToLowerInvariant(), at + 1))];

    /// <summary>The relative humidity of air.</summary>
    public static ValueReader<Percent> Humidity { get; } = (node, reading) => Values.Percentage(node, reading).Unless(reading.Findings, percent => percent.Value > 100
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
        humidity = humidity.Unless(climate.Findings, percent => percent.Value > DampestOnAverage ? ShopMistakes.AirWetsTimber(humidity.Place, percent) : null);
        return new(temperature.Or(Temperature.FromCelsius(20)), humidity.Or(Percent.FromPercent(50)));
    }
}
