using System.Globalization;

namespace ShopDays.Measures;

/// <summary>Reads and writes areas of floor: <c>40 sq ft</c>, <c>3.75 m2</c>.</summary>
public static class AreaText
{
    private const string Expected = "an area such as 40 sq ft or 3.7 m2";
    private const double LargestSquareMetres = 10_000;

    private static readonly string[] SquareFeet = ["sq ft", "sqft", "ft2", "ft²", "square feet", "square foot"];
    private static readonly string[] SquareMetres = ["m2", "m²", "sq m", "sqm", "square metres", "square metre", "square meters", "square meter"];

    /// <summary>Reads an area of zero or more, up to a hectare, with its unit.</summary>
    public static TextResult<Area> Read(string text)
    {
        TextCursor cursor = new(text, Expected);
        if (AmountText.Read(cursor, out var amount) is { } noAmount)
        {
            return TextResult<Area>.Failed(noAmount);
        }

        cursor.SkipSpaces();
        var start = cursor.Position;
        var unit = string.Join(' ', text[start..].Replace(".", " ", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        var isFeet = SquareFeet.Contains(unit, StringComparer.OrdinalIgnoreCase);
        if (!isFeet && !SquareMetres.Contains(unit, StringComparer.OrdinalIgnoreCase))
        {
            return TextResult<Area>.Failed(cursor.Fault(start, unit.Length == 0 ? $"{QuotedText.Of(text)} has no unit" : $"{QuotedText.Of(text[start..])} is not a unit of area"));
        }

        var area = isFeet ? Area.FromSquareFeet((double)amount.Value) : Area.FromSquareMetres((double)amount.Value);
        return area.SquareMetres > LargestSquareMetres
            ? TextResult<Area>.Failed(0, $"{QuotedText.Of(text)} is more than a hectare", Expected)
            : TextResult<Area>.Read(area);
    }

    /// <summary>The area to a tenth of a square foot or a hundredth of a square metre, halves away from zero.</summary>
    /// <param name="area">The area.</param>
    /// <param name="feet">Whether in square feet; else in square metres.</param>
    public static string Write(Area area, bool feet) => feet
        ? Math.Round(area.SquareFeet, 1, MidpointRounding.AwayFromZero).ToString("#,0.#", CultureInfo.InvariantCulture) + " sq ft"
        : Math.Round(area.SquareMetres, 2, MidpointRounding.AwayFromZero).ToString("#,0.##", CultureInfo.InvariantCulture) + " m2";

    /// <summary>The area as it is written, but never less than it is.</summary>
    /// <inheritdoc cref="Write(Area, bool)"/>
    public static string WriteEnough(Area area, bool feet)
    {
        // Floating-point dust of a billionth is no floor.
        var steps = Math.Max(0, Math.Ceiling((feet ? area.SquareFeet * 10 : area.SquareMetres * 100) - 1e-9));
        return Write(feet ? Area.FromSquareFeet(steps / 10) : Area.FromSquareMetres(steps / 100), feet);
    }
}
