using NodaTime;
using ShopDays.Cli.Paper;
using ShopDays.Cli.Paper.Overview;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Times;
using Xunit;

namespace ShopDays.Cli.Tests.Paper;

public sealed class CalendarTests
{
    [Fact]
    public void Waits_that_run_side_by_side_stand_in_lanes_of_their_own()
    {
        var bars = WaitLanes.Of([Wait(0, 30, "client's word"), Wait(10, 20, "glue sets"), Wait(25, 40, "varnish dries")]);

        Assert.Equal([("1", 0), ("2", 1), ("3", 1)], bars.Select(bar => (bar.Numbers, bar.Lane)));
    }

    [Fact]
    public void Waits_for_one_reason_side_by_side_are_one_bar()
    {
        var bars = WaitLanes.Of([Wait(0, 10, "glue sets"), Wait(2, 12, "glue sets"), Wait(4, 9, "glue sets"), Wait(40, 50, "glue sets")]);

        Assert.Equal([("1–3", 0, 12), ("4", 0, 50)], bars.Select(bar => (bar.Numbers, bar.Lane, (int)(bar.End.ToInstant() - Begin.ToInstant()).TotalHours)));
    }

    [Fact]
    public void A_bar_with_others_between_its_waits_names_its_first() =>
        Assert.Equal(["1+", "2"], WaitLanes.Of([Wait(0, 10, "glue sets"), Wait(2, 5, "varnish dries"), Wait(3, 11, "glue sets")]).Select(bar => bar.Numbers));

    [Theory]
    [InlineData(16, 41, "16 to 41 min")]
    [InlineData(55, 119, "55 to 119 min")]
    [InlineData(50, 140, "50 min to 2 h 20")]
    [InlineData(100, 185, "1 h 40 to 3 h 05")]
    public void A_range_is_written_short(double low, double high, string expected) => Assert.Equal(
        expected,
        Wording.Span(new TimeRange(WorkTime.FromMinutes(low), default, default, WorkTime.FromMinutes(high), default)));

    private static ZonedDateTime Begin => new LocalDateTime(2027, 4, 6, 8, 0).InZoneStrictly(DateTimeZoneProviders.Tzdb["America/New_York"]);

    private static PlannedWait Wait(int from, int to, string reason) => new("the job", null, Begin.PlusHours(from), Begin.PlusHours(to), reason);
}
