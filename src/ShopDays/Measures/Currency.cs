namespace ShopDays.Measures;

/// <summary>A currency by its ISO 4217 code, with the number of decimals of its minor unit.</summary>
/// <param name="Code">Three capital letters, for example <c>USD</c>.</param>
/// <param name="MinorDigits">Decimals of the minor unit: 2 for cents, 0 for yen, 3 for dinars.</param>
public sealed record Currency(string Code, int MinorDigits)
{
    /// <summary>The smallest coin reckoned in, in major units: 0.01 for cents, 1 for yen.</summary>
    public decimal MinorUnit { get; } = new(1, 0, 0, isNegative: false, (byte)MinorDigits);

    /// <inheritdoc/>
    public override string ToString() => Code;
}
