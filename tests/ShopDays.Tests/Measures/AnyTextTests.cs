using CsCheck;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

/// <summary>Whatever is typed, a reader answers with a value or with a fault that lies in the text.</summary>
public sealed class AnyTextTests
{
    private static readonly string[] Scraps =
    [
        "0", "1", "9", "47", "999999999", "99999999999999999999999999999999", ".", ",", "/", "-", "−", " ", "\t", "\n", "\"", "'", "″", "′", "½", "⅞",
        "⁄", "x", "×", "by", "in", "ft", "mm", "m", "h", "d", "w", "min", "s", "P", "T", "PT", "M", "H", "e", "E+", "%", "per", "each", "USD", "$",
        "kg", "lb", ":", "٣", "🪵", "\0", "\u00a0", "+", "NaN",
    ];

    private static readonly Gen<string> AnyText = Gen.OneOf(
        Gen.Int[0, Scraps.Length - 1].Array[0, 10].Select(picks => string.Concat(picks.Select(pick => Scraps[pick]))),
        Gen.String);

    private static readonly Currency Dollars = new("USD", 2);

    [Fact]
    public void Every_text_is_read_or_has_a_fault_inside_it() => AnyText.Sample(
        text => IsSound(LengthText.Read(text, LengthUnit.Foot), text)
            && IsSound(LengthText.ReadRoughThickness(text, LengthUnit.Millimetre), text)
            && IsSound(SizeText.Read(text, LengthUnit.Metre, roughThickness: true), text)
            && IsSound(WorkTimeText.Read(text), text)
            && IsSound(WaitText.Read(text), text)
            && IsSound(MassText.Read(text), text)
            && IsSound(PercentText.Read(text), text)
            && IsSound(MoneyText.Read(text, Dollars), text)
            && IsSound(PricePer.Read(text, Dollars), text),
        iter: 20_000);

    [Fact]
    public void A_length_that_is_read_is_never_below_zero_nor_beyond_the_longest() => AnyText.Sample(
        text => LengthText.Read(text, LengthUnit.Metre) is not { IsRead: true } read || (read.Value >= Length.Zero && read.Value <= LengthText.Longest),
        iter: 20_000);

    private static bool IsSound<T>(TextResult<T> result, string text) => result.IsRead
        || (result.Fault.Offset >= 0 && result.Fault.Offset <= text.Length && result.Fault.What.Length is > 0 and < 200 && result.Fault.Expected.Length > 0);
}
