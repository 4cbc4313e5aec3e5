namespace ShopDays.Measures;

/// <summary>A currency by its ISO 4217 code, with the number of decimals of its minor unit.</summary>
/// <param name="Code">Three capital letters, for example <c>USD</c>.</param>
/// <param name="MinorDigits">Decimals of the minor unit: 2 for cents, 0 for yen, 3 for dinars.</param>
public sealed record Currency(string Code, int MinorDigits)
{
    /// <inheritdoc/>
    public override string ToString() => Code;
}
