using CsCheck;
using ShopDays.Plans;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>One more order beside those in hand, in a shop open from 9 to 11 from Monday 1 March 2027 on.</summary>
public sealed class AnotherOrderTests
{
    private static readonly Gen<int[]> Job = Gen.Int[10, 100].Array[1, 6];

    [Fact]
    public void One_more_order_betters_no_chance_of_another_and_takes_only_room_that_dates_have() =>
        Gen.Select(Job, Job, Job, Gen.Int[2, 20].Array[2], Gen.Int[1, 1000]).Sample((one, two, three, due, seed) =>
        {
            OrderInHand[] inHand = [Order("one", one, seed, due[0]), Order("two", two, seed + 1, due[1]) with { Priority = 2 }];
            var (without, another) = Asked(inHand, Order("new", three, seed + 2, null));
            var behind = Assert.IsType<PlanAnswer.Planned>(another.Behind);
            Assert.Equal(without.Select(forecast => forecast.ChanceOfDue), behind.Forecasts.Take(2).Select(forecast => forecast.ChanceOfDue));
            if (another.Among is not { } among)
            {
                return;
            }

            Assert.True(among.Forecasts[2].P80!.Value.Date < behind.Forecasts[2].P80!.Value.Date);
            Assert.All(without.Zip(among.Forecasts), pair => Assert.True(pair.Second.ChanceOfDue <= pair.First.ChanceOfDue));
            Assert.True(Lacking(inHand, among.Forecasts) <= Lacking(inHand, without) + 1e-9);
        }, iter: 40);

    [Fact]
    public void Where_dates_have_room_it_is_worked_in_and_promised_sooner()
    {
        var (_, another) = Asked([Order("one", [100, 100, 100, 100], 1, 60)], Order("new", [60], 2, null));
        var among = Assert.IsType<PlanAnswer.Planned>(another.Among);
        Assert.Equal(AJob.Monday, among.Forecasts[1].P80!.Value.Date);
        Assert.Equal(1, among.Forecasts[0].ChanceOfDue);
    }

    [Fact]
    public void Where_they_have_none_there_is_one_date_for_it_behind_the_others()
    {
        var (_, another) = Asked([Order("one", [100, 100, 100, 100], 1, 3)], Order("new", [60], 2, null));
        Assert.Null(another.Among);
        Assert.Equal(AJob.Monday.PlusDays(4), Assert.IsType<PlanAnswer.Planned>(another.Behind).Forecasts[1].P80!.Value.Date);
    }

    [Fact]
    public void A_piece_that_has_the_shop_to_itself_is_worked_in_among_nothing() => Assert.Null(Asked([], Order("new", [60, 50], 2, null)).Another.Among);

    private static double Lacking(OrderInHand[] orders, IReadOnlyList<FinishForecast> forecasts) =>
        orders.Zip(forecasts).Sum(pair => pair.First.Priority * Math.Max(0, 0.8 - (pair.Second.ChanceOfDue ?? 1)));

    private static (IReadOnlyList<FinishForecast> Without, AnotherOrder Another) Asked(OrderInHand[] inHand, OrderInHand another)
    {
        var request = new AJob().Request() with { Budget = 200 };
        var without = inHand.Length == 0 ? [] : Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(request with { Orders = inHand })).Forecasts;
        return (without, AnotherOrder.Of(request with { Orders = [.. inHand, another with { GivesWay = true }] }, without));
    }

    /// <summary>Tasks one after another, and 20 courses in which each takes up to a tenth more or less.</summary>
    private static OrderInHand Order(string name, int[] minutes, int seed, int? due)
    {
        var made = new AJob { Due = due is { } days ? AJob.Monday.PlusDays(days) : null };
        foreach (var (at, length) in minutes.Index())
        {
            made.Task($"{name} {at}", length);
            if (at > 0)
            {
                made.Then($"{name} {at - 1}", $"{name} {at}");
            }
        }

        var draws = new Random(seed);
        return made.Order([.. Enumerable.Range(0, 20).Select(_ => minutes.Select(length => length * (0.9 + (0.2 * draws.NextDouble()))).ToArray())]) with { Name = name };
    }
}
