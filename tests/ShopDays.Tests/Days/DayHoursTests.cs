using NodaTime;
using ShopDays.Days;
using Xunit;

namespace ShopDays.Tests.Days;

public sealed class DayHoursTests
{
    [Theory]
    [InlineData("08:00-12:00", "08:00-12:00")]
    [InlineData("8:00 - 12:30", "08:00-12:30")]
    [InlineData("19:00\u201321:15", "19:00-21:15")]
    [InlineData("19:00-24:00", "19:00-24:00")]
    [InlineData("19:00-00:00", "19:00-24:00")]
    [InlineData("00:00-24:00", "00:00-24:00")]
    public void Hours_are_read_as_they_are_written(string text, string expected) =>
        Assert.Equal(expected, DayHours.Read(text).Value.ToString());

    [Theory]
    [InlineData("8 to 12", 0, "'8 to 12' is not a pair of times")]
    [InlineData("", 0, "'' is not a pair of times")]
    [InlineData("8-12:00", 0, "'8' is not a time of day")]
    [InlineData("08:00-", 6, "'' is not a time of day")]
    [InlineData("08:00- 25:00", 7, "'25:00' is not a time of day")]
    [InlineData("24:00-08:00", 0, "'24:00' is not a time of day")]
    [InlineData("08:00-12:60", 6, "'12:60' is not a time of day")]
    [InlineData("08:00-08:00", 0, "the hours '08:00-08:00' end as they begin")]
    [InlineData("00:00-00:00", 0, "the hours '00:00-00:00' end as they begin")]
    [InlineData("20:00-08:00", 0, "the hours '20:00-08:00' end before they begin")]
    public void What_is_no_hours_is_said_with_its_place(string text, int offset, string what)
    {
        var fault = DayHours.Read(text).Fault;
        Assert.NotNull(fault);
        Assert.Equal((offset, what), (fault.Offset, fault.What));
        Assert.NotEmpty(fault.Expected);
    }

    [Fact]
    public void Only_quiet_hours_go_on_past_midnight()
    {
        Assert.True(DayHours.ReadOverMidnight("20:00-08:00").Value.PassMidnight);
        Assert.False(DayHours.ReadOverMidnight("20:00-24:00").Value.PassMidnight);
        Assert.Throws<ArgumentException>(() => Shops.Hours("20:00-08:00"));
    }

    [Fact]
    public void Hours_without_length_cannot_be_made() =>
        Assert.Throws<ArgumentException>(() => DayHours.Between(new LocalTime(8, 0), new LocalTime(8, 0)));

    [Fact]
    public void The_default_is_the_whole_day() => Assert.Equal("00:00-24:00", default(DayHours).ToString());

    [Fact]
    public void Hours_that_touch_are_one()
    {
        var hours = Shops.Hours("12:00-17:00", "08:00-12:00", "19:00-21:00");
        Assert.Equal(["08:00-17:00", "19:00-21:00"], hours.Items.Select(item => item.ToString()));
    }

    [Theory]
    [InlineData("08:00-12:00", "11:59-13:00")]
    [InlineData("19:00-24:00", "20:00-21:00")]
    [InlineData("08:00-12:00", "08:00-12:00")]
    public void Hours_that_overlap_are_a_mistake(string one, string other)
    {
        Assert.Equal((Shops.Span(one), Shops.Span(other)), ShopHours.FirstOverlap([Shops.Span(other), Shops.Span(one)]));
        Assert.Throws<ArgumentException>(() => Shops.Hours(one, other));
    }
}
