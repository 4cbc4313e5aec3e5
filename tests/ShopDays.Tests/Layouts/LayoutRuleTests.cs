using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

public sealed class LayoutRuleTests
{
    private static readonly Allowances Usual = Timber.ByHand;

    [Fact]
    public void A_part_that_is_the_whole_board_needs_no_cut()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 40, 6)], [Timber.APart("shelf", 40, 6)]);
        var board = Assert.Single(layout.Boards);
        Assert.Empty(board.Cuts);
        Assert.Empty(board.Offcuts);
        Assert.Equal(1, layout.Yield);
    }

    [Fact]
    public void A_blank_is_the_part_with_its_allowances()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 60, 9, 1.25m)], [Timber.APart("rail", 30, 3)], Usual);
        var placed = Assert.Single(layout.Boards[0].Blanks);
        Assert.Equal(31m, Timber.Inches(placed.Region.Length));
        Assert.Equal(3.25m, Timber.Inches(placed.Region.Width));
        Assert.Equal("rail", placed.Blank.Label);
    }

    [Fact]
    public void Spares_are_numbered_on()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 60, 9)], [Timber.APart("leg", 20, 2, count: 2) with { Spare = 1 }]);
        Assert.Equal(["leg 1", "leg 2", "leg 3"], layout.Boards[0].Blanks.Select(placed => placed.Blank.Label).Order());
    }

    [Fact]
    public void Spares_are_the_first_to_be_left_out()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 40, 4)], [Timber.APart("small", 15, 4), Timber.APart("large", 20, 4) with { Spare = 1 }]);
        var left = Assert.Single(layout.Unplaced);
        Assert.Equal(("large", 2), (left.Part.Name, left.Number));
    }

    [Fact]
    public void A_remainder_thinner_than_the_kerf_is_sawn_away()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 20.03125m, 4)], [Timber.APart("rail", 20, 4)], Timber.Bare with { Kerf = Usual.Kerf });
        var board = Assert.Single(layout.Boards);
        Assert.Equal(CutKind.Crosscut, Assert.Single(board.Cuts).Kind);
        Assert.Empty(board.Offcuts);
    }

    [Fact]
    public void Ends_are_trimmed_where_a_blank_reaches_them()
    {
        var board = Timber.ABoard("A", 44, 4) with { EndTrim = Length.FromInches(2m) };
        var layout = Timber.LayOut([board], [Timber.APart("rail", 40, 4)]);
        Assert.Equal([CutKind.Crosscut, CutKind.Crosscut], layout.Boards[0].Cuts.Select(cut => cut.Kind));
        Assert.Equal(2m, Timber.Inches(layout.Boards[0].Blanks[0].Region.X));
        Assert.False(Timber.LayOut([board], [Timber.APart("rail", 41, 4)]).Fits);
    }

    [Fact]
    public void Both_live_edges_are_straightened_and_lost()
    {
        var board = Timber.ABoard("A", 40, 9.5m, 1.25m) with { Edges = BoardEdges.Live };
        var layout = Timber.LayOut([board], [Timber.APart("shelf", 39, 7.75m)], Usual);
        var cut = Assert.Single(layout.Boards);
        Assert.Equal([CutKind.Straighten, CutKind.Straighten], cut.Cuts.Select(one => one.Kind));
        Assert.Equal(0.75m, Timber.Inches(cut.Blanks[0].Region.Y));
        Assert.IsType<UnplacedReason.TooNarrow>(Timber.LayOut([board], [Timber.APart("shelf", 39, 8)], Usual).Unplaced[0].Reason);
    }

    [Fact]
    public void The_second_rough_sawn_edge_falls_off_with_the_last_rip()
    {
        var board = Timber.ABoard("A", 40, 4.25m, 1.25m) with { Edges = BoardEdges.RoughSawn };
        var layout = Timber.LayOut([board], [Timber.APart("rail", 39, 3.75m)], Usual);
        Assert.Equal([CutKind.Straighten, CutKind.Rip], layout.Boards[0].Cuts.Select(cut => cut.Kind));
    }

    [Fact]
    public void A_slab_is_crosscut_to_rough_length_before_it_is_straightened()
    {
        var slab = Timber.ABoard("A", 100, 12, 1.25m) with { Edges = BoardEdges.Live };
        var layout = Timber.LayOut([slab], [Timber.APart("rail", 30, 4.5m, count: 2)], Usual);
        Assert.Equal(
            [CutKind.Crosscut, CutKind.Straighten, CutKind.Straighten, CutKind.Rip, CutKind.Rip],
            layout.Boards[0].Cuts.Select(cut => cut.Kind));
        Assert.Equal(4 * 31m, Timber.Inches(layout.RipLength));
    }

    [Fact]
    public void Blanks_touch_the_edge_of_a_flaw_but_not_the_flaw()
    {
        var board = Timber.ABoard("A", 45, 4).Flawed(20, 25, 0, 4);
        var layout = Timber.LayOut([board], [Timber.APart("rail", 20, 4, count: 2)]);
        Assert.Equal([0m, 25m], layout.Boards[0].Blanks.Select(placed => Timber.Inches(placed.Region.X)).Order());
    }

    [Fact]
    public void A_part_without_a_clear_place_between_flaws_says_so()
    {
        var board = Timber.ABoard("A", 60, 6).Flawed(20, 25, 2, 4).Flawed(40, 41, 0, 6);
        Assert.IsType<UnplacedReason.NoClearPlace>(Timber.LayOut([board], [Timber.APart("rail", 30, 4)]).Unplaced[0].Reason);
    }

    [Fact]
    public void The_thinnest_stock_that_does_is_taken()
    {
        Board[] boards = [Timber.ABoard("thick", 40, 6, 2), Timber.ABoard("thin", 40, 6, 1), Timber.ABoard("middle", 40, 6, 1.5m)];
        Assert.Equal("thin", Timber.LayOut(boards, [Timber.APart("shelf", 30, 6, 0.875m)]).Boards[0].Board.Name);
        Assert.Equal("middle", Timber.LayOut(boards, [Timber.APart("shelf", 30, 6, 1.125m)]).Boards[0].Board.Name);
    }

    [Fact]
    public void Rough_faces_and_cup_count_in_the_thickness_and_equality_is_enough()
    {
        var board = Timber.ABoard("A", 40, 6, 1.25m) with { Faces = BoardFaces.Rough };
        Assert.True(Timber.LayOut([board], [Timber.APart("shelf", 30, 5, 1.125m)], Usual).Fits);
        var cupped = board with { Line = "A", Cup = Length.FromInches(0.0625m) };
        var reason = Assert.IsType<UnplacedReason.TooThin>(Timber.LayOut([cupped], [Timber.APart("shelf", 30, 5, 1.125m)], Usual).Unplaced[0].Reason);
        Assert.Equal((1.3125m, 1.25m), (Timber.Inches(reason.Needed), Timber.Inches(reason.Best)));
    }

    [Fact]
    public void A_dearer_board_is_left_when_a_cheaper_one_does()
    {
        Board[] boards =
        [
            Timber.ABoard("dear", 40, 6) with { Price = new Money(90, Timber.Dollars) },
            Timber.ABoard("cheap", 40, 6) with { Price = new Money(30, Timber.Dollars) },
        ];
        Assert.Equal("cheap", Assert.Single(Timber.LayOut(boards, [Timber.APart("shelf", 40, 6)]).Boards).Board.Name);
    }

    [Fact]
    public void A_useful_offcut_stays_in_one_piece()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 96, 8)], [Timber.APart("rail", 24, 2, count: 4)]);
        var left = Assert.Single(layout.Boards[0].Offcuts).Region;
        Assert.Equal((96m * 8) - (4 * 24 * 2), Timber.Inches(left.Length) * Timber.Inches(left.Width));
    }

    [Fact]
    public void An_offcut_is_useful_when_its_clear_part_is_large_enough()
    {
        Part[] parts = [Timber.APart("rail", 20, 4)];
        var clear = Timber.LayOut([Timber.ABoard("A", 40, 4).Flawed(30, 31, 0, 2)], parts);
        Assert.True(Assert.Single(clear.Boards[0].Offcuts).IsUseful);
        var spoiled = Timber.LayOut([Timber.ABoard("A", 40, 4).Flawed(25, 28, 0, 4).Flawed(33, 36, 0, 4)], parts);
        Assert.False(Assert.Single(spoiled.Boards[0].Offcuts).IsUseful);
    }

    [Fact]
    public void The_best_possible_yield_counts_whole_boards()
    {
        // Three rails fill one board and a half, so two boards are cut whatever is done.
        var layout = Timber.LayOut(Timber.Boards(4, name => Timber.ABoard(name, 60, 4)), [Timber.APart("rail", 30, 4, count: 3)]);
        Assert.Equal(0.75, layout.Yield, 1e-9);

        // The bound is found by halving down to a billionth.
        Assert.Equal(0.75, layout.BestPossibleYield, 1e-8);
    }

    [Fact]
    public void The_best_possible_yield_knows_that_thick_parts_need_thick_boards()
    {
        Board[] boards = [Timber.ABoard("thick", 60, 4, 2), Timber.ABoard("thin", 30, 4, 1)];
        var layout = Timber.LayOut(boards, [Timber.APart("leg", 30, 4, 1.75m)]);
        Assert.Equal(0.5, layout.BestPossibleYield, 1e-8);
    }

    [Fact]
    public void A_cut_says_what_it_frees()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 60, 4)], [Timber.APart("rail", 20, 4)]);
        Assert.Equal("rail, offcut", Assert.Single(layout.Boards[0].Cuts).Frees);
    }

    [Fact]
    public void A_pinned_part_comes_from_its_stock_line_or_its_board()
    {
        IReadOnlyList<Board> boards = [.. Timber.Boards(2, name => Timber.ABoard(name, 60, 8)), Timber.ABoard("B", 30, 4)];
        Assert.Equal("A", Timber.LayOut(boards, [Timber.APart("rail", 30, 4) with { From = "A" }]).Boards[0].Board.Line);
        Assert.Equal("A2", Timber.LayOut(boards, [Timber.APart("rail", 30, 4) with { From = "A2" }]).Boards[0].Board.Name);
        Assert.IsType<UnplacedReason.NoSuchStock>(Timber.LayOut(boards, [Timber.APart("rail", 30, 4) with { From = "C" }]).Unplaced[0].Reason);
    }

    [Fact]
    public void Matched_parts_come_from_one_board_next_to_each_other()
    {
        Board[] boards = [Timber.ABoard("A", 30, 8), Timber.ABoard("B", 30, 5), Timber.ABoard("C", 30, 4)];
        Part[] parts = [Timber.APart("left door", 30, 4) with { Matched = "doors" }, Timber.APart("right door", 30, 4) with { Matched = "doors" }, Timber.APart("rail", 30, 4)];
        var layout = Timber.LayOut(boards, parts);
        Assert.True(layout.Fits);
        Assert.Empty(layout.NotHonoured);
        Assert.Equal(["left door", "right door"], layout.Boards.Single(board => board.Board.Name == "A").Blanks.Select(placed => placed.Blank.Part.Name).Order());
    }

    [Fact]
    public void Matched_parts_that_no_board_holds_together_are_placed_apart_and_named()
    {
        Board[] boards = [Timber.ABoard("A", 30, 4), Timber.ABoard("B", 30, 4)];
        var layout = Timber.LayOut(boards, [Timber.APart("door", 30, 4, count: 2) with { Matched = "doors" }]);
        Assert.True(layout.Fits);
        Assert.Equal([new UnmetWish.NotInOneBoard("doors")], layout.NotHonoured);
    }

    [Fact]
    public void A_job_without_boards_or_parts_is_answered()
    {
        Assert.IsType<UnplacedReason.NoSpecies>(Assert.Single(Timber.LayOut([], [Timber.APart("rail", 30, 4)]).Unplaced).Reason);
        var nothing = Timber.LayOut([Timber.ABoard("A", 30, 4)], []);
        Assert.True(nothing.Fits);
        Assert.Empty(nothing.Boards);
        Assert.Equal(0, nothing.BestPossibleYield);
    }
}
