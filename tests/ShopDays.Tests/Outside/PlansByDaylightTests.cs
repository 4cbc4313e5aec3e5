using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Tests.Days;
using ShopDays.Tests.Plans;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "U.S. Naval Observatory, Astronomical Applications Department, one-year tables of sunrise and sunset and of civil twilight (2020)")]
public sealed class PlansByDaylightTests
{
    // The tables are rounded to the minute, which is half a minute of error; a minute leaves as much to the formulas. On the first
    // and last days of a polar night, when the sun slides along the horizon, two.
    private static readonly Duration Tolerance = Duration.FromMinutes(1);
    private static readonly Duration GrazingTolerance = Duration.FromMinutes(2);

    [Theory]
    [InlineData("anchorage", DaylightLimit.SunriseSunset, false)]
    [InlineData("auckland", DaylightLimit.SunriseSunset, false)]
    [InlineData("brasilia", DaylightLimit.SunriseSunset, false)]
    [InlineData("singapore", DaylightLimit.SunriseSunset, false)]
    [InlineData("longyearbyen", DaylightLimit.SunriseSunset, true)]
    [InlineData("anchorage-civil", DaylightLimit.CivilTwilight, false)]
    [InlineData("singapore-civil", DaylightLimit.CivilTwilight, false)]
    public void Work_begins_after_sunrise_and_ends_before_sunset_of_the_almanac(string page, DaylightLimit limit, bool isPolar)
    {
        var table = AlmanacTable.Read(page);
        var job = Winter(table, limit);
        var plan = job.Plan();
        var tolerance = isPolar ? GrazingTolerance : Tolerance;
        var light = LightOf(table);
        var work = plan.Sessions.SelectMany(session => session.Work).ToList();
        Assert.True(work.Select(one => one.Start.Date).Distinct().Count() >= 14, "the plan is to run for weeks");
        Assert.All(work, one => Assert.Contains(light, stretch => stretch.Start - tolerance <= one.Start.ToInstant() && one.End.ToInstant() <= stretch.End + tolerance));
    }

    [Fact]
    public void Nothing_is_planned_in_a_polar_night()
    {
        var table = AlmanacTable.Read("longyearbyen");
        var back = table.Days.First(day => day.Rises.Count > 0).Rises[0];
        var first = Winter(table, DaylightLimit.SunriseSunset).Plan().Sessions[0];
        Assert.True(first.Work[0].Start.ToInstant() >= back - GrazingTolerance);
    }

    /// <summary>Work for weeks from 1 January on, some of it in one go, in a shop whose hours are all day long but for the light.</summary>
    private static AJob Winter(AlmanacTable table, DaylightLimit limit)
    {
        var job = new AJob { Zone = DateTimeZone.Utc, Start = table.Days[0].Date }
            .Worker("09:00-17:00")
            .With(calendar => calendar with
            {
                Place = table.Place,
                Week = Shops.EveryDay("00:00-24:00"),
                Daylight = new(limit, Duration.Zero),
                Overhead = Overhead.None,
            });
        foreach (var number in Enumerable.Range(1, 40))
        {
            job.Task(FormattableString.Invariant($"plane {number}"), 330, task => task with { IsSplittable = true, LeastUseful = WorkTime.FromMinutes(15) });
            job.Task(FormattableString.Invariant($"glue {number}"), 45);
        }

        return job;
    }

    /// <summary>From each rise to the next set; a sun that is up when the year begins has risen before.</summary>
    private static List<Interval> LightOf(AlmanacTable table)
    {
        var events = table.Days.SelectMany(day => day.Rises.Select(at => (At: at, IsRise: true)).Concat(day.Sets.Select(at => (At: at, IsRise: false)))).OrderBy(one => one.At).ToList();
        var light = new List<Interval>();
        var up = table.Days[0].Date.AtMidnight().InUtc().ToInstant();
        foreach (var (at, isRise) in events)
        {
            if (isRise)
            {
                up = at;
            }
            else
            {
                light.Add(new(up, at));
            }
        }

        return light;
    }
}
