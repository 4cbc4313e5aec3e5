using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Tests.Work;
using ShopDays.Times;
using Xunit;

namespace ShopDays.Tests.Times;

public sealed class NightWaitsTests
{
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Europe/London"];
    private static readonly Job Chest = AJob.Chest() with { GlueUps = [.. AJob.Chest().GlueUps.Select(one => one with { Adhesive = "PVA, yellow" })] };

    [Fact]
    public void A_heated_shop_has_the_waits_of_the_tables_alone() => Assert.Null(In(null, 3).InNights);

    [Fact]
    public void In_nights_as_warm_as_the_tables_the_waits_are_as_long_as_in_the_tables()
    {
        var estimate = In(Of(20), 3);
        Assert.Equal((3, false), (estimate.InNights!.Month, estimate.InNights.AreLater));
        Assert.Equal(estimate.Waits, estimate.InNights.Waits);
    }

    [Fact]
    public void In_colder_nights_what_sets_takes_longer_and_rests_do_not()
    {
        var (mild, cold) = (In(Of(20), 3), In(Of(12), 3));
        Assert.Equal(mild.Waits, cold.Waits);

        // Twice as long at 12 degrees C for coats, less for glue, no longer for rests.
        Assert.InRange(cold.InNights!.Waits / mild.InNights!.Waits, 1.05, 2);
    }

    [Fact]
    public void What_the_month_of_the_start_bars_is_told_as_from_the_first_month_that_does_not()
    {
        var estimate = In(Of(20, (3, 2), (4, 4)), 3);
        Assert.True(estimate.InNights!.AreLater);
        Assert.Equal(estimate.Waits, estimate.InNights.Waits);
    }

    private static ShopNights Of(double usual, params (int Month, double Degrees)[] months) =>
        new(Temperature.FromCelsius(usual), months.ToDictionary(one => one.Month, one => Temperature.FromCelsius(one.Degrees)));

    private static JobEstimate In(ShopNights? nights, int month)
    {
        var graph = Chest.Graph(AJob.Shop with { Nights = nights });
        return JobEstimate.Of(graph, new([[.. graph.Tasks.Select(_ => 10.0)]], 1), Zone.AtStartOfDay(new(2027, month, 1)));
    }
}
