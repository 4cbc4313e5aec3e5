using ShopDays.Days;
using Xunit;

namespace ShopDays.Tests.Days;

public sealed class DateTextTests
{
    [Fact]
    public void A_span_holds_its_first_and_last_date()
    {
        var closed = Shops.Closed("2027-08-02..2027-08-15", "2027-07-04");
        Assert.Equal([4], Days(closed, "2027-07-01", 31));
        Assert.Equal(Enumerable.Range(2, 14), Days(closed, "2027-08-01", 31));
    }

    [Theory]
    [InlineData("2027-02-29", 0, "'2027-02-29' is not a date")]
    [InlineData("4 July", 0, "'4 July' is not a date")]
    [InlineData("2027-08-02..soon", 12, "'soon' is not a date")]
    [InlineData("..2027-08-02", 0, "'' is not a date")]
    [InlineData("2027-08-15..2027-08-02", 0, "'2027-08-15..2027-08-02' ends before it begins")]
    [InlineData("a date that somebody wrote in far too many words", 0, "'a date that somebody wrote in far too ma...' is not a date")]
    public void What_is_no_date_is_said_with_its_place(string text, int offset, string what)
    {
        var fault = DateText.ReadSpan(text).Fault;
        Assert.NotNull(fault);
        Assert.Equal((offset, what), (fault.Offset, fault.What));
    }

    private static IEnumerable<int> Days(ClosedDates closed, string first, int count) =>
        Enumerable.Range(0, count).Select(Shops.Date(first).PlusDays).Where(closed.Contains).Select(date => date.Day);
}
