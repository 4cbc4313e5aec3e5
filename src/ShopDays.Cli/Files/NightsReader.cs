using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files;

/// <summary>Reads how cold and damp a shop is at night.</summary>
internal static class NightsReader
{
    private const double LeastOfARoom = 5;
    private const double MostOfARoom = 40;
    private const double LeastOfANight = -40;
    private const double MostOfANight = 40;

    private static ValueReader<Temperature> Night { get; } = Within(LeastOfANight, MostOfANight, "the temperature of a shop at night", "-40 C to 40 C");

    private static ValueReader<Temperature> Room { get; } = Within(LeastOfARoom, MostOfARoom, "the temperature of a warm room", "5 C to 40 C");

    /// <summary>Reads the nights.</summary>
    public static ShopNights Read(Section nights)
    {
        var usual = nights.Required("temperature", Night, "the temperature in the shop at night, such as 6 C");
        var months = new Dictionary<int, Temperature>();
        nights.Inner<object>("months", "the months of the nights", section =>
        {
            foreach (var (name, month) in AirReader.Months)
            {
                if (section.Optional(name, Night) is { IsRead: true } own)
                {
                    months[month] = own.Value;
                }
            }

            return months;
        });
        var humidity = nights.Optional("humidity", AirReader.Humidity);
        var room = nights.Optional("warm-room", Room);
        var read = new ShopNights(usual.Or(Temperature.FromCelsius(20)), months, humidity.IsRead ? humidity.Value : null, room.IsRead ? room.Value : null);
        if (room.IsRead && usual.IsRead && !ShopNights.AllMonths.Any(read.IsWarmRoomUsed))
        {
            nights.Findings.Add(ShopMistakes.RoomIsNoWarmer(room.Place, room.Value, ShopNights.AllMonths.Select(read.InShop).Min()));
        }

        return read;
    }

    private static ValueReader<Temperature> Within(double least, double most, string what, string expected) =>
        (node, reading) => Values.Degrees(node, reading).Unless(reading.Findings, degrees => degrees.Celsius < least || degrees.Celsius > most
            ? ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, what, expected)
            : null);
}
