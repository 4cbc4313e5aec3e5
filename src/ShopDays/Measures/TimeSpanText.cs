namespace ShopDays.Measures;

/// <summary>
/// The writing that hands-on time and waits have in common: numbers with units, largest first, each unit once, and
/// ISO 8601 durations. What a bare number means, and which units are allowed, is for the reader of each.
/// </summary>
/// <param name="expected">What should have been written, with an example.</param>
/// <param name="bareUnit">The unit of a number alone; null when it must have one.</param>
/// <param name="largest">The largest unit that has a fixed length here.</param>
/// <param name="tooLarge">What is wrong with a larger one.</param>
internal sealed class TimeSpanText(string expected, TimeUnit? bareUnit, TimeUnit largest, string tooLarge)
{
    /// <summary>Reads a time in seconds, zero or more.</summary>
    public TextFault? Read(string text, out decimal seconds)
    {
        TextCursor cursor = new(text, expected);
        cursor.SkipSpaces();
        return cursor.Current is 'P' or 'p' ? ReadIso(cursor, out seconds) : ReadParts(cursor, out seconds);
    }

    private TextFault? ReadParts(TextCursor cursor, out decimal seconds)
    {
        seconds = 0;
        TimeUnit? previous = null;
        var mayGoOn = true;
        do
        {
            cursor.SkipSpaces();
            var start = cursor.Position;
            if (!mayGoOn)
            {
                return cursor.Fault(start, $"{QuotedText.Of(cursor.Text[start..])} follows a fraction");
            }

            if (AmountText.Read(cursor, out var amount) is { } noAmount)
            {
                return noAmount;
            }

            if (ReadUnit(cursor, start, previous, out var unit) is { } noUnit)
            {
                return noUnit;
            }

            if (Misplaced(cursor, start, amount, unit, previous) is { } misplaced)
            {
                return misplaced;
            }

            seconds += amount.Times(unit.Seconds);
            mayGoOn = amount.IsWhole;
            previous = unit;
            cursor.SkipSpaces();
        }
        while (!cursor.IsAtEnd);

        return null;
    }

    private TextFault? ReadUnit(TextCursor cursor, int start, TimeUnit? previous, out TimeUnit unit)
    {
        cursor.SkipSpaces();
        var unitStart = cursor.Position;
        var word = cursor.ReadWord();
        if (word.Length > 0)
        {
            unit = TimeUnit.Named(word) ?? TimeUnit.Second;
            cursor.TrySkip('.');
            return TimeUnit.Named(word) is null ? new(unitStart, $"{QuotedText.Of(word)} is not a unit of time", expected) : null;
        }

        // 1h30: what follows hours without a unit is minutes, in any shop.
        var implied = previous is null ? bareUnit : previous == TimeUnit.Hour ? TimeUnit.Minute : null;
        unit = implied ?? TimeUnit.Second;
        if (!cursor.IsAtEnd)
        {
            return cursor.Current == ':'
                ? new(unitStart, $"{QuotedText.Of(cursor.Text)} reads as a time of day", expected)
                : cursor.Fault(unitStart, $"{QuotedText.Of(cursor.Text[unitStart..])} is not a unit of time");
        }

        return implied is null ? cursor.Fault(start, $"{QuotedText.Of(cursor.Text[start..])} has no unit") : null;
    }

    private TextFault? Misplaced(TextCursor cursor, int start, Amount amount, TimeUnit unit, TimeUnit? previous)
    {
        var piece = QuotedText.Of(cursor.Text[start..cursor.Position]);
        if (unit.Seconds > largest.Seconds)
        {
            return cursor.Fault(start, $"{piece} {tooLarge}");
        }

        if (previous is not null && unit.Seconds >= previous.Seconds)
        {
            return cursor.Fault(start, $"{piece} does not follow {previous.Names[^1]}");
        }

        return previous is not null && amount.Times(unit.Seconds) >= previous.Seconds
            ? cursor.Fault(start, $"{piece} is no less than one of the {previous.Names[^1]} before it")
            : null;
    }

    private TextFault? ReadIso(TextCursor cursor, out decimal seconds)
    {
        seconds = 0;
        var wholeStart = cursor.Position++;
        TimeUnit? previous = null;
        var isClock = false;
        var mayGoOn = true;
        while (!cursor.IsAtEnd && !char.IsWhiteSpace(cursor.Current))
        {
            if (!isClock && cursor.Current is 'T' or 't')
            {
                isClock = true;
                cursor.Position++;
            }

            var start = cursor.Position;
            if (!mayGoOn)
            {
                return cursor.Fault(start, $"{QuotedText.Of(cursor.Text[start..])} follows a fraction");
            }

            if (AmountText.ReadNumber(cursor, out var number, out var decimals) is { } noNumber)
            {
                return noNumber;
            }

            var designator = char.ToUpperInvariant(cursor.Current);
            TimeUnit? unit = TimeUnit.All.FirstOrDefault(unit => unit.Designator == designator && unit.Seconds < TimeUnit.Day.Seconds == isClock);
            if (unit is null)
            {
                var what = designator is 'Y' or 'M' ? "counts years or months, which have no fixed length" : "has no unit of ISO 8601";
                return cursor.Fault(start, $"{QuotedText.Of(cursor.Text[start..])} {what}");
            }

            cursor.Position++;
            Amount amount = new(number, decimals > 0, 0, 1);
            if (Misplaced(cursor, start, amount, unit, null) is { } misplaced)
            {
                return misplaced;
            }

            if (previous is not null && unit.Seconds >= previous.Seconds)
            {
                return cursor.Fault(start, $"{QuotedText.Of(cursor.Text[start..cursor.Position])} does not follow {previous.Names[^1]}");
            }

            seconds += amount.Times(unit.Seconds);
            mayGoOn = amount.IsWhole;
            previous = unit;
        }

        return previous is null ? cursor.Fault(wholeStart, $"{QuotedText.Of(cursor.Text[wholeStart..])} has no number in it") : cursor.RequireEnd();
    }
}
