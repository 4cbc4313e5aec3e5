namespace ShopDays.Measures;

/// <summary>How much, before its unit is known: a whole or decimal number, a fraction, or a whole number and a fraction.</summary>
/// <param name="Whole">The number before the fraction, zero or more; null when only a fraction was written.</param>
/// <param name="HasPoint">Whether the number was written with a decimal point.</param>
/// <param name="Numerator">The fraction's upper number, zero when there is no fraction.</param>
/// <param name="Denominator">The fraction's lower number, one when there is no fraction.</param>
internal readonly record struct Amount(decimal? Whole, bool HasPoint, int Numerator, int Denominator)
{
    public bool IsPlainFraction => Whole is null;

    /// <summary>Whether a smaller unit may follow: 3 ft 6 in is a length, 3.5 ft 6 in is a slip.</summary>
    public bool IsWhole => !HasPoint && Whole is not null && Denominator == 1;

    public decimal Value => Times(1);

    /// <summary>So much of a unit. The fraction is divided last, so that 64ths of an inch stay exact.</summary>
    public decimal Times(decimal unit) => ((Whole ?? 0) * unit) + (Numerator * unit / Denominator);
}
