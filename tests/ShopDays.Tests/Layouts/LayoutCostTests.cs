using ShopDays.Layouts;
using ShopDays.Layouts.Search;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

public sealed class LayoutCostTests
{
    private static readonly Lazy<IReadOnlyList<(LayoutRequest Request, Layout Layout)>> Jobs = new(() =>
    [
        .. RandomJobs.Some(60)
            .Select(job => Timber.Asked(job.Boards, job.Parts, Timber.ByHand) with { Seed = job.Seed })
            .Select(request => (request, LayoutSearch.LayOut(request))),
    ]);

    [Fact]
    public void The_parts_of_the_cost_add_up_as_they_are_printed() => Assert.All(Jobs.Value, job =>
    {
        var cost = job.Layout.Cost;
        Money[] parts = [cost.Timber, cost.Offcuts, cost.Sawing, cost.PlaningDown, cost.GlueEdges];
        Assert.All(parts, part => Assert.Equal(part.Amount, decimal.Round(part.Amount, 2, MidpointRounding.AwayFromZero)));
        Assert.Equal(cost.Timber.Amount - cost.Offcuts.Amount + cost.Work.Amount, cost.Total.Amount);
        Assert.Equal(cost.Sawing.Amount + cost.PlaningDown.Amount + cost.GlueEdges.Amount, cost.Work.Amount);
    });

    [Fact]
    public void No_cost_is_below_the_least_but_for_the_rounding_of_its_five_parts() =>
        Assert.All(Jobs.Value, job => Assert.True(job.Layout.Cost.Total.Amount >= job.Layout.Cost.Least.Amount - 0.025m));

    [Fact]
    public void The_cost_is_what_the_search_compared_by() => Assert.All(Jobs.Value.Where(job => job.Layout.Fits), job =>
    {
        var (_, arrangement) = LayoutSearch.Arrange(job.Request, [.. job.Request.Parts.Select(part => Demand.For(part, []))]);
        if (arrangement.Left.Count == 0)
        {
            // Five parts, each rounded by half a cent at most.
            Assert.Equal(arrangement.Score().Money, (double)job.Layout.Cost.Total.Amount, 0.025 + 1e-9);
        }
    });

    [Fact]
    public void Some_of_the_jobs_have_every_part_of_a_cost()
    {
        Assert.Contains(Jobs.Value, job => job.Layout.Cost.Offcuts.Amount > 0);
        Assert.Contains(Jobs.Value, job => job.Layout.Cost.PlaningDown.Amount > 0);
        Assert.Contains(Jobs.Value, job => job.Layout.Cost.GlueEdges.Amount > 0);
        Assert.Contains(Jobs.Value, job => job.Layout.Cost.AssumedBoardFoot is not null);
    }

    [Fact]
    public void A_board_sawn_across_once_costs_its_price_less_the_rest_and_one_cut()
    {
        // 40 x 10 in of a 100 in board at 50.00 leaves 60 x 10 in, six tenths of it: worth 0.3 + 0.4 x 0.6 of 30.00, 16.20.
        // One crosscut of 10 in: 2 min and 4 min a metre x 0.254 x the root of 1.36, at 48 an hour.
        var layout = Timber.LayOut([Timber.ABoard("A", 100, 10) with { Price = Dollars(50) }], [Timber.APart("shelf", 40, 10)]);
        Assert.Equal(Dollars(50), layout.Cost.Timber);
        Assert.Equal(Dollars(16.2m), layout.Cost.Offcuts);
        Assert.Equal(Dollars(2.55m), layout.Cost.Sawing);
        Assert.Equal(Dollars(0), layout.Cost.PlaningDown);
        Assert.Equal(Dollars(36.35m), layout.Cost.Total);
        Assert.Null(layout.Cost.AssumedBoardFoot);
        Assert.False(layout.Cost.HourIsAssumed);
    }

    [Fact]
    public void A_board_foot_without_a_price_is_reckoned_at_a_tenth_of_an_hour_and_said_to_be()
    {
        // 96 x 12 x 1 in are 8 board feet.
        var layout = Timber.LayOut([Timber.ABoard("A", 96, 12)], [Timber.APart("shelf", 96, 12)]);
        Assert.Equal(Dollars(4.8m), layout.Cost.AssumedBoardFoot);
        Assert.Equal(Dollars(38.4m), layout.Cost.Timber);
    }

    [Fact]
    public void Without_a_rate_an_hour_is_reckoned_at_ten_board_feet_and_said_to_be()
    {
        var cost = LayoutSearch.LayOut(WithoutRate(Timber.ABoard("A", 96, 12) with { Price = Dollars(40) })).Cost;
        Assert.True(cost.HourIsAssumed);
        Assert.Equal(Dollars(50), cost.Hour);
        Assert.True(cost.IsMoney);
        Assert.True(cost.Sawing.Amount > 0);
    }

    [Fact]
    public void Without_a_rate_and_a_price_there_is_no_money_to_reckon_in() =>
        Assert.False(LayoutSearch.LayOut(WithoutRate(Timber.ABoard("A", 96, 12))).Cost.IsMoney);

    [Fact]
    public void An_hour_that_is_worth_nothing_leaves_timber_its_worth()
    {
        var rates = Timber.Rates with { HourlyRate = Dollars(0) };
        var layout = LayoutSearch.LayOut(Timber.Asked([Timber.ABoard("A", 96, 12), Timber.ABoard("B", 48, 12)], [Timber.APart("shelf", 48, 12)]) with { Rates = rates });
        Assert.Equal("B", Assert.Single(layout.Boards).Board.Name);
        Assert.Equal(0, layout.Cost.Work.Amount);
        Assert.True(layout.Cost.Timber.Amount > 0);
    }

    [Fact]
    public void A_currency_without_cents_is_rounded_to_whole_units()
    {
        var yen = new Currency("JPY", 0);
        var layout = LayoutSearch.LayOut(
            Timber.Asked([Timber.ABoard("A", 100, 10) with { Price = new Money(7_000.5m, yen) }], [Timber.APart("shelf", 40, 10)]) with
            {
                Rates = Timber.Rates with { HourlyRate = new Money(6_000, yen) },
            });
        Assert.Equal(new Money(7_001, yen), layout.Cost.Timber);
        Assert.Equal(decimal.Truncate(layout.Cost.Total.Amount), layout.Cost.Total.Amount);
    }

    private static LayoutRequest WithoutRate(Board board) =>
        Timber.Asked([board], [Timber.APart("shelf", 40, 10)]) with { Rates = Timber.Rates with { HourlyRate = null } };

    private static Money Dollars(decimal amount) => new(amount, Timber.Dollars);
}
