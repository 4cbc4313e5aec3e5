namespace ShopDays.Measures;

/// <summary>Reads amounts of money in the shop's currency: <c>48</c>, <c>48.50</c>, <c>USD 48</c>, <c>48 USD</c>.</summary>
public static class MoneyText
{
    /// <summary>Reads an amount of zero or more, with no more decimals than the currency's minor unit has.</summary>
    /// <param name="text">The amount, with or without the currency's code before or after it.</param>
    /// <param name="currency">The shop's currency; the code of another one is a fault.</param>
    public static TextResult<Money> Read(string text, Currency currency)
    {
        TextCursor cursor = new(text, Expected(currency));
        if (Read(cursor, currency, out var money) is { } fault)
        {
            return TextResult<Money>.Failed(fault);
        }

        return cursor.RequireEnd() is { } leftOver ? TextResult<Money>.Failed(leftOver) : TextResult<Money>.Read(money);
    }

    /// <summary>Reads an amount and leaves what follows it.</summary>
    internal static TextFault? Read(TextCursor cursor, Currency currency, out Money money)
    {
        money = new(0, currency);
        cursor.SkipSpaces();
        var hasCode = char.IsLetter(cursor.Current);
        if (hasCode && ReadCode(cursor, currency) is { } noCode)
        {
            return noCode;
        }

        cursor.SkipSpaces();
        var start = cursor.Position;
        if (char.GetUnicodeCategory(cursor.Current) == System.Globalization.UnicodeCategory.CurrencySymbol)
        {
            return cursor.Fault(start, $"{QuotedText.Of(cursor.PieceAt(start))} has a sign that several currencies share");
        }

        if (AmountText.ReadNumber(cursor, out var number, out var decimals) is { } noNumber)
        {
            return noNumber;
        }

        if (decimals > currency.MinorDigits)
        {
            var allowed = currency.MinorDigits == 0 ? "no decimals" : FormattableString.Invariant($"at most {currency.MinorDigits} decimals");
            return new(start, $"{QuotedText.Of(cursor.Text[start..cursor.Position])} is finer than {currency.Code} is paid", $"{allowed}, as in {Example(currency)}");
        }

        money = new(number, currency);
        var afterNumber = cursor.Position;
        cursor.SkipSpaces();
        if (!hasCode && IsCode(cursor))
        {
            return ReadCode(cursor, currency);
        }

        cursor.Position = afterNumber;
        return null;
    }

    internal static string Example(Currency currency) => new Money(48, currency).ToString();

    private static string Expected(Currency currency) => $"an amount such as {Example(currency)}";

    /// <summary>Three letters after the number are a currency, unless they are the word <c>per</c>.</summary>
    private static bool IsCode(TextCursor cursor)
    {
        var start = cursor.Position;
        var word = cursor.ReadWord();
        cursor.Position = start;
        return word.Length == 3 && !string.Equals(word, "per", StringComparison.OrdinalIgnoreCase);
    }

    private static TextFault? ReadCode(TextCursor cursor, Currency currency)
    {
        var start = cursor.Position;
        var word = cursor.ReadWord();
        if (string.Equals(word, currency.Code, StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }

        var what = Currencies.TryFind(word) is null ? "is not a currency's code" : $"is not the shop's currency, {currency.Code}";
        return cursor.Fault(start, $"{QuotedText.Of(word)} {what}");
    }
}
