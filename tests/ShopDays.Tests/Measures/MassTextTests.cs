using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

public sealed class MassTextTests
{
    private const string Expected = "a weight such as 23 kg or 51 lb";

    [Theory]
    [InlineData("23 kg", 23)]
    [InlineData("23", 23)]
    [InlineData("23.5Kg", 23.5)]
    [InlineData("23 1/2 kilos", 23.5)]
    public void Kilograms_are_read_with_and_without_their_unit(string text, double kilograms) =>
        Assert.Equal(Mass.FromKilograms(kilograms), Reading.Value(MassText.Read(text)));

    [Theory]
    [InlineData("51 lb")]
    [InlineData("51lbs.")]
    [InlineData("51 pounds")]
    public void Pounds_are_read(string text) => Assert.Equal(Mass.FromPounds(51), Reading.Value(MassText.Read(text)));

    [Theory]
    [InlineData("-2 kg", 0, "'-2 kg' is below zero")]
    [InlineData("4 stone", 2, "'stone' is not a unit of weight")]
    [InlineData("4 kg net", 5, "'net' is left over")]
    [InlineData("100001 kg", 0, "'100001 kg' is heavier than 100 tonnes")]
    [InlineData("heavy", 0, "'heavy' does not begin with a number")]
    public void Nonsense_is_located_and_quoted(string text, int offset, string what) =>
        Reading.Fault(MassText.Read(text), offset, what, Expected);

    [Theory]
    [InlineData(23.4, false, "23 kg")]
    [InlineData(23.5, false, "24 kg")]
    [InlineData(4.25, false, "4.3 kg")]
    [InlineData(9.96, false, "10 kg")]
    [InlineData(0, false, "0 kg")]
    [InlineData(23, true, "51 lb")]
    [InlineData(2, true, "4.4 lb")]
    public void A_weight_is_written_as_finely_as_a_maker_needs(double kilograms, bool pounds, string text) =>
        Assert.Equal(text, MassText.Write(Mass.FromKilograms(kilograms), pounds));
}
