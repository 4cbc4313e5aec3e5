using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;

namespace ShopDays.Cli.Files;

/// <summary>Readers of amounts and prices in the shop's currency; silent where that could not be read.</summary>
internal static class MoneyValues
{
    /// <summary>An amount.</summary>
    public static ValueReader<Money> Amount { get; } = InCurrency("an amount such as 45 or 45.50", MoneyText.Read);

    /// <summary>What one of a thing costs: an amount, with or without <c>each</c>.</summary>
    public static ValueReader<Money> Each { get; } = InCurrency("what one costs, such as 3.20 each", (text, currency) =>
        text.EndsWith("each", StringComparison.OrdinalIgnoreCase) ? MoneyText.Read(text[..^"each".Length].TrimEnd(), currency) : MoneyText.Read(text, currency));

    /// <summary>A price for one of some things.</summary>
    public static ValueReader<PricePer> Price(PriceUnit[] units, string expected) => (node, reading) =>
        InCurrency(expected, PricePer.Read)(node, reading)
            .Unless(reading.Findings, price => units.Contains(price.Unit) ? null : ShopMistakes.PriceForSomethingElse(node.Place, ((YamlText)node).Value, expected));

    /// <summary>Anything that is read by a currency.</summary>
    public static ValueReader<T> InCurrency<T>(string expected, Func<string, Currency, TextResult<T>> read) => (node, reading) => reading.Currency is not { } currency
        ? Field<T>.Wrong(node.Place)
        : Values.Of(expected, (text, _) => read(text, currency))(node, reading);
}
