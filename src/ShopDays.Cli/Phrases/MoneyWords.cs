using System.Globalization;
using ShopDays.Measures;

namespace ShopDays.Cli.Phrases;

/// <summary>Amounts where the currency is said once for all of them, and shares of money.</summary>
internal static class MoneyWords
{
    /// <summary><c>3,621.42</c>, with as many decimals as the currency has.</summary>
    public static string Of(Money money) =>
        money.Rounded().Amount.ToString("N" + money.Currency.MinorDigits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary><c>15 %</c>, <c>17.65 %</c>.</summary>
    public static string Share(decimal share) => (share * 100).ToString("0.##", CultureInfo.InvariantCulture) + " %";

    /// <inheritdoc cref="Share(decimal)"/>
    public static string Share(Percent percent) => percent.Value.ToString("0.##", CultureInfo.InvariantCulture) + " %";
}
