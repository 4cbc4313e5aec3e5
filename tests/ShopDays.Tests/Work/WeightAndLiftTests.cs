using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class WeightAndLiftTests
{
    [Fact]
    public void Every_board_blank_part_and_glue_up_is_weighed_and_flagged_over_the_limit()
    {
        var job = AJob.Chest();
        var layout = HandLayout.Of(job);
        var weights = Weights.Of(job, layout, new ShopLimits { LiftAlone = Mass.FromKilograms(10) });
        Assert.Equal(layout.Boards.Count + layout.Boards.Sum(board => board.Blanks.Count) + job.Parts.Count + job.GlueUps.Count, weights.Count);
        Assert.All(weights, one => Assert.Equal(one.Mass.Kilograms > 10, one.IsOverLimit));
        var carcass = weights.Single(one => one.Kind == WeighedKind.GlueUp && one.Name == "carcass").Mass;
        var parts = job.Parts.Where(part => job.GlueUps[0].Joins.Contains(part.Name)).Sum(part => Weights.OfPart(part, layout).Kilograms * part.Count);
        // The same sum in another order.
        Assert.Equal(parts, carcass.Kilograms, 9);
    }

    [Fact]
    public void Cuts_that_wait_for_another_are_grouped_after_it()
    {
        var whole = new Region(Length.Zero, Length.Zero, Length.FromInches(96m), Length.FromInches(10m));
        var half = whole with { Length = Length.FromInches(48m) };
        var strip = half with { Width = Length.FromInches(5m) };
        var board = new BoardLayout
        {
            Board = AJob.Boards(1, 96, 10, 1)[0],
            Usable = whole,
            Blanks = [],
            Offcuts = [],
            Cuts =
            [
                Cut(1, CutKind.Crosscut, whole),
                Cut(2, CutKind.Rip, half),
                Cut(3, CutKind.Crosscut, strip),
                Cut(4, CutKind.Rip, half with { X = Length.FromInches(48m) }),
            ],
        };
        // The second rip does not wait for the short crosscut, so both rips are one task.
        Assert.Equal([[1], [2, 4], [3]], CutGroups.Of(board).Select(group => group.Select(cut => cut.Order).ToArray()));

        static Cut Cut(int order, CutKind kind, Region of) => new(order, kind, of, Length.Zero, of.Length, Length.FromInches(1m), "");
    }

    [Theory]
    [InlineData(96, 96, 0)]
    [InlineData(97, 96, 1)]
    [InlineData(180, 96, 1)] // 84 in beyond the reach is just one step of 96 - 12
    [InlineData(181, 96, 2)]
    public void A_piece_is_moved_once_for_each_pass_after_the_first(int length, int reach, int moves)
    {
        Assert.Equal(moves, Passes.Moves(Length.FromInches((decimal)length), Length.FromInches((decimal)reach)));
    }
}
