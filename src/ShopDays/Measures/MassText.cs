using System.Globalization;

namespace ShopDays.Measures;

/// <summary>Reads and writes what things weigh: <c>23 kg</c>, <c>51 lb</c>.</summary>
public static class MassText
{
    private const string Expected = "a weight such as 23 kg or 51 lb";
    private const double HeaviestKilograms = 100_000;

    private static readonly string[] Kilograms = ["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"];
    private static readonly string[] Pounds = ["lb", "lbs", "pound", "pounds"];

    /// <summary>Reads a mass of zero or more, up to 100 t. A number alone is kilograms.</summary>
    public static TextResult<Mass> Read(string text)
    {
        TextCursor cursor = new(text, Expected);
        if (AmountText.Read(cursor, out var amount) is { } noAmount)
        {
            return TextResult<Mass>.Failed(noAmount);
        }

        cursor.SkipSpaces();
        var start = cursor.Position;
        var word = cursor.ReadWord();
        var isPounds = Pounds.Contains(word, StringComparer.OrdinalIgnoreCase);
        if (word.Length > 0 && !isPounds && !Kilograms.Contains(word, StringComparer.OrdinalIgnoreCase))
        {
            return TextResult<Mass>.Failed(cursor.Fault(start, $"{QuotedText.Of(word)} is not a unit of weight"));
        }

        cursor.TrySkip('.');
        if (cursor.RequireEnd() is { } leftOver)
        {
            return TextResult<Mass>.Failed(leftOver);
        }

        var mass = isPounds ? Mass.FromPounds((double)amount.Value) : Mass.FromKilograms((double)amount.Value);
        return mass.Kilograms > HeaviestKilograms
            ? TextResult<Mass>.Failed(0, $"{QuotedText.Of(text)} is heavier than 100 tonnes", Expected)
            : TextResult<Mass>.Read(mass);
    }

    /// <summary>The mass in whole units, below ten of them with one decimal; halves away from zero.</summary>
    /// <param name="mass">The mass.</param>
    /// <param name="pounds">Whether in pounds; else in kilograms.</param>
    public static string Write(Mass mass, bool pounds)
    {
        var figure = (decimal)(pounds ? mass.Pounds : mass.Kilograms);
        var rounded = decimal.Round(figure, Math.Abs(figure) < 10 ? 1 : 0, MidpointRounding.AwayFromZero);
        return rounded.ToString("0.#", CultureInfo.InvariantCulture) + (pounds ? " lb" : " kg");
    }
}
