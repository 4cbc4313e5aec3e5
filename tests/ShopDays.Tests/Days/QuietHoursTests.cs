using NodaTime;
using ShopDays.Days;
using Xunit;

namespace ShopDays.Tests.Days;

public sealed class QuietHoursTests
{
    [Fact]
    public void Quiet_hours_over_midnight_reach_into_both_days()
    {
        var calendar = Shops.Calendar(Shops.NewYork, "06:00-09:30", "18:00-22:00") with { Quiet = new(Shops.Span("20:00-08:00")) };
        var day = calendar.On(Shops.Date("2027-05-06"));
        Assert.Equal(["06:00-08:00", "20:00-22:00"], day.Sessions.SelectMany(session => session.Quiet.Items).Select(Clock));
        Assert.Equal(["08:00-09:30", "18:00-20:00"], day.Sessions.SelectMany(session => session.NoisyWork.Items).Select(Clock));
    }

    [Fact]
    public void Quiet_hours_that_overlap_are_counted_once()
    {
        var calendar = Shops.Calendar(Shops.NewYork, "08:00-18:00") with { Quiet = new(Shops.Span("12:00-14:00"), Shops.Span("13:00-15:00"), Shops.Span("15:00-16:00")) };
        Assert.Equal(["12:00-16:00"], calendar.On(Shops.Date("2027-05-06")).Sessions[0].Quiet.Items.Select(Clock));
    }

    [Fact]
    public void Noise_is_allowed_in_the_work_and_not_while_opening_up()
    {
        var calendar = Shops.Calendar(Shops.NewYork, "08:00-12:00") with { Overhead = Shops.TenAndFifteen };
        Assert.Equal(["08:10-11:45"], calendar.On(Shops.Date("2027-05-06")).Sessions[0].NoisyWork.Items.Select(Clock));
    }

    [Fact]
    public void Stretches_are_equal_when_their_times_are()
    {
        var start = Instant.FromUtc(2027, 5, 6, 8, 0);
        var (one, two, three) = (start, start + Duration.FromHours(1), start + Duration.FromHours(2));
        var joined = new Stretches(new Interval(two, three), new Interval(one, two), new Interval(one, one));
        Assert.Equal(new Stretches(new Interval(one, three)), joined);
        Assert.Equal(new Stretches(new Interval(one, three)).GetHashCode(), joined.GetHashCode());
        Assert.NotEqual(Stretches.None, joined);
        Assert.Equal(Duration.FromHours(2), joined.Total);
    }

    private static string Clock(Interval span) =>
        FormattableString.Invariant($"{span.Start.InZone(Shops.NewYork.Zone):HH:mm}-{span.End.InZone(Shops.NewYork.Zone):HH:mm}");
}
