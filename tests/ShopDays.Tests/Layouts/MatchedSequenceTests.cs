using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

public sealed class MatchedSequenceTests
{
    private static readonly Allowances Sawn = Timber.Bare with { Kerf = Length.FromInches(0.0625m) };

    [Fact]
    public void Drawer_fronts_run_on_along_a_board_in_the_order_of_their_numbers()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 70, 6), Timber.ABoard("B", 90, 6)], [Front("drawer front", 20, 6, count: 3), Timber.APart("rail", 60, 6)], Sawn);
        var fronts = Placed(layout, "drawer front");
        Assert.Empty(layout.NotHonoured);
        Assert.Equal([0m, 20.0625m, 40.125m], fronts.Select(front => Timber.Inches(front.X)));
    }

    [Fact]
    public void The_order_is_the_one_written_whatever_the_lengths()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 61, 6)], [Front("left", 12, 6), Front("middle", 30, 6), Front("right", 18, 6)], Sawn);
        Assert.Empty(layout.NotHonoured);
        Assert.Equal([0m, 12.0625m, 42.125m], ((string[])["left", "middle", "right"]).Select(name => Timber.Inches(Assert.Single(Placed(layout, name)).X)));
    }

    [Fact]
    public void Where_they_cannot_run_along_the_board_they_lie_side_by_side_in_their_order()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 31, 19)], [Front("door", 30, 6, count: 3)], Sawn);
        Assert.Empty(layout.NotHonoured);

        // The first may lie at either edge.
        List<decimal> across = [.. Placed(layout, "door").Select(door => Timber.Inches(door.Y))];
        List<decimal> inOrder = [0m, 6.0625m, 12.125m];
        Assert.Equal(across[0] == 0 ? inOrder : [.. inOrder.OrderDescending()], across);
    }

    [Fact]
    public void A_board_that_holds_them_in_sequence_goes_before_a_cheaper_one_that_does_not()
    {
        var square = Timber.ABoard("A", 20, 10) with { Price = new Money(10, Timber.Dollars) };
        var @long = Timber.ABoard("B", 50, 5) with { Price = new Money(60, Timber.Dollars) };
        var layout = Timber.LayOut([square, @long], [Front("front", 10, 5, count: 4)]);
        Assert.Empty(layout.NotHonoured);
        Assert.Equal("B", Assert.Single(layout.Boards).Board.Name);
    }

    [Fact]
    public void In_one_board_without_sequence_is_better_than_spread_and_is_told()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 20, 10), Timber.ABoard("B", 20, 5)], [Front("front", 10, 5, count: 4)]);
        Assert.Equal([new UnmetWish.NotInSequence("fronts")], layout.NotHonoured);
        Assert.Equal("A", Assert.Single(layout.Boards).Board.Name);
    }

    [Fact]
    public void Strips_of_a_matched_panel_lie_side_by_side_in_their_order()
    {
        var layout = Timber.LayOut([Timber.ABoard("A", 31, 7), Timber.ABoard("B", 61, 7)], [Front("lid", 30, 12) with { IsPanel = true }], Sawn);
        Assert.Empty(layout.NotHonoured);
        Assert.Equal("B", Assert.Single(layout.Boards).Board.Name);
    }

    [Fact]
    public void A_sequence_that_is_claimed_and_not_there_is_a_fault()
    {
        Board[] boards = [Timber.ABoard("A", 20, 10)];
        Part[] parts = [Front("front", 10, 5, count: 4)];
        var layout = Timber.LayOut(boards, parts) with { NotHonoured = [] };
        Assert.Equal(["the matched parts 'fronts' are not as the layout says"], LayoutCheck.Faults(boards, parts, Timber.Bare, layout));
    }

    private static Part Front(string name, decimal length, decimal width, int count = 1) =>
        Timber.APart(name, length, width, count: count) with { Matched = "fronts" };

    private static IEnumerable<Region> Placed(Layout layout, string part) => layout.Boards
        .SelectMany(board => board.Blanks)
        .Where(placed => placed.Blank.Part.Name == part)
        .OrderBy(placed => placed.Blank.Numbers[0])
        .Select(placed => placed.Region);
}
