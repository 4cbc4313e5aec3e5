using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

/// <summary>Stock wanted is stock that can be bought: sizes of a timber yard (common practice, no source).</summary>
public sealed class YardStockTests
{
    [Fact]
    public void Stock_bought_as_it_was_wanted_makes_it_fit()
    {
        var wasShort = 0;
        foreach (var job in RandomJobs.Some(60))
        {
            var layout = Timber.LayOut(job.Boards, job.Parts, Timber.ByHand, job.Seed);
            if (layout.Wanted.Count == 0)
            {
                Assert.All(layout.Unplaced, one => Assert.NotEqual(StockHelp.Helps, one.MoreStock));
                continue;
            }

            wasShort++;
            var bought = Timber.LayOut([.. job.Boards, .. Bought(layout)], job.Parts, Timber.ByHand, job.Seed);
            Assert.All(bought.Unplaced, one => Assert.NotEqual(StockHelp.Helps, one.MoreStock));
        }

        Assert.True(wasShort >= 10);
    }

    [Fact]
    public void All_stock_wanted_is_of_sizes_that_are_sold() => Assert.All(
        RandomJobs.Some(40).SelectMany(job => Timber.LayOut(job.Boards, job.Parts, Timber.ByHand, job.Seed).Wanted),
        wanted => Assert.Equal(
            (0, 0, true),
            (wanted.Length.EighthMicrometres % Length.FromFeet(1).EighthMicrometres, wanted.Width.EighthMicrometres % Length.FromInches(1m).EighthMicrometres, YardSizes.Feet.Thicknesses.Contains(wanted.Thickness))));

    [Fact]
    public void A_board_93_and_a_quarter_inches_long_is_bought_as_8_feet()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 93.25m, 5.5m, 1.125m)], [Timber.APart("rail", 90, 5, count: 2)]);
        Assert.Equal((96m, 6m, 1.25m, 1), Sizes(Assert.Single(layout.Wanted)));
    }

    [Fact]
    public void A_shop_that_works_in_millimetres_buys_in_millimetres()
    {
        var layout = LayoutSearch.LayOut(Timber.Asked([Timber.ABoard("A", 93.25m, 5.5m, 1.125m)], [Timber.APart("rail", 90, 5, count: 2)]) with { Yard = YardSizes.Metric });
        var wanted = Assert.Single(layout.Wanted);

        // 2369 x 140 x 29 mm.
        Assert.Equal((2400, 150, 32), (wanted.Length.Millimetres, wanted.Width.Millimetres, wanted.Thickness.Millimetres));
    }

    [Fact]
    public void Timber_that_is_not_on_hand_is_wanted_rough_and_in_the_smallest_size_that_does()
    {
        // 30 + 1 in and an inch at each end: 4 ft. 4 1/4 in and 1/8 at each edge: 5 in. 1 in and 1/8 for rough faces: 5/4.
        var layout = Timber.LayOut([Timber.ABoard("A", 96, 8) with { Species = Timber.Pine }], [Timber.APart("rail", 30, 4)], Timber.ByHand);
        var wanted = Assert.Single(layout.Wanted);
        Assert.Equal((48m, 5m, 1.25m, 1), Sizes(wanted));
        Assert.Equal((Timber.Oak, BoardEdges.RoughSawn, BoardFaces.Rough), (wanted.Species, wanted.Each.Edges, wanted.Each.Faces));
    }

    [Fact]
    public void Stock_that_is_too_thin_is_wanted_thicker()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 96, 8)], [Timber.APart("leg", 28, 2.5m, 2.25m, 4)]);
        Assert.Equal(2.5m, Timber.Inches(Assert.Single(layout.Wanted).Thickness));
        Assert.All(layout.Unplaced, one => Assert.IsType<UnplacedReason.TooThin>(one.Reason));
    }

    [Theory]
    [InlineData(200, 4, 1)]
    [InlineData(30, 15, 1)]
    [InlineData(30, 4, 4.25)]
    public void What_no_yard_sells_is_not_wanted(int length, int width, double thickness)
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 40, 8)], [Timber.APart("post", length, width, (decimal)thickness)]);
        Assert.Empty(layout.Wanted);
        Assert.Equal(StockHelp.NotSold, Assert.Single(layout.Unplaced).MoreStock);
    }

    [Fact]
    public void A_part_that_must_come_from_one_board_is_not_helped_by_more_stock()
    {
        var layout = Timber.LayOut(Timber.Boards(2, name => Timber.ABoard(name, 60, 8)), [Timber.APart("rail", 60, 6, count: 2) with { From = "A2" }]);
        Assert.Empty(layout.Wanted);
        Assert.Equal(StockHelp.PinnedToABoard, Assert.Single(layout.Unplaced).MoreStock);
    }

    [Fact]
    public void Of_two_parts_that_must_come_from_one_board_only_the_one_without_room_there_is_past_help()
    {
        // Two doors of 60 in on a board of 80: one has room there once the shelves lie on other boards, the other never.
        Part[] parts = [Timber.APart("door", 60, 8, count: 2) with { From = "A1" }, Timber.APart("shelf", 80, 8)];
        var layout = Timber.LayOut([Timber.ABoard("A1", 84, 8) with { Line = "A" }], parts);
        var doors = layout.Unplaced.Where(one => one.Part.Name == "door").ToList();
        Assert.Equal([StockHelp.Helps, StockHelp.PinnedToABoard], doors.Select(one => one.MoreStock).Order());
        Assert.Equal(1, Assert.Single(layout.Wanted).Count);
    }

    [Fact]
    public void More_stock_helps_others_out_of_a_board_that_a_part_must_come_from()
    {
        Part[] parts = [Timber.APart("door", 60, 8) with { From = "A2" }, Timber.APart("shelf", 60, 8, count: 2)];
        var layout = Timber.LayOut(Timber.Boards(2, name => Timber.ABoard(name, 60, 8)), parts);
        Assert.Equal(1, Assert.Single(layout.Wanted).Count);
        Assert.Equal(StockHelp.Helps, Assert.Single(layout.Unplaced).MoreStock);
    }

    [Fact]
    public void The_cheaper_kind_is_wanted_where_either_would_do()
    {
        // Two short boards at 10 are cheaper than one long one at 30.
        Board[] boards = [Priced(Timber.ABoard("A", 96, 8), 30), Priced(Timber.ABoard("B", 48, 8), 10)];
        var layout = Timber.LayOut(boards, [Timber.APart("shelf", 48, 8, count: 5)]);
        Assert.Equal((48m, 8m, 1m, 2), Sizes(Assert.Single(layout.Wanted)));
    }

    [Fact]
    public void A_long_board_for_the_long_part_and_a_cheap_one_for_the_short_parts()
    {
        Board[] boards = [Priced(Timber.ABoard("A", 120, 8), 60), Priced(Timber.ABoard("B", 48, 8), 10)];
        var layout = Timber.LayOut(boards, [Timber.APart("long shelf", 120, 8, count: 2), Timber.APart("shelf", 48, 8, count: 3)]);
        Assert.Equal([(48m, 8m, 1m, 2), (120m, 8m, 1m, 1)], layout.Wanted.Select(Sizes).Order());
    }

    private static Board Priced(Board board, decimal price) => board with { Price = new Money(price, Timber.Dollars), Line = board.Line };

    private static IEnumerable<Board> Bought(Layout layout) => layout.Wanted.SelectMany((wanted, kind) => Enumerable.Range(1, wanted.Count).Select(number =>
        wanted.Each with { Name = FormattableString.Invariant($"bought {kind}.{number}"), Line = wanted.Each.Line }));

    private static (decimal Length, decimal Width, decimal Thickness, int Count) Sizes(StockWanted wanted) =>
        (Timber.Inches(wanted.Length), Timber.Inches(wanted.Width), Timber.Inches(wanted.Thickness), wanted.Count);
}
