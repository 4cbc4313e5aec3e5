using NodaTime;
using ShopDays.Days;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "U.S. Naval Observatory, Astronomical Applications Department, one-year tables of sunrise and sunset (2020) and civil twilight (2020, 2023)")]
public sealed class AlmanacTests
{
    // The tables are rounded to the minute, which is half a minute of error; a minute leaves as much to the formulas.
    private static readonly Duration Tolerance = Duration.FromMinutes(1);

    // Where the sun nearly slides along the horizon, the places' coordinates (given to a minute of arc, 0.017 degree)
    // and the formulas' 0.01 degree alone are worth a minute and more: the first and last days of a polar night.
    private static readonly Duration GrazingTolerance = Duration.FromMinutes(2);
    private const double GrazingDegreesPerMinute = 0.01;

    public static TheoryData<string, DaylightLimit> Pages { get; } = new()
    {
        { "anchorage", DaylightLimit.SunriseSunset },
        { "auckland", DaylightLimit.SunriseSunset },
        { "brasilia", DaylightLimit.SunriseSunset },
        { "longyearbyen", DaylightLimit.SunriseSunset },
        { "mcmurdo", DaylightLimit.SunriseSunset },
        { "singapore", DaylightLimit.SunriseSunset },
        { "anchorage-civil", DaylightLimit.CivilTwilight },
        { "auckland-civil", DaylightLimit.CivilTwilight },
        { "brasilia-civil", DaylightLimit.CivilTwilight },
        { "longyearbyen-civil", DaylightLimit.CivilTwilight },
        { "mcmurdo-civil", DaylightLimit.CivilTwilight },
        { "singapore-civil", DaylightLimit.CivilTwilight },
    };

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_day_has_the_almanacs_light(string page, DaylightLimit limit)
    {
        var table = AlmanacTable.Read(page);
        Assert.True(table.Days.Count >= 365);
        var wrong = table.Days.SelectMany(day => Differences(day, table.Place, limit));
        Assert.Empty(wrong);
    }

    [Fact]
    public void Grazing_days_are_few()
    {
        var events = Pages.Select(page => (Table: AlmanacTable.Read(page.Data.Item1), Limit: page.Data.Item2))
            .SelectMany(page => page.Table.Days.SelectMany(day => day.Rises.Concat(day.Sets)).Select(at => (page.Table.Place, page.Limit, At: at)))
            .ToList();

        // Counted from the pages when this was written; a misread page would change them.
        Assert.Equal(6838, events.Count);
        Assert.Equal(20, events.Count(one => Grazes(one.At, one.Place, one.Limit)));
    }

    private static IEnumerable<string> Differences(AlmanacDay day, ShopPlace place, DaylightLimit limit)
    {
        var light = Daylight.On(day.Date, place, limit);
        if (day.AllLight || day.AllDark)
        {
            if (day.AllLight ? light is not LightAllDay : light is not DarkAllDay)
            {
                yield return $"{day} but {light}";
            }

            yield break;
        }

        if (light is not LightPartOfDay part || part.Rises.Length != day.Rises.Count || part.Sets.Length != day.Sets.Count)
        {
            yield return $"{day} but {light}";
            yield break;
        }

        foreach (var (ours, theirs) in part.Rises.Zip(day.Rises).Concat(part.Sets.Zip(day.Sets)))
        {
            var apart = ours < theirs ? theirs - ours : ours - theirs;
            if (apart > (Grazes(theirs, place, limit) ? GrazingTolerance : Tolerance))
            {
                yield return $"{theirs} but {ours}";
            }
        }
    }

    private static bool Grazes(Instant at, ShopPlace place, DaylightLimit limit)
    {
        var horizon = new Horizon(place, limit);
        var half = Duration.FromSeconds(30);
        return Math.Abs(horizon.Above(at + half) - horizon.Above(at - half)) < GrazingDegreesPerMinute;
    }
}
