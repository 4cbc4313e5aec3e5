namespace ShopDays.Measures;

/// <summary>Reads percentages: <c>15%</c>, <c>11 %</c>, <c>7.5 percent</c>.</summary>
public static class PercentText
{
    private const string Expected = "a percentage such as 15% or 7.5%";
    private const decimal Largest = 1_000;

    /// <summary>Reads a percentage from 0 to 1000, both included. A number alone is percent: 0.15 is 0.15%.</summary>
    public static TextResult<Percent> Read(string text)
    {
        TextCursor cursor = new(text, Expected);
        if (AmountText.Read(cursor, out var amount) is { } noAmount)
        {
            return TextResult<Percent>.Failed(noAmount);
        }

        cursor.SkipSpaces();
        if (!cursor.TrySkip('%'))
        {
            var start = cursor.Position;
            var word = cursor.ReadWord();
            cursor.SkipSpaces();
            var name = string.Equals(word, "per", StringComparison.OrdinalIgnoreCase) ? word + cursor.ReadWord() : word;
            if (name.Length > 0 && !string.Equals(name, "percent", StringComparison.OrdinalIgnoreCase))
            {
                return TextResult<Percent>.Failed(cursor.Fault(start, $"{QuotedText.Of(text[start..])} is not a percent sign"));
            }
        }

        if (cursor.RequireEnd() is { } leftOver)
        {
            return TextResult<Percent>.Failed(leftOver);
        }

        return amount.Value > Largest
            ? TextResult<Percent>.Failed(0, $"{QuotedText.Of(text)} is more than 1000%", Expected)
            : TextResult<Percent>.Read(Percent.FromPercent((double)amount.Value));
    }
}
