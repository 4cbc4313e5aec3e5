using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Days;

public sealed class UnusedSpanTests
{
    private static readonly LocalDate NewYear = new(2027, 1, 1);
    private static readonly LocalDate YearEnd = new(2027, 12, 31);

    [Fact]
    public void Evenings_without_light_are_told_as_one_span_of_winter()
    {
        var spans = UnusedSpan.Of(Evenings(new(DaylightLimit.SunriseSunset, Duration.Zero), ClosedDates.None), new(2027, 7, 1), new(2028, 6, 30));
        var span = Assert.Single(spans);
        Assert.Equal((UnusedReason.NoDaylight, "19:00-21:00"), (span.Reason, span.Hours.ToString()));
        Assert.Equal([IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday], span.Days);

        // At 53.4 N the sun sets before seven from late September to late March: before summer time begins on the 26th.
        Assert.InRange(span.First, new LocalDate(2027, 9, 20), new LocalDate(2027, 10, 10));
        Assert.InRange(span.Last, new LocalDate(2028, 3, 15), new LocalDate(2028, 3, 26));
    }

    [Fact]
    public void Hours_too_short_for_the_least_work_are_told_for_the_whole_time_and_closed_dates_are_not()
    {
        var calendar = Evenings(DaylightRule.Lamps, new(new DateInterval(new(2027, 8, 1), new(2027, 8, 15)))) with { LeastUseful = WorkTime.FromHours(3) };
        var span = Assert.Single(UnusedSpan.Of(calendar, NewYear, YearEnd));
        Assert.Equal((UnusedReason.TooShort, new LocalDate(2027, 1, 5), new LocalDate(2027, 12, 30), 100), (span.Reason, span.First, span.Last, span.Dates));
    }

    [Fact]
    public void Hours_that_can_be_used_are_not_told() =>
        Assert.Empty(UnusedSpan.Of(Evenings(DaylightRule.Lamps, ClosedDates.None), NewYear, YearEnd));

    private static WorkingCalendar Evenings(DaylightRule light, ClosedDates closed)
    {
        var evening = new ShopHours([DayHours.Read("19:00-21:00").Value]);
        return new()
        {
            Worker = "maker",
            Place = new(53.4, -1.5, DateTimeZoneProviders.Tzdb["Europe/London"]),
            Week = new(new Dictionary<IsoDayOfWeek, ShopHours> { [IsoDayOfWeek.Tuesday] = evening, [IsoDayOfWeek.Thursday] = evening }),
            Daylight = light,
            Closed = closed,
            LeastUseful = WorkTime.FromMinutes(1),
        };
    }
}
