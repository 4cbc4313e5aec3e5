namespace ShopDays.Measures;

/// <summary>Reads temperatures: <c>14 C</c>, <c>57 F</c>, <c>-3 °C</c>.</summary>
public static class TemperatureText
{
    private const string Expected = "a temperature such as 14 C or 57 F";
    private const double Coldest = -60;
    private const double Warmest = 60;

    private static readonly string[] Celsius = ["c", "celsius"];
    private static readonly string[] Fahrenheit = ["f", "fahrenheit"];

    /// <summary>Reads a temperature from -60 to 60 degrees C, both included. A number alone is degrees C.</summary>
    public static TextResult<Temperature> Read(string text)
    {
        TextCursor cursor = new(text, Expected);
        cursor.SkipSpaces();
        var isBelowZero = cursor.TrySkip('-') || cursor.TrySkip('\u2212');
        if (AmountText.Read(cursor, out var amount) is { } noAmount)
        {
            return TextResult<Temperature>.Failed(noAmount);
        }

        cursor.SkipSpaces();
        cursor.TrySkip('°');
        cursor.SkipSpaces();
        var start = cursor.Position;
        var word = cursor.ReadWord();
        var isFahrenheit = Fahrenheit.Contains(word, StringComparer.OrdinalIgnoreCase);
        if (word.Length > 0 && !isFahrenheit && !Celsius.Contains(word, StringComparer.OrdinalIgnoreCase))
        {
            return TextResult<Temperature>.Failed(cursor.Fault(start, $"{QuotedText.Of(word)} is not a unit of temperature"));
        }

        if (cursor.RequireEnd() is { } leftOver)
        {
            return TextResult<Temperature>.Failed(leftOver);
        }

        var figure = (double)amount.Value * (isBelowZero ? -1 : 1);
        var celsius = isFahrenheit ? (figure - 32) * 5 / 9 : figure;
        return celsius is < Coldest or > Warmest
            ? TextResult<Temperature>.Failed(0, $"{QuotedText.Of(text)} is no temperature of a place where people work", Expected)
            : TextResult<Temperature>.Read(Temperature.FromCelsius(celsius));
    }
}
