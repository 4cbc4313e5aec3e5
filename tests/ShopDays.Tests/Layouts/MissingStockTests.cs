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
        boards.AddRange(Enumerable.Range(1, wanted.Count).Select(number => Timber.ABoard($"more {number}", 72, 9)));
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

        // 100 in and an inch at each end are 8 1/2 ft: a board of 9 ft, as thin and narrow as will do.
        var wanted = Assert.Single(layout.Wanted);
        Assert.Equal((108m, 5m, 1m, 1), (Timber.Inches(wanted.Length), Timber.Inches(wanted.Width), Timber.Inches(wanted.Thickness), wanted.Count));
    }

    [Fact]
    public void Other_timber_does_not_help()
    {
        var pine = Timber.ABoard("A", 96, 8) with { Species = Timber.Pine };
        Assert.IsType<UnplacedReason.NoSpecies>(Assert.Single(Timber.LayOut([pine], [Timber.APart("rail", 30, 4)]).Unplaced).Reason);
    }

    [Fact]
    public void More_stock_never_yields_fewer_parts_and_the_stock_wanted_is_what_is_lacking()
    {
        // A chest: three panels of 17 in and one of 21 in out of live-edged boards with a flaw in each.
        Part[] parts =
        [
            Panel("front", 42, 17, 1) with { Spare = 1 },
            Panel("back", 42, 17, 1),
            Panel("end", 20, 17, 2),
            Panel("lid", 44, 21, 1),
        ];
        var layouts = Enumerable.Range(5, 5).Select(count => (count, LayoutSearch.LayOut(Timber.Asked(Live(count), parts, Timber.ByHand) with { Effort = LayoutEffort.Normal }))).ToList();
        var left = layouts.ConvertAll(one => one.Item2.Unplaced.Sum(lacking => lacking.Number > lacking.Part.Count ? 0 : lacking.Part.Volume.CubicMillimetres));
        Assert.Equal(left.OrderDescending(), left);
        Assert.All(layouts.Where(one => !one.Item2.Fits), one => Assert.True(one.count + Assert.Single(one.Item2.Wanted).Count <= 8));
        Assert.All(layouts.Where(one => one.count >= 8), one => Assert.True(one.Item2.Fits));

        static Part Panel(string name, decimal length, decimal width, int count) => Timber.APart(name, length, width, 0.875m, count) with { IsPanel = true };

        static IReadOnlyList<Board> Live(int count) => Timber.Boards(count, name => Timber.ABoard(name, 96, 9.5m, 1.25m).Flawed(14, 19, 0, 3) with
        {
            Edges = BoardEdges.Live,
            Faces = BoardFaces.Rough,
            EndTrim = ShopDays.Measures.Length.FromInches(2m),
        });
    }

    [Fact]
    public void A_panel_in_narrow_strips_beside_the_rails_saves_a_board()
    {
        // Three boards hold two rails end to end each; what lies beside them gives six strips of the panel (worked out by hand).
        var kind = Timber.ABoard("A", 118, 8.625m, 1.0625m) with { Edges = BoardEdges.RoughSawn, Faces = BoardFaces.Rough };
        Part[] parts = [Timber.APart("rail", 43.875m, 5.4375m, 0.75m, 6), Timber.APart("top", 30.5625m, 12.875m, 0.75m) with { IsPanel = true }];
        var layout = LayoutSearch.LayOut(Timber.Asked([kind], parts, Timber.ByHand) with { Effort = LayoutEffort.Normal });
        Assert.Equal(2, Assert.Single(layout.Wanted).Count);
    }

    [Fact]
    public void Boards_wanted_like_flawed_ones_on_hand_are_to_be_clear_of_flaws()
    {
        var flawed = Timber.ABoard("A", 60, 8).Flawed(29, 31, 3, 5);
        Assert.True(Assert.Single(Timber.LayOut([flawed], [Timber.APart("rail", 60, 6)]).Wanted).ClearOfFlaws);
        Assert.False(Assert.Single(Timber.LayOut([Timber.ABoard("A", 60, 8)], [Timber.APart("rail", 60, 6, count: 2)]).Wanted).ClearOfFlaws);
    }
}
