using CsCheck;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class SettingTests
{
    private static readonly Gen<double[]> Year = Gen.Double[-20, 35].Array[12];

    [Fact]
    public void Where_every_month_is_colder_nothing_sets_sooner() =>
        Gen.Select(Year, Gen.Double[0, 15], Gen.Int[0, 360], Gen.Int[1, 400], Gen.Bool).Sample((year, colder, day, hours, isGlue) =>
        {
            var start = new LocalDate(2027, 1, 1).PlusDays(day).AtMidnight().InUtc();
            var (warm, cold) = (Of(Nights(year), isGlue), Of(Nights([.. year.Select(degrees => degrees - colder)]), isGlue));
            Assert.True(warm.EndFrom(start, Duration.FromHours(hours)).ToInstant() <= cold.EndFrom(start, Duration.FromHours(hours)).ToInstant());
            Assert.Empty(warm.BarredMonths.Except(cold.BarredMonths));
        }, iter: 500);

    [Fact]
    public void Nothing_takes_less_than_its_time_where_it_is_not_warm_and_dry() =>
        Gen.Select(Year, Gen.Int[0, 360], Gen.Int[1, 400], Gen.Bool).Sample((year, day, hours, isGlue) =>
        {
            var start = new LocalDate(2027, 1, 1).PlusDays(day).AtMidnight().InUtc();
            Assert.True(Of(Nights(year), isGlue).EndFrom(start, Duration.FromHours(hours)) - start >= Duration.FromHours(hours));
        }, iter: 500);

    [Fact]
    public void A_warm_room_makes_nothing_slower_and_bars_nothing_that_the_shop_does_not() =>
        Gen.Select(Year, Gen.Double[5, 30], Gen.Int[0, 360], Gen.Bool).Sample((year, room, day, isGlue) =>
        {
            var start = new LocalDate(2027, 1, 1).PlusDays(day).AtMidnight().InUtc();
            var nights = Nights(year) with { Humidity = Percent.FromPercent(80) };
            var (without, with) = (Of(nights, isGlue), Of(nights with { WarmRoom = Temperature.FromCelsius(room) }, isGlue));
            Assert.True(with.EndFrom(start, Duration.FromHours(30)).ToInstant() <= without.EndFrom(start, Duration.FromHours(30)).ToInstant());
            Assert.Empty(with.BarredMonths.Except(without.BarredMonths));
        }, iter: 500);

    [Fact]
    public void The_part_of_a_wait_that_falls_into_a_warmer_month_is_as_quick_as_that_month()
    {
        var setting = Of(Nights([10, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20]), isGlue: true);
        var start = new LocalDateTime(2027, 1, 31, 18, 0).InUtc();
        // Six hours of January do three, the other five are February's.
        Assert.Equal(start + Duration.FromHours(6 + 5), setting.EndFrom(start, Duration.FromHours(8)));
    }

    [Fact]
    public void In_a_heated_shop_a_job_has_no_nights_in_its_waits_and_remarks()
    {
        var graph = AJob.Chest().Graph();
        Assert.All(graph.Tasks, task => Assert.Null(task.Sets));
        Assert.All(graph.Precedences.Select(one => one.Wait).OfType<Wait>(), wait => Assert.Null(wait.Sets));
        Assert.DoesNotContain(AJob.Chest().Remarks(), one => one.Kind == RemarkKind.Nights);
    }

    [Fact]
    public void Every_glue_up_panel_and_coat_sets_in_the_nights_and_no_other_task_does()
    {
        var graph = AJob.Chest().Graph(AJob.Shop with { Nights = Nights([.. Enumerable.Repeat(15.0, 12)]) });
        string[] setting = ["glue-up", "edge-glue panel", "finish coat, wiped", "finish coat, brushed"];
        Assert.Equal(
            graph.Tasks.Where(task => task.Timing is TaskTiming.ByOperation by && setting.Contains(by.Operation.Name)).Select(task => task.Name),
            graph.Tasks.Where(task => task.Sets is not null).Select(task => task.Name));
        Assert.Contains(graph.Tasks, task => task.Sets?.IsGlue == true && task.Stage == Stage.Dimensioning);
        Assert.Contains(graph.ClosingWaits, one => one.Wait.Sets is { IsGlue: false });
    }

    [Fact]
    public void Remarks_name_the_thing_the_months_the_temperatures_and_what_would_help()
    {
        var nights = new ShopNights(Temperature.FromCelsius(19), new Dictionary<int, Temperature> { [1] = Temperature.FromCelsius(6), [12] = Temperature.FromCelsius(6) });
        var said = Assert.Single(AJob.Chest().Remarks(AJob.Shop with { Nights = nights }), one => one.Kind == RemarkKind.Nights && one.Text.Contains("too cold for hide glue, liquid", StringComparison.Ordinal));
        Assert.Contains("carcass", said.Text, StringComparison.Ordinal);
        Assert.Contains("December to January", said.Text, StringComparison.Ordinal);
        Assert.Contains("needs 18 °C", said.Text, StringComparison.Ordinal);
        Assert.Contains("6 °C at the coldest", said.Text, StringComparison.Ordinal);
        Assert.Equal("a warm room with 18 °C or more for the nights, or 'casein', which sets at 6 °C too, or work that comes to it in February", said.Cure);
    }

    [Fact]
    public void Where_the_warm_room_is_warm_enough_the_task_says_when_it_is_used()
    {
        var nights = new ShopNights(Temperature.FromCelsius(19), new Dictionary<int, Temperature> { [1] = Temperature.FromCelsius(6) }, WarmRoom: Temperature.FromCelsius(18));
        var graph = AJob.Chest().Graph(AJob.Shop with { Nights = nights });
        Assert.All(graph.Of("glue-up"), task => Assert.StartsWith("overnight in the warm room (January); ", task.Note, StringComparison.Ordinal));
        Assert.DoesNotContain(graph.Tasks, task => task.Sets is null && task.Note.Contains("warm room", StringComparison.Ordinal));
    }

    private static ShopNights Nights(double[] year) =>
        new(Temperature.FromCelsius(20), year.Index().ToDictionary(one => one.Index + 1, one => Temperature.FromCelsius(one.Item)));

    [Fact]
    public void What_is_offered_instead_sets_itself_in_the_cold_that_it_is_offered_for() =>
        Assert.All(Enumerable.Range(-25, 45).Select(degrees => Temperature.FromCelsius(degrees)), lies =>
        {
            var nights = new ShopNights(lies, new Dictionary<int, Temperature>());
            IEnumerable<Setting> all = [.. BuiltIn.Waits.Adhesives.Select(one => Setting.Of(one, BuiltIn.Waits, nights)), .. BuiltIn.Waits.Finishes.Select(one => Setting.Of(one, BuiltIn.Waits, nights))];
            Assert.All(all.Where(one => one.Least > lies), setting =>
            {
                var cure = NightRemarks.Cure(setting, lies);
                var named = all.Where(other => cure.Contains($"'{other.Name}'", StringComparison.Ordinal)).ToList();
                Assert.All(named, other => Assert.Empty(other.BarredMonths));
                Assert.Equal(setting.Others.Any(other => other.Least <= lies), named.Count > 0);
                Assert.StartsWith($"a warm room with {setting.Least} or more", cure, StringComparison.Ordinal);
            });
        });

    private static Setting Of(ShopNights nights, bool isGlue) => isGlue
        ? Setting.Of(BuiltIn.Waits.Adhesives[1], BuiltIn.Waits, nights)
        : Setting.Of(BuiltIn.Waits.Finishes[1], BuiltIn.Waits, nights);
}
