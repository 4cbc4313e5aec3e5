namespace ShopDays.Measures;

/// <summary>A price and what it is for: 48 per hour, 9.40 per board-foot, 25 each.</summary>
/// <param name="Amount">The money for one unit.</param>
/// <param name="Unit">The unit.</param>
public sealed record PricePer(Money Amount, PriceUnit Unit)
{
    private static readonly Dictionary<string, PriceUnit> Names = new(StringComparer.OrdinalIgnoreCase)
    {
        ["hour"] = PriceUnit.Hour,
        ["h"] = PriceUnit.Hour,
        ["hr"] = PriceUnit.Hour,
        ["month"] = PriceUnit.Month,
        ["year"] = PriceUnit.Year,
        ["board-foot"] = PriceUnit.BoardFoot,
        ["board foot"] = PriceUnit.BoardFoot,
        ["bd ft"] = PriceUnit.BoardFoot,
        ["bf"] = PriceUnit.BoardFoot,
        ["m3"] = PriceUnit.CubicMetre,
        ["m³"] = PriceUnit.CubicMetre,
        ["cubic metre"] = PriceUnit.CubicMetre,
        ["cubic meter"] = PriceUnit.CubicMetre,
        ["each"] = PriceUnit.Each,
        ["piece"] = PriceUnit.Each,
        ["km"] = PriceUnit.Kilometre,
        ["kilometre"] = PriceUnit.Kilometre,
        ["kilometer"] = PriceUnit.Kilometre,
        ["mile"] = PriceUnit.Mile,
        ["mi"] = PriceUnit.Mile,
    };

    /// <summary>Reads a price: an amount, then <c>per</c> or a slash and the unit, or <c>each</c>.</summary>
    /// <param name="text">For example <c>48 per hour</c>, <c>9.40/bf</c>, <c>310 per m3</c>, <c>25 each</c>.</param>
    /// <param name="currency">The shop's currency; the code of another one is a fault.</param>
    public static TextResult<PricePer> Read(string text, Currency currency)
    {
        var expected = $"a price and its unit, such as {MoneyText.Example(currency)} per hour";
        TextCursor cursor = new(text, expected);
        if (MoneyText.Read(cursor, currency, out var amount) is { } noAmount)
        {
            return TextResult<PricePer>.Failed(noAmount);
        }

        cursor.SkipSpaces();
        if (cursor.IsAtEnd)
        {
            return TextResult<PricePer>.Failed(cursor.Fault(cursor.Position, $"{QuotedText.Of(text)} does not say what it is for"));
        }

        var start = cursor.Position;
        var hasPer = cursor.TrySkip('/') || string.Equals(cursor.ReadWord(), "per", StringComparison.OrdinalIgnoreCase);
        if (hasPer)
        {
            cursor.SkipSpaces();
            start = cursor.Position;
        }

        var name = text[start..].Trim();
        if (name.Length == 0)
        {
            return TextResult<PricePer>.Failed(cursor.Fault(start, $"{QuotedText.Of(text)} does not say what it is for"));
        }

        if (Names.TryGetValue(name, out var unit) && (hasPer || unit == PriceUnit.Each))
        {
            return TextResult<PricePer>.Read(new(amount, unit));
        }

        var cure = NearestName.To(name, Names.Keys) is { } nearest ? $"; nearest: {nearest}" : "";
        return TextResult<PricePer>.Failed(start, $"{QuotedText.Of(name)} is not a unit of price", "per hour, month, year, board-foot, m3, km or mile, or each, such as 25 each" + cure);
    }

    /// <summary>The price for people to read, the amount rounded to the minor unit.</summary>
    public override string ToString() => Unit switch
    {
        PriceUnit.Hour => $"{Amount} per hour",
        PriceUnit.Month => $"{Amount} per month",
        PriceUnit.Year => $"{Amount} per year",
        PriceUnit.BoardFoot => $"{Amount} per board-foot",
        PriceUnit.CubicMetre => $"{Amount} per m3",
        PriceUnit.Each => $"{Amount} each",
        PriceUnit.Kilometre => $"{Amount} per km",
        PriceUnit.Mile => $"{Amount} per mile",
        _ => throw new System.Diagnostics.UnreachableException($"no such unit of price: {Unit}"),
    };
}
