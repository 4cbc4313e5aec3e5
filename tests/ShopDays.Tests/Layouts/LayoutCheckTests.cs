using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

/// <summary>A good layout is spoiled in one way at a time; the check must see it.</summary>
public sealed class LayoutCheckTests
{
    private static readonly IReadOnlyList<Board> Boards = Timber.Boards(2, name => Timber.ABoard(name, 60, 10).Flawed(50, 60, 0, 10));
    private static readonly IReadOnlyList<Part> Parts = [Timber.APart("rail", 20, 3, count: 4), Timber.APart("post", 24, 4)];

    [Fact]
    public void A_good_layout_has_no_fault() => Assert.Empty(Faults(Good()));

    [Fact]
    public void A_blank_that_is_gone_is_seen() => AssertFault("rail 1 is there 0 times", Spoil(board => board with { Blanks = [.. board.Blanks.Where(one => one.Blank.Label != "rail 1")] }));

    [Fact]
    public void A_blank_that_is_there_twice_is_seen() => AssertFault("overlaps", Spoil(board => board with { Blanks = [.. board.Blanks, board.Blanks[0]] }));

    [Fact]
    public void A_blank_on_a_flaw_is_seen() => AssertFault("touches a flaw", Move(Length.FromInches(35m)));

    [Fact]
    public void A_blank_off_the_board_is_seen() => AssertFault("leaves the usable place", Move(Length.FromInches(100m)));

    [Fact]
    public void A_cut_that_is_left_out_is_seen() => AssertFault("not in hand", Spoil(board => board with { Cuts = [.. board.Cuts.Skip(1)] }));

    [Fact]
    public void A_cut_in_another_place_is_seen() => AssertFault(
        "the cuts do not yield the pieces",
        Spoil(board => board with { Cuts = [.. board.Cuts.SkipLast(1), board.Cuts[^1] with { At = board.Cuts[^1].At - Length.FromInches(0.25m) }] }));

    [Fact]
    public void A_cut_that_stops_short_is_seen() => AssertFault(
        "does not go right across",
        Spoil(board => board with { Cuts = [.. board.Cuts.Select(cut => cut with { Length = cut.Length / 2 })] }));

    [Fact]
    public void An_offcut_that_is_not_named_is_seen() => AssertFault("do not add up", Spoil(board => board with { Offcuts = [] }));

    [Fact]
    public void A_part_both_placed_and_unplaced_is_seen()
    {
        var good = Good();
        AssertFault("1 times unplaced", good with { Unplaced = [new Unplaced(Parts[0], 1, new UnplacedReason.NoRoom())] });
    }

    [Fact]
    public void A_part_thicker_than_its_board_is_seen()
    {
        var thick = Parts.Select(part => part with { Thickness = Length.FromInches(2m) }).ToList();
        var layout = Good();
        AssertFault("thicker than the board", layout with { Boards = [.. layout.Boards.Select(board => board with { Blanks = [.. board.Blanks.Select(one => one with { Blank = one.Blank with { Part = thick.Single(part => part.Name == one.Blank.Part.Name) } })] })] });
    }

    [Theory]
    [InlineData("2.9", "4.9", "do not add up")]
    [InlineData("2", "6", "too narrow for a strip")]
    public void Strips_that_do_not_make_their_panel_are_seen(string first, string second, string fault)
    {
        Board[] boards = [Timber.ABoard("A", 20, 4), Timber.ABoard("B", 20, 4)];
        Part[] parts = [Timber.APart("end", 20, 8) with { IsPanel = true }];
        var layout = Timber.LayOut(boards, parts);
        decimal[] widths = [decimal.Parse(first, System.Globalization.CultureInfo.InvariantCulture) - 0.01m, decimal.Parse(second, System.Globalization.CultureInfo.InvariantCulture)];
        var spoilt = layout with
        {
            Boards = [.. layout.Boards.Zip(widths, (board, width) => board with
            {
                Blanks = [.. board.Blanks.Select(placed => placed with { Blank = placed.Blank with { Width = Length.FromInches(width) } })],
            })],
        };
        Assert.Contains(LayoutCheck.Faults(boards, parts, Timber.Bare, spoilt), found => found.Contains(fault, StringComparison.Ordinal));
    }

    private static Layout Good()
    {
        var layout = Timber.LayOut(Boards, Parts);
        Assert.True(layout.Fits);
        return layout;
    }

    private static Layout Spoil(Func<BoardLayout, BoardLayout> how)
    {
        var good = Good();
        return good with { Boards = [how(good.Boards[0]), .. good.Boards.Skip(1)] };
    }

    private static Layout Move(Length along) => Spoil(board => board with
    {
        Blanks = [.. board.Blanks.Select(one => one with { Region = one.Region with { X = along } })],
    });

    private static IReadOnlyList<string> Faults(Layout layout) => LayoutCheck.Faults(Boards, Parts, Timber.Bare, layout);

    private static void AssertFault(string expected, Layout layout) =>
        Assert.Contains(Faults(layout), fault => fault.Contains(expected, StringComparison.Ordinal));
}
