namespace ShopDays.Measures;

/// <summary>Reads lengths as the trade writes them: <c>47 1/2"</c>, <c>3'-11.5"</c>, <c>5/8 in</c>, <c>1206 mm</c>.</summary>
public static class LengthText
{
    /// <summary>The longest length that is read, this one included: no shop saws a kilometre, so more is a slip.</summary>
    public static readonly Length Longest = Length.FromMillimetres(1_000_000m);

    private const string Expected = "a length such as 47 1/2\", 3' 11 1/2\" or 1206 mm";

    /// <summary>Reads a length of zero or more, up to <see cref="Longest"/>.</summary>
    /// <param name="text">Feet and inches, or one number with one unit. After feet, inches need no mark.</param>
    /// <param name="bareUnit">The unit of a number or fraction without one.</param>
    /// <remarks>
    /// A fraction alone may reach 6 (24/4); beyond, it is taken for a lost space. Rounded to an eighth of a micrometre,
    /// halves away from zero; 64ths of an inch are exact.
    /// </remarks>
    public static TextResult<Length> Read(string text, LengthUnit bareUnit) => Read(text, bareUnit, readsQuarters: false);

    /// <summary>
    /// Reads a length as <see cref="Read(string, LengthUnit)"/> does, but a fraction over 4 alone and without a unit is
    /// quarters of an inch, as rough stock is sold: 5/4 is 1 1/4 in whatever the file's unit.
    /// </summary>
    /// <param name="text">The thickness.</param>
    /// <param name="bareUnit">The unit of any other number without one.</param>
    public static TextResult<Length> ReadRoughThickness(string text, LengthUnit bareUnit) => Read(text, bareUnit, readsQuarters: true);

    private static TextResult<Length> Read(string text, LengthUnit bareUnit, bool readsQuarters)
    {
        TextCursor cursor = new(text, Expected);
        if (AmountText.Read(cursor, out var amount) is { } noAmount)
        {
            return TextResult<Length>.Failed(noAmount);
        }

        if (LengthUnitText.Read(cursor, out var written) is { } noUnit)
        {
            return TextResult<Length>.Failed(noUnit);
        }

        var isQuarters = readsQuarters && written is null && amount is { IsPlainFraction: true, Denominator: 4 };
        var unit = written ?? (isQuarters ? LengthUnit.Inch : bareUnit);
        var total = amount.Times(LengthUnitText.EighthMicrometres(unit));

        cursor.SkipSpaces();
        if (written == LengthUnit.Foot && !cursor.IsAtEnd)
        {
            if (!amount.IsWhole)
            {
                return TextResult<Length>.Failed(cursor.Fault(cursor.Position, $"{QuotedText.Of(text[cursor.Position..])} follows feet that are not whole"));
            }

            if (ReadInches(cursor, out var inches) is { } noInches)
            {
                return TextResult<Length>.Failed(noInches);
            }

            total += inches * Length.PerInch;
        }

        if (cursor.RequireEnd() is { } leftOver)
        {
            return TextResult<Length>.Failed(leftOver);
        }

        return total > Longest.EighthMicrometres
            ? TextResult<Length>.Failed(0, $"{QuotedText.Of(text)} is longer than a kilometre", Expected)
            : TextResult<Length>.Read(Length.FromEighthMicrometres((long)decimal.Round(total, MidpointRounding.AwayFromZero)));
    }

    private static TextFault? ReadInches(TextCursor cursor, out decimal inches)
    {
        inches = 0;
        cursor.TrySkip('-');
        cursor.SkipSpaces();
        var start = cursor.Position;
        if (AmountText.Read(cursor, out var amount) is { } noAmount)
        {
            return noAmount;
        }

        var unitStart = cursor.Position;
        if (LengthUnitText.Read(cursor, out var unit) is { } noUnit)
        {
            return noUnit;
        }

        if (unit is not (null or LengthUnit.Inch))
        {
            return cursor.Fault(unitStart, $"{QuotedText.Of(cursor.Text[unitStart..])} follows feet, where only inches can");
        }

        inches = amount.Value;
        return inches < 12
            ? null
            : new(start, $"{QuotedText.Of(cursor.Text[start..])} is a foot or more beside feet", "inches from 0 to below 12, such as 3' 11 1/2\"");
    }
}
