using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Outside;

/// <summary>What cold, damp and warmth make of glue and coats, as the trade tells it.</summary>
[Trait("Source", "common practice, no source: glue takes about twice as long for each 10 degrees C colder and leaves about half the time for each 10 warmer; coats take twice as long at 12 degrees C, are not laid on below 10, take 1.5 to 2 times as long in damp air when they are oil or varnish, and 0.7 times when it is warm and dry; shellac and lacquer may bloom in damp")]
public sealed class ColdNightsTests
{
    [Theory]
    [InlineData(20, 1)]
    [InlineData(10, 2)]
    [InlineData(0, 4)]
    public void Glue_takes_twice_as_long_for_each_ten_degrees(double celsius, double factor) =>
        Assert.Equal(factor, Glue("PVA, yellow", celsius).FactorIn(1), 1e-9);

    [Theory]
    [InlineData(20, 10)]
    [InlineData(30, 5)]
    [InlineData(10, 10)]
    public void Glue_leaves_half_the_time_at_ten_degrees_more_and_no_longer_in_the_cold(double celsius, double minutes) =>
        Assert.Equal(minutes, Glue("PVA, yellow", celsius).AssemblyTimeIn(7).Minutes, 1e-9);

    [Fact]
    public void Coats_take_twice_as_long_at_twelve_degrees() => Assert.Equal(2, Coat("boiled linseed oil", 12).FactorIn(1), 1e-9);

    [Theory]
    [InlineData("boiled linseed oil", true)]
    [InlineData("alkyd varnish, brushed", true)]
    [InlineData("shellac, brushed", false)]
    public void Damp_air_makes_oil_and_varnish_slow(string finish, bool isSlow)
    {
        var factor = Coat(finish, 20, 80).FactorIn(1);
        Assert.Equal(isSlow, factor is >= 1.5 and <= 2);
        Assert.Equal(isSlow, factor > 1);
        Assert.Equal(1, Coat(finish, 20, 75).FactorIn(1), 1e-9);
    }

    [Fact]
    public void Warm_and_dry_air_saves_a_coat_a_third_of_its_time_and_warmth_alone_nothing()
    {
        Assert.Equal(0.7, Coat("boiled linseed oil", 26, 45).FactorIn(7), 1e-9);
        Assert.Equal(1, Coat("boiled linseed oil", 26).FactorIn(7), 1e-9);
    }

    [Theory]
    [InlineData("boiled linseed oil", 9.9, true)]
    [InlineData("boiled linseed oil", 10, false)]
    [InlineData("alkyd varnish, brushed", 12.9, true)]
    [InlineData("alkyd varnish, brushed", 13, false)]
    public void No_coat_is_laid_on_below_ten_degrees_or_what_its_tin_says(string finish, double celsius, bool isBarred) =>
        Assert.Equal(isBarred, Coat(finish, celsius).IsBarredIn(1));

    [Theory]
    [InlineData("shellac, brushed", true)]
    [InlineData("nitrocellulose lacquer", true)]
    [InlineData("alkyd varnish, brushed", false)]
    public void Shellac_and_lacquer_may_bloom_in_damp_air(string finish, bool blooms)
    {
        Assert.Equal(blooms, Coat(finish, 18, 85).MayBloom);
        Assert.False(Coat(finish, 18, 60).MayBloom);
    }

    [Fact]
    public void Casein_sets_where_other_glues_do_not()
    {
        Assert.False(Glue("casein", 5).IsBarredIn(1));
        Assert.Equal("casein", Glue("PVA, yellow", 5).Others[0].Name);
        Assert.True(Glue("PVA, yellow", 5).IsBarredIn(1));
    }

    [Fact]
    public void A_clamp_time_of_an_hour_is_two_at_ten_degrees()
    {
        var start = new LocalDateTime(2027, 3, 10, 16, 0).InUtc();
        Assert.Equal(start + Duration.FromHours(2), Glue("PVA, white", 10).EndFrom(start, Duration.FromHours(1)));
    }

    private static Setting Glue(string name, double celsius) =>
        Setting.Of(BuiltIn.Waits.TryFindAdhesive(name, out var glue) ? glue : BuiltIn.Waits.Adhesives.First(one => one.Name.StartsWith(name, StringComparison.Ordinal)), BuiltIn.Waits, Nights(celsius, null));

    private static Setting Coat(string name, double celsius, double? humidity = null) =>
        Setting.Of(BuiltIn.Waits.TryFindFinish(name, out var finish) ? finish : throw new ArgumentException(name), BuiltIn.Waits, Nights(celsius, humidity));

    private static ShopNights Nights(double celsius, double? humidity) =>
        new(Temperature.FromCelsius(celsius), new Dictionary<int, Temperature>(), humidity is { } percent ? Percent.FromPercent(percent) : null);
}
