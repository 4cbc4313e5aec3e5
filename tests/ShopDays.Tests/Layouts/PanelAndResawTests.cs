using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

public sealed class PanelAndResawTests
{
    private static readonly Allowances Usual = Timber.ByHand;

    [Fact]
    public void A_panel_is_one_piece_when_a_board_is_wide_enough()
    {
        Board[] boards = [.. Timber.Boards(4, name => Timber.ABoard(name, 50, 9)), Timber.ABoard("wide", 50, 20)];
        var layout = Timber.LayOut(boards, [Timber.APart("lid", 40, 18) with { IsPanel = true }]);
        Assert.Equal(0, Assert.Single(Assert.Single(layout.Boards).Blanks).Blank.Strips);
    }

    [Fact]
    public void A_panel_wider_than_every_board_is_strips_with_their_allowances()
    {
        var layout = Timber.LayOut(Timber.Boards(3, name => Timber.ABoard(name, 50, 9.5m)), [Timber.APart("lid", 40, 16) with { IsPanel = true }], Usual);
        Assert.True(layout.Fits);
        var blanks = layout.Boards.SelectMany(board => board.Blanks).ToList();
        Assert.Equal([1, 2], blanks.Select(placed => placed.Blank.Strip).Order());
        Assert.Equal(16m + 0.25m, blanks.Sum(placed => Timber.Inches(placed.Region.Width) - 0.125m));
    }

    [Fact]
    public void More_strips_than_the_fewest_are_taken_when_only_they_fit()
    {
        // Two strips of 8 in would leave the second no board; 8 and twice 4 in come out of one wide and two narrow boards.
        Board[] boards = [Timber.ABoard("A", 40, 8), Timber.ABoard("B", 40, 4), Timber.ABoard("C", 40, 4)];
        var layout = Timber.LayOut(boards, [Timber.APart("top", 40, 16) with { IsPanel = true }]);
        Assert.True(layout.Fits);
        Assert.Equal(3, layout.Boards.Sum(board => board.Blanks.Count));
    }

    [Fact]
    public void A_second_panel_is_glued_up_when_the_wide_board_is_gone()
    {
        Board[] boards = [Timber.ABoard("wide", 40, 16), Timber.ABoard("A", 40, 8), Timber.ABoard("B", 40, 8)];
        var layout = Timber.LayOut(boards, [Timber.APart("end", 40, 16, count: 2) with { IsPanel = true }]);
        Assert.True(layout.Fits);
        Assert.Equal([0, 1, 2], layout.Boards.SelectMany(board => board.Blanks).Select(placed => placed.Blank.Strip).Order());
    }

    [Fact]
    public void A_panel_that_lacks_a_strip_gives_its_other_strips_back()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 40, 8)], [Timber.APart("top", 40, 16) with { IsPanel = true }, Timber.APart("rail", 20, 4)]);
        Assert.Equal("top", Assert.Single(layout.Unplaced).Part.Name);
        Assert.Equal("rail", Assert.Single(Assert.Single(layout.Boards).Blanks).Blank.Part.Name);
    }

    [Fact]
    public void A_part_that_is_no_panel_is_never_split()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 40, 8)], [Timber.APart("seat", 30, 12)]);
        var reason = Assert.IsType<UnplacedReason.TooNarrow>(Assert.Single(layout.Unplaced).Reason);
        Assert.Equal((12m, 8m), (Timber.Inches(reason.Needed), Timber.Inches(reason.Widest)));
        Assert.Equal(12m, Timber.Inches(Assert.Single(layout.Wanted).Width));
    }

    [Fact]
    public void Thin_parts_are_resawn_when_the_stock_would_not_do_otherwise()
    {
        // 1 1/4 in rough: 1/8 to flatten, two parts of 3/8, 1/16 kerf, 1/8 for the new faces: 1 1/16 in.
        var board = Timber.ABoard("A", 31, 4.25m, 1.25m) with { Faces = BoardFaces.Rough };
        var layout = Timber.LayOut([board], [Timber.APart("side", 30, 4, 0.375m, 2)], Usual);
        Assert.True(layout.Fits);
        var blank = Assert.Single(layout.Boards[0].Blanks).Blank;
        Assert.Equal([1, 2], blank.Numbers);
        var resaw = layout.Boards[0].Cuts[^1];
        Assert.Equal(CutKind.Resaw, resaw.Kind);
        Assert.Equal("side 1, side 2", resaw.Frees);

        // The kerf lies in the middle.
        Assert.Equal((1.25m - 0.0625m) / 2, Timber.Inches(resaw.At));
    }

    [Fact]
    public void A_board_a_hair_too_thin_is_not_resawn()
    {
        var just = Timber.ABoard("A", 31, 4.25m, 1.0625m) with { Faces = BoardFaces.Rough };
        Assert.True(Timber.LayOut([just], [Timber.APart("side", 30, 4, 0.375m, 2)], Usual).Fits);
        var thin = just with { Thickness = just.Thickness - Length.FromEighthMicrometres(1) };
        Assert.Single(Timber.LayOut([thin], [Timber.APart("side", 30, 4, 0.375m, 2)], Usual).Unplaced);
    }

    [Theory]
    [InlineData(1, 2)]
    [InlineData(300, 1)]
    public void Resawing_pays_when_the_timber_is_dear(int price, int boards)
    {
        var stock = Timber.Boards(2, name => Timber.ABoard(name, 31, 4.25m, 1.25m) with { Faces = BoardFaces.Rough, Price = new Money(price, Timber.Dollars) });

        // Planing down is made all but free, so that resawing time stands against the price alone.
        var rates = Timber.Rates with { PlaneDown = new PlaneRate(WorkTime.FromMinutes(1), 0.8, 0.5) };
        var layout = LayoutSearch.LayOut(Timber.Asked(stock, [Timber.APart("side", 30, 4, 0.375m, 2)], Usual) with { Rates = rates });
        Assert.Equal(boards, layout.Boards.Count);
    }

    [Fact]
    public void A_resawn_blank_counts_once_in_the_yield_and_in_the_best_possible()
    {
        // One blank of 31 x 4 1/4 in fills the only board; both figures are the whole of it.
        var board = Timber.ABoard("A", 31, 4.25m, 1.25m) with { Faces = BoardFaces.Rough };
        var other = board with { Name = "B", Line = "B" };
        var layout = Timber.LayOut([board with { Price = new Money(300, Timber.Dollars) }, other with { Thickness = Length.FromInches(0.25m) }], [Timber.APart("side", 30, 4, 0.375m, 2)], Usual);
        Assert.True(Assert.Single(Assert.Single(layout.Boards).Blanks).Blank.IsResawn);

        // Sums of doubles, and the bound's hundredth of a percent.
        Assert.Equal(1, layout.Yield, 1e-9);
        Assert.Equal(layout.Yield, layout.BestPossibleYield, 1e-3);
    }
}
