using ShopDays.Layouts;
using ShopDays.Layouts.Search;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

public sealed class LayoutBoundTests
{
    private static readonly double PerMinute = (double)Timber.Rates.HourlyRate!.Amount / 60;

    [Fact]
    public void Of_blanks_wider_than_half_a_board_each_needs_a_board_of_its_own()
    {
        // By area two boards would hold three blanks of six tenths of a board.
        var layout = Timber.LayOut(Timber.Boards(5, name => Timber.ABoard(name, 48, 10)), [Timber.APart("panel", 48, 6, count: 3)]);
        Assert.Equal(0.6, layout.Yield, 1e-9);

        // The bound is a hair above, so that rounding cannot put it below.
        Assert.Equal(0.6, layout.BestPossibleYield, 1e-8);
    }

    [Fact]
    public void Of_blanks_longer_than_half_a_stick_each_needs_one()
    {
        var layout = Timber.LayOut(
            Timber.Boards(6, name => Timber.ABoard(name, 60, 3)), [Timber.APart("leg", 31, 3, count: 2), Timber.APart("rail", 32, 3, count: 2)]);
        Assert.Equal(4, layout.Boards.Count);
        Assert.Equal(layout.Yield, layout.BestPossibleYield, 1e-8);
    }

    [Fact]
    public void Boards_that_differ_are_weighed_against_each_other()
    {
        // A wide board holds two side by side (12 of 13 in); a narrow one holds one (6 of 10): five of them take two wide
        // boards and a narrow one at least, 48 x (13 + 13 + 10).
        Board[] boards =
        [
            .. Timber.Boards(2, name => Timber.ABoard("wide " + name, 48, 13)),
            .. Timber.Boards(5, name => Timber.ABoard(name, 48, 10)),
        ];
        var layout = Timber.LayOut(boards, [Timber.APart("panel", 48, 6, count: 5)]);
        Assert.Equal(30.0 / 36, layout.Yield, 1e-9);
        Assert.Equal(30.0 / 36, layout.BestPossibleYield, 1e-8);
    }

    [Fact]
    public void A_board_used_up_by_two_blanks_costs_its_value_and_one_crosscut_at_least()
    {
        // Nothing is left over, the edges are straight: one crosscut of 4 in is all there is to saw.
        var layout = Laid([Timber.ABoard("A", 60, 4) with { Price = new Money(20, Timber.Dollars) }], [Timber.APart("rail", 30, 4, count: 2)], out var bound);
        var crosscut = Timber.Rates.Crosscut.TimeFor(Length.FromInches(4m), Length.FromInches(1m), Timber.Oak).Minutes * PerMinute;
        Assert.Equal(20 + crosscut, bound.LeastMoney(PerMinute), 1e-6);
        Assert.Equal((double)layout.Cost.Total.Amount, bound.LeastMoney(PerMinute), 0.01);
        Assert.True(layout.Cost.IsLeast);
    }

    [Fact]
    public void Live_edges_must_be_straightened_whatever_is_cut()
    {
        // Two straightening cuts of 60 in free the one blank, and nothing is left over.
        var layout = Laid(
            [Timber.ABoard("A", 60, 5.5m) with { Price = new Money(20, Timber.Dollars), Edges = BoardEdges.Live }],
            [Timber.APart("rail", 60, 4)],
            out var bound,
            Timber.Bare with { LiveEdge = Length.FromInches(0.75m) });
        var straightening = Timber.Rates.Straighten.TimeFor(Length.FromInches(60m), Length.FromInches(1m), Timber.Oak).Minutes * PerMinute;
        Assert.Equal(20 + (2 * straightening), bound.LeastMoney(PerMinute), 1e-6);

        // Half a cent: the cost is in whole cents.
        Assert.Equal((double)layout.Cost.Total.Amount, bound.LeastMoney(PerMinute), 0.005);
    }

    [Fact]
    public void No_layout_is_above_the_bound_in_yield_or_below_it_in_money()
    {
        var tight = 0;
        foreach (var (boards, parts, seed) in RandomJobs.Some(250))
        {
            // Any arrangement is a layout of its blanks; the first one that comes is as good a test as the best.
            var layout = FirstThatComes(boards, parts, seed, out var bound);
            Assert.InRange(layout.BestPossibleYield, layout.Yield, 1);
            var least = bound.LeastMoney(PerMinute);
            Assert.InRange(least, 0, (double)layout.Cost.Total.Amount + 0.03);
            tight += layout.HasBestYield ? 1 : 0;
        }

        // Else the bound would be true but say nothing.
        Assert.InRange(tight, 80, 250);
    }

    [Fact]
    public void No_layout_that_an_exhaustive_search_finds_is_above_the_bound()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var chance = new Random(seed);
            List<Board> boards = [.. Enumerable.Range(0, 3).Select(index => Timber.ABoard($"B{index}", chance.Next(6, 14), chance.Next(4, 9)))];
            List<Part> parts = [.. Enumerable.Range(0, 5).Select(index => Timber.APart($"part {index}", chance.Next(2, 7), chance.Next(1, 5)))];
            var layout = Timber.LayOut(boards, parts);
            List<Blank> blanks = [.. layout.Boards.SelectMany(board => board.Blanks).Select(placed => placed.Blank)];
            var least = EveryWay.LeastArea([.. boards.Select(board => (Inches(board.Length), Inches(board.Width)))], [.. blanks.Select(blank => (Inches(blank.Length), Inches(blank.Width)))]);
            var area = blanks.Sum(blank => Inches(blank.Length) * Inches(blank.Width));

            // A layout found is no better than what exists, and the bound allows for all that exists.
            Assert.True(layout.Yield <= ((double)area / least) + 1e-9);
            Assert.True(layout.BestPossibleYield >= (double)area / least);
        }

        static int Inches(Length length) => (int)Timber.Inches(length);
    }

    private static Layout Laid(IReadOnlyList<Board> boards, IReadOnlyList<Part> parts, out LayoutBound bound, Allowances? allowances = null)
    {
        var request = Timber.Asked(boards, parts, allowances);
        var layout = LayoutSearch.LayOut(request);
        bound = new LayoutBound(ProblemOf(request), request.Allowances, layout.Boards);
        return layout;
    }

    private static Layout FirstThatComes(IReadOnlyList<Board> boards, IReadOnlyList<Part> parts, int seed, out LayoutBound bound)
    {
        var request = Timber.Asked(boards, parts, Timber.ByHand);
        var problem = ProblemOf(request);
        var arrangement = new Arrangement(problem);
        var chance = new Random(seed);
        new BlankPlacer(problem, arrangement, PlacingRules.Draw(chance), chance).PlaceLeft();
        var layout = new LayoutWriter(problem, arrangement, request).Write([]);
        bound = new LayoutBound(problem, request.Allowances, layout.Boards);
        return layout;
    }

    private static LayoutProblem ProblemOf(LayoutRequest request) => new(request, [.. request.Parts.Select(part => Demand.For(part, []))], PanelStrips.Usual());
}
