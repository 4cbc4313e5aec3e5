using System.Globalization;

namespace ShopDays.Measures;

/// <summary>
/// Reads numbers and fractions as they are written in a shop. Digits are ASCII, the decimal sign is a point,
/// whatever the machine's language: an exponent, a comma or a sign is a fault with its own message.
/// </summary>
internal static class AmountText
{
    /// <summary>
    /// The most whole units a fraction alone may hold: 24/4 is the thickest stock named so (common practice, no source),
    /// and beyond it stands a lost space, 471/2 for 47 1/2.
    /// </summary>
    private const int MostWholesInAFraction = 6;

    private const int MostDigits = 9;
    private const char FractionSlash = '\u2044';
    private const char MinusSign = '\u2212';

    /// <summary>Reads <c>47</c>, <c>47.5</c>, <c>47 1/2</c>, <c>47-1/2</c>, <c>47½</c> or <c>5/4</c>.</summary>
    public static TextFault? Read(TextCursor cursor, out Amount amount)
    {
        amount = default;
        cursor.SkipSpaces();
        var start = cursor.Position;
        if (TryVulgar(cursor, out var numerator, out var denominator))
        {
            amount = new(null, false, numerator, denominator);
            return null;
        }

        if (TryFraction(cursor, out var above, out var below))
        {
            return Proper(cursor, start, null, above, below, out amount);
        }

        if (ReadNumber(cursor, out var whole, out var decimals) is { } fault)
        {
            return fault;
        }

        amount = new(whole, decimals > 0, 0, 1);
        if (decimals > 0)
        {
            return null;
        }

        var afterWhole = cursor.Position;
        if (!cursor.TrySkip('-'))
        {
            cursor.SkipSpaces();
        }

        var fractionStart = cursor.Position;
        if (TryVulgar(cursor, out numerator, out denominator))
        {
            amount = new(whole, false, numerator, denominator);
            return null;
        }

        if (TryFraction(cursor, out above, out below))
        {
            return Proper(cursor, fractionStart, whole, above, below, out amount);
        }

        cursor.Position = afterWhole;
        return null;
    }

    /// <summary>Reads <c>47</c>, <c>47.50</c> or <c>.5</c>, with the number of decimals that were written.</summary>
    public static TextFault? ReadNumber(TextCursor cursor, out decimal number, out int decimals)
    {
        number = 0;
        decimals = 0;
        cursor.SkipSpaces();
        var start = cursor.Position;
        if (cursor.IsAtEnd)
        {
            return cursor.Fault(start, start == 0 || string.IsNullOrWhiteSpace(cursor.Text) ? "nothing is written here" : "a number is missing here");
        }

        if (cursor.Current is '-' or MinusSign && (char.IsAsciiDigit(cursor.Ahead(1)) || cursor.Ahead(1) == '.'))
        {
            return cursor.Fault(start, $"{QuotedText.Of(cursor.Text[start..])} is below zero");
        }

        var whole = cursor.ReadDigits();
        var part = "";
        if (cursor.Current == '.' && char.IsAsciiDigit(cursor.Ahead(1)))
        {
            cursor.Position++;
            part = cursor.ReadDigits();
        }

        if (whole.Length + part.Length == 0)
        {
            return cursor.Fault(start, $"{QuotedText.Of(cursor.Text[start..])} does not begin with a number");
        }

        if (Misspelt(cursor, start) is { } fault)
        {
            return fault;
        }

        if (whole.TrimStart('0').Length > MostDigits)
        {
            return cursor.Fault(start, $"{QuotedText.Of(cursor.PieceAt(start))} is too large a number");
        }

        decimals = part.Length;
        number = decimal.Parse(whole + "." + part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        return null;
    }

    /// <summary>The slips that follow right upon a number: a comma, an exponent, a second or a last point.</summary>
    private static TextFault? Misspelt(TextCursor cursor, int start)
    {
        var piece = cursor.PieceAt(start);
        if (cursor.Current == ',' && char.IsAsciiDigit(cursor.Ahead(1)))
        {
            var before = cursor.Text[start..cursor.Position];
            var comma = cursor.Position++;
            var after = cursor.ReadDigits();
            var cure = $"a point before decimals: write {before}.{after}, not {before},{after}";
            return new(comma, $"{QuotedText.Of(piece)} has a comma in it", after.Length == 3 ? $"{cure} (or {before}{after} when thousands are meant)" : cure);
        }

        var hasExponent = cursor.Current is 'e' or 'E'
            && (char.IsAsciiDigit(cursor.Ahead(1)) || (cursor.Ahead(1) is '+' or '-' && char.IsAsciiDigit(cursor.Ahead(2))));
        if (hasExponent)
        {
            return cursor.Fault(start, $"{QuotedText.Of(piece)} has an exponent");
        }

        return cursor.Current == '.' ? cursor.Fault(cursor.Position, $"{QuotedText.Of(piece)} has a point too many") : null;
    }

    private static TextFault? Proper(TextCursor cursor, int start, decimal? whole, string above, string below, out Amount amount)
    {
        amount = default;
        var written = QuotedText.Of(cursor.Text[start..cursor.Position]);
        if (above.TrimStart('0').Length > 4 || below.TrimStart('0').Length > 4)
        {
            return cursor.Fault(start, $"{written} is a fraction with too many digits");
        }

        var numerator = int.Parse(above, NumberStyles.None, CultureInfo.InvariantCulture);
        var denominator = int.Parse(below, NumberStyles.None, CultureInfo.InvariantCulture);
        if (denominator == 0)
        {
            return cursor.Fault(start, $"{written} is a fraction over zero");
        }

        if (whole is not null && numerator >= denominator)
        {
            return new(start, $"{written} is no less than one", "a fraction below one after a whole number, such as 47 1/2");
        }

        if (numerator > MostWholesInAFraction * denominator)
        {
            return new(start, $"{written} is large for a fraction alone", "a space or a hyphen after the whole number, such as 47 1/2");
        }

        amount = new(whole, false, numerator, denominator);
        return null;
    }

    private static bool TryFraction(TextCursor cursor, out string above, out string below)
    {
        var start = cursor.Position;
        above = cursor.ReadDigits();
        below = "";
        if (above.Length > 0 && (cursor.TrySkip('/') || cursor.TrySkip(FractionSlash)))
        {
            below = cursor.ReadDigits();
        }

        if (below.Length > 0)
        {
            return true;
        }

        cursor.Position = start;
        return false;
    }

    private static bool TryVulgar(TextCursor cursor, out int numerator, out int denominator)
    {
        (numerator, denominator) = cursor.Current switch
        {
            '½' => (1, 2),
            '¼' => (1, 4),
            '¾' => (3, 4),
            '⅛' => (1, 8),
            '⅜' => (3, 8),
            '⅝' => (5, 8),
            '⅞' => (7, 8),
            _ => (0, 1),
        };
        cursor.Position += numerator > 0 ? 1 : 0;
        return numerator > 0;
    }
}
