using ShopDays.Layouts;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

public sealed class ForbiddenBoardTests
{
    private static readonly IReadOnlyList<Board> ThreeAlike = Timber.Boards(3, name => Timber.ABoard(name, 40, 6));

    [Fact]
    public void A_part_does_not_come_out_of_a_board_that_is_forbidden_for_it()
    {
        var layout = Timber.LayOut(ThreeAlike, [Timber.APart("top", 30, 6) with { NotFrom = ["A1", "A2"] }]);
        Assert.Equal(["A3"], layout.Boards.Select(board => board.Board.Name));
    }

    [Fact]
    public void A_line_that_is_forbidden_forbids_all_its_boards()
    {
        var layout = Timber.LayOut([.. ThreeAlike, Timber.ABoard("B", 80, 20)], [Timber.APart("top", 30, 6) with { NotFrom = ["A"] }]);
        Assert.Equal(["B"], layout.Boards.Select(board => board.Board.Name));
    }

    [Fact]
    public void Other_parts_still_come_from_it()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 30, 6), Timber.ABoard("B", 30, 6)], [Timber.APart("top", 30, 6) with { NotFrom = ["A"] }, Timber.APart("shelf", 30, 6)]);
        Assert.Equal([("A", "shelf"), ("B", "top")], layout.Boards.Select(board => (board.Board.Name, board.Blanks[0].Blank.Label)));
    }

    [Fact]
    public void Where_only_forbidden_boards_would_do_they_are_named()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 40, 6), Timber.ABoard("B", 20, 6)], [Timber.APart("top", 30, 6) with { NotFrom = ["A"] }]);
        Assert.Equal(["A"], Assert.IsType<UnplacedReason.OnlyForbidden>(Assert.Single(layout.Unplaced).Reason).Boards);
    }

    [Fact]
    public void Where_a_forbidden_board_would_not_do_either_the_true_reason_is_told()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 40, 6), Timber.ABoard("B", 20, 6)], [Timber.APart("top", 50, 6) with { NotFrom = ["A"] }]);
        Assert.IsType<UnplacedReason.TooShort>(Assert.Single(layout.Unplaced).Reason);
    }

    [Fact]
    public void Another_board_like_one_that_is_forbidden_may_be_wanted()
    {
        var layout = Timber.LayOut([ThreeAlike[0]], [Timber.APart("top", 30, 6) with { NotFrom = ["A1"] }]);
        Assert.Equal(1, Assert.Single(layout.Wanted).Count);
    }

    [Fact]
    public void A_blank_out_of_a_forbidden_board_is_a_fault()
    {
        var free = Timber.APart("top", 30, 6);
        var layout = Timber.LayOut(ThreeAlike, [free]);
        var taken = layout.Boards[0].Board.Name;
        var part = free with { NotFrom = [taken] };
        var forbidden = layout with
        {
            Boards = [.. layout.Boards.Select(board => board with { Blanks = [.. board.Blanks.Select(placed => placed with { Blank = placed.Blank with { Part = part } })] })],
        };
        Assert.Contains($"board {taken}: top must not come from {taken}", LayoutCheck.Faults(ThreeAlike, [part], Timber.Bare, forbidden));
    }
}
