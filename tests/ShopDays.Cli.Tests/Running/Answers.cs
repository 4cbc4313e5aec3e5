using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>Takes an answer in JSON apart; a field that is missing or of another type is named.</summary>
internal static class Answers
{
    public static JsonElement Field(this JsonElement answer, string name)
    {
        Assert.True(answer.TryGetProperty(name, out var field), $"'{name}' is missing in {Clipped(answer)}");
        return field;
    }

    public static double Number(this JsonElement answer, string name) => Of(answer, name, JsonValueKind.Number).GetDouble();

    /// <summary>Money, written as a decimal string.</summary>
    public static decimal Amount(this JsonElement answer, string name) => decimal.Parse(answer.Text(name), System.Globalization.CultureInfo.InvariantCulture);

    public static string Text(this JsonElement answer, string name) => Of(answer, name, JsonValueKind.String).GetString()!;

    public static bool YesOrNo(this JsonElement answer, string name)
    {
        var field = answer.Field(name);
        Assert.True(field.ValueKind is JsonValueKind.True or JsonValueKind.False, $"'{name}' is {field.ValueKind}");
        return field.GetBoolean();
    }

    public static IReadOnlyList<JsonElement> List(this JsonElement answer, string name) => [.. Of(answer, name, JsonValueKind.Array).EnumerateArray()];

    /// <summary>A time that is written as ISO 8601 with its offset.</summary>
    public static OffsetDateTime Time(this JsonElement answer, string name)
    {
        var read = OffsetDateTimePattern.Rfc3339.Parse(answer.Text(name));
        Assert.True(read.Success, $"'{name}' is no time with an offset: {answer.Text(name)}");
        return read.Value;
    }

    public static Instant Instant(this JsonElement answer, string name) => answer.Time(name).ToInstant();

    public static Region Place(this JsonElement answer) => new(answer.Number("xMm"), answer.Number("yMm"), answer.Number("lengthMm"), answer.Number("widthMm"));

    private static JsonElement Of(JsonElement answer, string name, JsonValueKind kind)
    {
        var field = answer.Field(name);
        Assert.True(field.ValueKind == kind, $"'{name}' is {field.ValueKind}, not {kind}, in {Clipped(answer)}");
        return field;
    }

    private static string Clipped(JsonElement answer) => answer.ToString() is { Length: > 200 } text ? text[..200] + "..." : answer.ToString();
}

/// <summary>A rectangle on a board, in millimetres.</summary>
internal sealed record Region(double X, double Y, double Length, double Width)
{
    // Answers write ten-thousandths of a millimetre: two rounded sums differ by no more than this.
    public const double Rounding = 0.0005;

    public double Area => Length * Width;

    public bool Overlaps(Region other) =>
        X + Length > other.X + Rounding && other.X + other.Length > X + Rounding
        && Y + Width > other.Y + Rounding && other.Y + other.Width > Y + Rounding;

    public bool LiesIn(Region board) =>
        X >= board.X - Rounding && Y >= board.Y - Rounding
        && X + Length <= board.X + board.Length + Rounding && Y + Width <= board.Y + board.Width + Rounding;
}
