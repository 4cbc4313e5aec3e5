using ShopDays.Layouts;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

public sealed class MissingStockTests
{
    [Fact]
    public void What_is_left_over_is_named_with_the_boards_that_would_do()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 60, 8)], [Timber.APart("rail", 60, 4, count: 7)]);
        Assert.Equal(5, layout.Unplaced.Count);
        Assert.All(layout.Unplaced, one => Assert.IsType<UnplacedReason.NoRoom>(one.Reason));
        var wanted = Assert.Single(layout.Wanted);
        Assert.Equal((60m, 8m, 1m, 3), (Timber.Inches(wanted.Length), Timber.Inches(wanted.Width), Timber.Inches(wanted.Thickness), wanted.Count));
    }

    [Fact]
    public void The_wanted_boards_added_to_the_stock_make_it_fit()
    {
        List<Board> boards = [Timber.ABoard("A", 70, 9).Flawed(30, 33, 0, 2)];
        Part[] parts = [Timber.APart("rail", 33, 4, count: 6), Timber.APart("top", 50, 20) with { IsPanel = true }];
        var layout = Timber.LayOut(boards, parts);
        Assert.False(layout.Fits);
        var wanted = Assert.Single(layout.Wanted);
        boards.AddRange(Enumerable.Range(1, wanted.Count).Select(number => Timber.ABoard($"more {number}", 70, 9)));
        Assert.True(Timber.LayOut(boards, parts).Fits);
    }

    [Fact]
    public void A_flaw_in_the_only_board_does_not_keep_its_kind_from_being_wanted()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 60, 8).Flawed(29, 31, 3, 5)], [Timber.APart("rail", 60, 6)]);
        Assert.IsType<UnplacedReason.NoClearPlace>(Assert.Single(layout.Unplaced).Reason);
        Assert.Equal(1, Assert.Single(layout.Wanted).Count);
    }

    [Fact]
    public void A_part_longer_than_every_board_says_what_is_needed_and_what_there_is()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 96, 8, 1.25m) with { EndTrim = ShopDays.Measures.Length.FromInches(1m) }], [Timber.APart("bed", 99, 4)], Timber.ByHand);
        var reason = Assert.IsType<UnplacedReason.TooShort>(Assert.Single(layout.Unplaced).Reason);
        Assert.Equal((100m, 94m), (Timber.Inches(reason.Needed), Timber.Inches(reason.Longest)));
        Assert.Empty(layout.Wanted);
    }

    [Fact]
    public void Other_timber_does_not_help()
    {
        var pine = Timber.ABoard("A", 96, 8) with { Species = Timber.Pine };
        Assert.IsType<UnplacedReason.NoSpecies>(Assert.Single(Timber.LayOut([pine], [Timber.APart("rail", 30, 4)]).Unplaced).Reason);
    }
}
