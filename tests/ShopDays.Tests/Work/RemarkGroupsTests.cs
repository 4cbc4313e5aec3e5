using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class RemarkGroupsTests
{
    [Fact]
    public void What_holds_for_several_boards_is_said_once() => Assert.Equal(
        ["board S1 is too heavy: slide it. The same holds for S2, S3.", "carcass wants clamps: buy two."],
        RemarkGroups.Said(
        [
            Lift("S1"),
            new(RemarkKind.Clamps, "carcass", "carcass wants clamps", "buy two"),
            Lift("S2"),
            Lift("S3"),
        ]));

    [Fact]
    public void No_remarks_say_nothing() => Assert.Empty(RemarkGroups.Said([]));

    private static Remark Lift(string board) => new(RemarkKind.Lift, board, $"board {board} is too heavy", "slide it");
}
