using ShopDays.Layouts;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

public sealed class BestFaceTests
{
    private static readonly Board Plain = Timber.ABoard("A", 30, 6) with { Figure = BoardFigure.Plain };
    private static readonly Board Best = Timber.ABoard("B", 90, 12) with { Figure = BoardFigure.Best };

    [Fact]
    public void A_show_part_comes_out_of_the_best_figure_though_another_board_is_cheaper()
    {
        var layout = Timber.LayOut([Plain, Best], [Timber.APart("top", 30, 6) with { IsForBestFace = true }]);
        var board = Assert.Single(layout.Boards);
        Assert.Equal("B", board.Board.Name);
        Assert.True(board.IsBestFaceUp);
        Assert.Empty(layout.NotHonoured);
    }

    [Fact]
    public void A_part_that_does_not_ask_for_it_takes_the_cheaper_board()
    {
        var board = Assert.Single(Timber.LayOut([Plain, Best], [Timber.APart("top", 30, 6)]).Boards);
        Assert.Equal("A", board.Board.Name);
        Assert.False(board.IsBestFaceUp);
    }

    [Fact]
    public void A_better_board_that_could_not_give_it_does_not_count()
    {
        var narrow = Timber.ABoard("B", 90, 5) with { Figure = BoardFigure.Best };
        var layout = Timber.LayOut([Plain, narrow], [Timber.APart("top", 30, 6) with { IsForBestFace = true }]);
        Assert.Equal("A", Assert.Single(layout.Boards).Board.Name);
        Assert.Empty(layout.NotHonoured);
    }

    [Fact]
    public void What_finds_no_room_in_the_best_board_takes_the_next_best_and_is_told()
    {
        var good = Timber.ABoard("C", 30, 6);
        var small = Timber.ABoard("B", 30, 6) with { Figure = BoardFigure.Best };
        var layout = Timber.LayOut([Plain, good, small], [Timber.APart("top", 30, 6, count: 2) with { IsForBestFace = true }]);
        Assert.True(layout.Fits);
        Assert.Equal(["C", "B"], layout.Boards.Select(board => board.Board.Name));
        var wish = Assert.IsType<UnmetWish.NotBestFace>(Assert.Single(layout.NotHonoured));
        Assert.Equal("top", wish.Name);
        Assert.Equal(layout.Boards[0].Blanks[0].Blank.Numbers, wish.Numbers);
    }

    [Fact]
    public void A_best_face_that_is_claimed_and_not_given_is_a_fault()
    {
        var part = Timber.APart("top", 30, 6);
        var shown = part with { IsForBestFace = true };
        var layout = Timber.LayOut([Plain, Best], [part]);
        var claimed = layout with
        {
            Boards = [.. layout.Boards.Select(board => board with { Blanks = [.. board.Blanks.Select(placed => placed with { Blank = placed.Blank with { Part = shown } })] })],
        };
        Assert.Equal(["top is for the best face, and board B could give a better one than A"], LayoutCheck.Faults([Plain, Best], [shown], Timber.Bare, claimed));
    }
}
