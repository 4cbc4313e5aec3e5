using System.Globalization;

namespace ShopDays.Measures;

/// <summary>An amount of money in one currency. Amounts are decimal and are rounded only where a rule says so.</summary>
/// <param name="Amount">The amount in major units.</param>
/// <param name="Currency">The currency.</param>
public sealed record Money(decimal Amount, Currency Currency)
{
    /// <summary>The amount rounded to the currency's minor unit, halves away from zero.</summary>
    public Money Rounded() => this with { Amount = decimal.Round(Amount, Currency.MinorDigits, MidpointRounding.AwayFromZero) };

    /// <summary>The amount rounded down to the currency's minor unit.</summary>
    public Money RoundedDown() => this with { Amount = decimal.Round(Amount, Currency.MinorDigits, MidpointRounding.ToNegativeInfinity) };

    /// <summary>The amount rounded up to the currency's minor unit.</summary>
    public Money RoundedUp() => this with { Amount = decimal.Round(Amount, Currency.MinorDigits, MidpointRounding.ToPositiveInfinity) };

    /// <summary>No money.</summary>
    public static Money None(Currency currency) => new(0, currency);

    /// <summary>The amount rounded to the minor unit and shared out by weights: the shares add up to it, none lost and none invented.</summary>
    /// <param name="weights">At least one, none below zero and one above it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The amount is below zero.</exception>
    public IReadOnlyList<Money> SharedOut(IReadOnlyList<decimal> weights) =>
        [.. LargestRemainder.Share((long)(Rounded().Amount / Currency.MinorUnit), weights).Select(units => this with { Amount = units * Currency.MinorUnit })];

    /// <summary>The sum of some amounts, none of them needed.</summary>
    /// <exception cref="InvalidOperationException">A currency differs.</exception>
    public static Money Sum(IEnumerable<Money> amounts, Currency currency) => amounts.Aggregate(None(currency), (sum, one) => sum + one);

    /// <summary>The sum.</summary>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static Money operator +(Money left, Money right) => left with { Amount = left.Amount + left.SameAs(right).Amount };

    /// <summary>The difference.</summary>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static Money operator -(Money left, Money right) => left with { Amount = left.Amount - left.SameAs(right).Amount };

    /// <summary>So many times as much, not rounded.</summary>
    public static Money operator *(Money money, decimal times) => money with { Amount = money.Amount * times };

    /// <summary>The amount rounded to the minor unit, with its code.</summary>
    public override string ToString() =>
        Rounded().Amount.ToString("N" + Currency.MinorDigits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) + " " + Currency.Code;

    private Money SameAs(Money other) => other.Currency == Currency
        ? other
        : throw new InvalidOperationException($"{Currency.Code} and {other.Currency.Code} cannot be added without a rate");
}
