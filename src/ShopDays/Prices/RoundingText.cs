using ShopDays.Measures;

namespace ShopDays.Prices;

/// <summary>Reads and writes how a price is rounded: <c>nearest 10</c>, <c>nearest even 10</c>, <c>up to 5</c>.</summary>
public static class RoundingText
{
    private const string Expected = "nearest 10, nearest even 10 or up to 10";

    // What begins with another one's words stands before it.
    private static readonly (string Word, RoundingWay Way)[] Ways =
        [("nearest even ", RoundingWay.NearestEven), ("nearest ", RoundingWay.Nearest), ("up to ", RoundingWay.Up)];

    /// <summary>Reads a rule.</summary>
    /// <param name="text">Which way, and the step as an amount above zero.</param>
    /// <param name="currency">The shop's currency.</param>
    public static TextResult<RoundingRule> Read(string text, Currency currency)
    {
        var at = Array.FindIndex(Ways, one => text.StartsWith(one.Word, StringComparison.OrdinalIgnoreCase));
        if (at < 0)
        {
            return TextResult<RoundingRule>.Failed(0, $"{QuotedText.Of(text)} does not say how a price is rounded", Expected);
        }

        var (word, way) = Ways[at];
        var step = MoneyText.Read(text[word.Length..], currency);
        if (!step.IsRead)
        {
            return TextResult<RoundingRule>.Failed(step.Fault with { Offset = word.Length + step.Fault.Offset });
        }

        return step.Value.Amount == 0
            ? TextResult<RoundingRule>.Failed(word.Length, $"{QuotedText.Of(text)} has no step", Expected)
            : TextResult<RoundingRule>.Read(new(step.Value, way));
    }

    /// <summary>The rule for people to read.</summary>
    public static string Write(RoundingRule rule) => Ways.First(one => one.Way == rule.Way).Word + rule.Step;
}
