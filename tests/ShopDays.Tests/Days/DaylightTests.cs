using NodaTime;
using ShopDays.Days;
using Xunit;

namespace ShopDays.Tests.Days;

public sealed class DaylightTests
{
    private static readonly Duration Quarter = Duration.FromMinutes(15);

    [Fact]
    public void Polar_night_and_polar_day_are_answers()
    {
        Assert.IsType<DarkAllDay>(Daylight.On(Shops.Date("2027-12-21"), Shops.Longyearbyen, DaylightLimit.SunriseSunset));
        Assert.IsType<LightAllDay>(Daylight.On(Shops.Date("2027-06-21"), Shops.Longyearbyen, DaylightLimit.SunriseSunset));
    }

    [Fact]
    public void At_the_pole_the_sun_rises_once_a_year()
    {
        var pole = Shops.At(90, 0, "UTC");
        var year = Enumerable.Range(0, 365).Select(day => Daylight.On(Shops.Date("2027-01-01").PlusDays(day), pole, DaylightLimit.SunriseSunset)).ToList();
        var parts = year.OfType<LightPartOfDay>().ToList();
        Assert.Equal(1, parts.Sum(part => part.Rises.Length));
        Assert.Equal(1, parts.Sum(part => part.Sets.Length));
    }

    [Fact]
    public void The_light_belongs_to_the_date_of_the_shops_clock()
    {
        // Auckland's morning is the evening before in universal time.
        var date = Shops.Date("2027-01-15");
        var auckland = Shops.At(-36.85, 174.76, "Pacific/Auckland");
        var part = Assert.IsType<LightPartOfDay>(Daylight.On(date, auckland, DaylightLimit.SunriseSunset));
        var light = Assert.Single(part.Light.Items);
        Assert.Equal(date, light.Start.InZone(auckland.Zone).Date);
        Assert.Equal(date, light.End.InZone(auckland.Zone).Date);
        Assert.Equal(date.PlusDays(-1), light.Start.InUtc().Date);
    }

    [Fact]
    public void A_date_can_have_light_at_both_its_ends_only()
    {
        // Midsummer nights in Anchorage by a clock ten hours off: the sun sets, and comes up again, in the middle of the date.
        var part = Assert.IsType<LightPartOfDay>(Daylight.On(Shops.Date("2027-06-21"), Shops.At(61.2, -149.9, "UTC"), DaylightLimit.SunriseSunset));
        Assert.Equal(2, part.Light.Items.Length);
        Assert.True(part.Sets[0] < part.Rises[0]);
    }

    [Fact]
    public void A_sun_that_peeps_out_for_minutes_is_found()
    {
        // From the polar circle's edge northwards at midwinter, a thousandth of a degree (a hundred metres) at a time. Four degrees east,
        // noon falls between the half hours, so that no look at the even half hour happens to meet the light.
        var days = Enumerable.Range(0, 300).Select(step => Daylight.On(Shops.Date("2027-12-21"), Shops.At(67.3 + (step * 0.001), 4, "UTC"), DaylightLimit.SunriseSunset)).ToList();
        var parts = days.OfType<LightPartOfDay>().ToList();
        Assert.All(parts, part => Assert.Equal((1, 1), (part.Rises.Length, part.Sets.Length)));
        Assert.Contains(parts, part => part.Light.Total < Duration.FromMinutes(10));

        // The nearer the pole, the shorter the day, until the first without any.
        Assert.Equal(parts.OrderByDescending(part => part.Light.Total), parts);
        Assert.All(days.Skip(parts.Count), day => Assert.IsType<DarkAllDay>(day));
        Assert.True(parts.Count < days.Count);
    }

    [Fact]
    public void A_span_in_full_light_is_left_as_it_is()
    {
        var span = new Interval(Instant.FromUtc(2027, 6, 1, 15, 0, 20), Instant.FromUtc(2027, 6, 1, 16, 0, 40));
        Assert.Equal(new Stretches(span), Daylight.In(span, Shops.NewYork, new(DaylightLimit.SunriseSunset, Quarter)));
    }

    [Fact]
    public void Twilight_is_longer_than_sunshine_and_a_margin_is_lost_at_both_ends()
    {
        var day = new Interval(Instant.FromUtc(2027, 3, 1, 5, 0), Instant.FromUtc(2027, 3, 2, 5, 0));
        var sun = Assert.Single(Daylight.In(day, Shops.NewYork, new(DaylightLimit.SunriseSunset, Duration.Zero)).Items);
        var twilight = Assert.Single(Daylight.In(day, Shops.NewYork, new(DaylightLimit.CivilTwilight, Duration.Zero)).Items);
        var less = Assert.Single(Daylight.In(day, Shops.NewYork, new(DaylightLimit.SunriseSunset, Quarter)).Items);
        Assert.True(twilight.Start < sun.Start && sun.End < twilight.End);
        Assert.Equal(new Interval(sun.Start + Quarter, sun.End - Quarter), less);
    }

    [Fact]
    public void A_margin_counts_from_a_sunrise_before_the_hours_too()
    {
        var rises = Assert.IsType<LightPartOfDay>(Daylight.On(Shops.Date("2027-03-01"), Shops.NewYork, DaylightLimit.SunriseSunset)).Rises[0];
        var span = new Interval(rises + Duration.FromMinutes(5), rises + Duration.FromHours(2));
        var light = Assert.Single(Daylight.In(span, Shops.NewYork, new(DaylightLimit.SunriseSunset, Quarter)).Items);

        // Cut to the next whole minute.
        Assert.InRange(light.Start - rises, Quarter, Quarter + Duration.FromMinutes(1));
    }

    [Fact]
    public void A_margin_longer_than_the_light_leaves_none()
    {
        var day = new Interval(Instant.FromUtc(2027, 3, 1, 5, 0), Instant.FromUtc(2027, 3, 2, 5, 0));
        Assert.True(Daylight.In(day, Shops.NewYork, new(DaylightLimit.SunriseSunset, Duration.FromHours(6))).IsEmpty);
        Assert.Throws<ArgumentOutOfRangeException>(() => new DaylightRule(DaylightLimit.SunriseSunset, -Quarter));
    }

    [Fact]
    public void Lamps_make_every_hour_light() =>
        Assert.IsType<LightAllDay>(Daylight.On(Shops.Date("2027-12-21"), Shops.Longyearbyen, DaylightLimit.None));

    [Theory]
    [InlineData(-74.0, "America/New_York", true)]
    [InlineData(74.0, "America/New_York", false)]
    [InlineData(-157.4, "Pacific/Kiritimati", true)]
    [InlineData(76.0, "Asia/Shanghai", true)]
    public void A_forgotten_minus_sign_is_seen_by_the_clock(double longitude, string zone, bool suits) =>
        Assert.Equal(suits, Shops.At(10, longitude, zone).ClockSuitsLongitude(Instant.FromUtc(2027, 6, 1, 0, 0)));

    [Theory]
    [InlineData(90.5, 0)]
    [InlineData(0, -180.5)]
    [InlineData(double.NaN, 0)]
    public void A_place_is_on_the_earth(double latitude, double longitude) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Shops.At(latitude, longitude, "UTC"));
}
