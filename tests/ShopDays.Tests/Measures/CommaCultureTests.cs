using System.Globalization;
using NodaTime;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Measures;

/// <summary>The machine's language must not change what a file means or what is printed.</summary>
public sealed class CommaCultureTests
{
    [Fact]
    public void Measures_read_and_write_alike_where_decimals_have_a_comma()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = WithDecimalComma();
            Assert.Equal("1,5", 1.5.ToString(CultureInfo.CurrentCulture));

            Assert.Equal(Length.FromInches(47.5m), Reading.Value(LengthText.Read("47.5\"", LengthUnit.Millimetre)));
            Reading.Fault(LengthText.Read("47,5\"", LengthUnit.Inch), 2, "'47,5\"' has a comma in it");
            Assert.Equal("3' 11 1/2\"", LengthFormat.Inches(16, feet: true).Write(Length.FromInches(47.5m)));
            Assert.Equal("1206.5 mm", Length.FromMillimetres(1206.5m).ToString());
            Assert.Equal(90, Reading.Value(WorkTimeText.Read("1.5h")).Minutes);
            Assert.Equal("1 h 30 min", WorkTimeText.Write(WorkTime.FromMinutes(90)));
            Assert.Equal(Duration.FromHours(36), Reading.Value(WaitText.Read("1.5 d")));
            Assert.Equal("-1 d 12 h", WaitText.Write(Duration.FromHours(-36)));
            Assert.Equal("4.5 kg", MassText.Write(Reading.Value(MassText.Read("4.5")), pounds: false));
            Assert.Equal("7.5%", Reading.Value(PercentText.Read("7.5%")).ToString());
            Assert.Equal("1,200.50 USD", Reading.Value(MoneyText.Read("1200.50", new Currency("USD", 2))).ToString());
            Assert.Equal("9.40 USD per board-foot", Reading.Value(PricePer.Read("9.40/bf", new Currency("USD", 2))).ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    /// <summary>Made by hand: the program carries no table of the world's languages.</summary>
    private static CultureInfo WithDecimalComma()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.PercentDecimalSeparator = ",";
        culture.NumberFormat.NegativeSign = "−";
        return culture;
    }
}
