using System.Collections.Frozen;

namespace ShopDays.Measures;

/// <summary>
/// The currencies of ISO 4217 that people pay with, as of 2026, by their codes and minor units. From memory. Left out
/// are withdrawn codes, precious metals, units of account and codes for tests.
/// </summary>
public static class Currencies
{
    // ISO 4217, table A.1 (from memory), by the number of decimals of the minor unit.
    private const string WithoutDecimals = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF";

    private const string WithTwoDecimals =
        "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP CRC "
        + "CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR "
        + "JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD "
        + "NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN "
        + "SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VED VES WST XCD XCG YER ZAR ZMW ZWG";

    private const string WithThreeDecimals = "BHD IQD JOD KWD LYD OMR TND";

    private static readonly FrozenDictionary<string, Currency> ByCode =
        Of(WithoutDecimals, 0).Concat(Of(WithTwoDecimals, 2)).Concat(Of(WithThreeDecimals, 3))
            .ToFrozenDictionary(currency => currency.Code, StringComparer.OrdinalIgnoreCase);

    /// <summary>All the codes, in ordinal order.</summary>
    public static IReadOnlyList<string> Codes { get; } = [.. ByCode.Keys.Order(StringComparer.Ordinal)];

    /// <summary>The currency of a code, whatever its case; null when there is none.</summary>
    public static Currency? TryFind(string code) => ByCode.GetValueOrDefault(code);

    private static IEnumerable<Currency> Of(string codes, int minorDigits) => codes.Split(' ').Select(code => new Currency(code, minorDigits));
}
