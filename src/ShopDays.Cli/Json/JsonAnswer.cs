using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Text;
using ShopDays.Measures;

namespace ShopDays.Cli.Json;

/// <summary>Answers for other programs: camelCase, lengths in millimetres, times in minutes, ISO 8601 with offset.</summary>
internal static class JsonAnswer
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    /// <summary>Writes an answer and a line end.</summary>
    public static void Write(TextWriter output, object answer) => output.WriteLine(JsonSerializer.Serialize(answer, Options));

    /// <summary>Millimetres to a ten-thousandth.</summary>
    public static double Millimetres(Length length) => Math.Round(length.Millimetres, 4, MidpointRounding.AwayFromZero);

    /// <summary>Minutes to a hundredth.</summary>
    public static double Minutes(WorkTime time) => Math.Round(time.Minutes, 2, MidpointRounding.AwayFromZero);

    /// <summary>An instant in the shop's zone as ISO 8601 with its offset.</summary>
    public static string Time(ZonedDateTime time) => OffsetDateTimePattern.Rfc3339.Format(time.ToOffsetDateTime());

    /// <inheritdoc cref="Time(ZonedDateTime)"/>
    public static string? Time(ZonedDateTime? time) => time is { } known ? Time(known) : null;

    /// <summary>A date as ISO 8601.</summary>
    public static string Date(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
