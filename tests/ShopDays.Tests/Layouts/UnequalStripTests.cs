using CsCheck;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

/// <summary>Panels out of strips as wide as the boards give. Worked by hand without allowances and kerf, so that widths just add up.</summary>
public sealed class UnequalStripTests
{
    [Fact]
    public void Strips_of_three_widths_fit_where_equal_ones_do_not()
    {
        // 9 + 9 + 2 1/2 in hold 20 in; three strips of 6 2/3, four of 5 or five of 4 in do not come out of these.
        Board[] boards = [Timber.ABoard("A", 40, 9), Timber.ABoard("B", 40, 9), Timber.ABoard("C", 40, 2.5m)];
        var layout = Timber.LayOut(boards, [Panel("top", 40, 20)]);
        Assert.True(layout.Fits);
        Assert.Equal(3, layout.Boards.Sum(board => board.Blanks.Count));
        Assert.Equal(20, Widths(layout).Sum());
    }

    [Fact]
    public void A_narrow_offcut_saves_a_board()
    {
        // 15 in: 9 out of a board and 6 out of the offcut, not 7 1/2 out of each of two boards.
        Board[] boards = [.. Timber.Boards(2, name => Timber.ABoard(name, 40, 9)), Timber.ABoard("offcut", 40, 6)];
        var layout = Timber.LayOut(boards, [Panel("lid", 40, 15)]);
        Assert.Equal(["A1", "offcut"], layout.Boards.Select(board => board.Board.Name));
        Assert.Equal([9m, 6m], Widths(layout));
    }

    [Fact]
    public void What_lies_beside_a_rail_becomes_a_strip()
    {
        // A rail of 3 in leaves 6 of a board's 9: with another whole board that is 15 in, and the third board stays uncut.
        var layout = Timber.LayOut(Timber.Boards(3, name => Timber.ABoard(name, 40, 9)), [Panel("lid", 40, 15), Timber.APart("rail", 40, 3)]);
        Assert.True(layout.Fits);
        Assert.Equal(2, layout.Boards.Count);
        Assert.Equal([9m, 6m], Widths(layout));
    }

    [Fact]
    public void A_flaw_down_the_middle_leaves_a_wide_and_a_narrow_strip()
    {
        // 6 in on one side of a shake and 3 on the other are 9 in; two strips of 4 1/2 would not clear it.
        var shaken = Timber.ABoard("A", 40, 10).Flawed(0, 40, 6, 7);
        Assert.Equal([6m, 3m], Widths(Timber.LayOut([shaken], [Panel("end", 40, 9)])));
    }

    [Fact]
    public void A_chest_front_of_17_in_comes_out_of_9_in_boards_and_a_6_in_offcut()
    {
        // With allowances: 17 1/4 in together and 1/8 more for each strip. 9 + 8 1/2 in take two boards; 9 + 6 + 2 5/8 in save nothing.
        Board[] boards = [Timber.ABoard("A", 50, 9), Timber.ABoard("B", 50, 6), Timber.ABoard("C", 50, 3)];
        var layout = Timber.LayOut(boards, [Panel("front", 42, 17)], Timber.ByHand);
        Assert.True(layout.Fits);
        var strips = Widths(layout);
        Assert.Equal(3, strips.Count);
        Assert.Equal(17.25m, strips.Sum(width => width - 0.125m));
    }

    [Fact]
    public void No_strip_is_narrower_than_two_inches()
    {
        // 9 + 1 1/2 in would be enough.
        Assert.False(Timber.LayOut([Timber.ABoard("A", 40, 9), Timber.ABoard("B", 40, 1.5m)], [Panel("end", 40, 10)]).Fits);

        // 9 in and the rest of 1 in: the wide strip gives way.
        var layout = Timber.LayOut([Timber.ABoard("A", 40, 9), Timber.ABoard("B", 40, 2)], [Panel("end", 40, 10)]);
        Assert.Equal([8m, 2m], Widths(layout));
    }

    [Fact]
    public void A_narrow_panel_may_be_of_strips_narrower_than_two_inches_when_they_are_equal() =>
        Assert.Equal([1.5m, 1.5m], Widths(Timber.LayOut(Timber.Boards(2, name => Timber.ABoard(name, 40, 1.5m)), [Panel("slat", 40, 3)])));

    [Fact]
    public void Resawn_strips_may_be_unequal_too()
    {
        // Two panels of 3/8 in come out of one set of strips: 1 in for 1/8 of kerf and new faces and twice 3/8.
        Board[] boards = [Timber.ABoard("A", 41, 9), Timber.ABoard("B", 41, 4)];
        var layout = Timber.LayOut(boards, [Timber.APart("side", 40, 12, 0.375m, 2) with { IsPanel = true }], Timber.ByHand);
        Assert.True(layout.Fits);
        Assert.All(layout.Boards.SelectMany(board => board.Blanks), placed => Assert.Equal([1, 2], placed.Blank.Numbers));
        Assert.Equal(12.25m, Widths(layout).Sum(width => width - 0.125m));
    }

    [Fact]
    public void The_strips_of_each_panel_are_numbered_through_and_add_up_to_it() => Jobs.Sample(
        job =>
        {
            var layout = Timber.LayOut(job.Boards, job.Panels, Timber.ByHand);
            foreach (var panel in layout.Boards
                .SelectMany(board => board.Blanks)
                .Where(placed => placed.Blank.Strip > 0)
                .SelectMany(placed => placed.Blank.Numbers, (placed, number) => (placed.Blank, Number: number))
                .GroupBy(one => (one.Blank.Part.Name, one.Number), one => one.Blank))
            {
                var part = panel.First().Part;
                var strips = panel.Count();
                Assert.Equal(Enumerable.Range(1, strips), panel.Select(blank => blank.Strip).Order());
                Assert.All(panel, blank => Assert.Equal(strips, blank.Strips));
                var over = panel.Aggregate(-(part.Width + Timber.ByHand.Width), (sum, blank) => sum + blank.Width - Timber.ByHand.Strip);

                // Equal shares are rounded up, each by less than the least step of a length.
                Assert.InRange(over.EighthMicrometres, 0, strips);
                Assert.All(panel, blank => Assert.True(blank.Width - Timber.ByHand.Strip >= Length.Min(Length.FromInches(2m), (part.Width + Timber.ByHand.Width) / strips)));
            }
        },
        iter: 60);

    private static Gen<(IReadOnlyList<Board> Boards, IReadOnlyList<Part> Panels)> Jobs { get; } =
        from widths in Gen.Int[6, 48].Array[1, 6]
        from panels in Gen.Select(Gen.Int[10, 45], Gen.Int[3, 30], Gen.Int[2, 7], Gen.Int[1, 2]).Array[1, 3]
        select (
            (IReadOnlyList<Board>)[.. widths.Select((width, index) => Timber.ABoard(FormattableString.Invariant($"A{index}"), 48, width / 4m))],
            (IReadOnlyList<Part>)[.. panels.Select((panel, index) => Timber.APart(FormattableString.Invariant($"panel {index}"), panel.Item1, panel.Item2, panel.Item3 / 8m, panel.Item4) with { IsPanel = true })]);

    private static Part Panel(string name, decimal length, decimal width) => Timber.APart(name, length, width) with { IsPanel = true };

    private static IReadOnlyList<decimal> Widths(Layout layout) =>
        [.. layout.Boards.SelectMany(board => board.Blanks).Where(placed => placed.Blank.Strip > 0).OrderBy(placed => placed.Blank.Strip).Select(placed => Timber.Inches(placed.Region.Width))];
}
