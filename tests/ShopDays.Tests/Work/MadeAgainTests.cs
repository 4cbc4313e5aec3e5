using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class MadeAgainTests
{
    [Fact]
    public void A_leg_spoiled_at_its_mortise_is_sawn_and_planed_again_and_loses_its_share_of_each()
    {
        var (graph, again) = Legs(spare: 0);
        var lost = Assert.Single(again.LostIn(graph.Of("mortise")[0].Name));
        Assert.Equal(("leg", 1.0, true), (lost.Part, lost.Share, lost.IsBeyondSize));

        // Four legs: a quarter of each kind of work on them, in however many runs it is done.
        foreach (var operation in (string[])["flatten face one", "joint the edge", "plane to width", "square ends"])
        {
            Assert.Equal(0.25, ShareOfRuns(lost, operation), 12);
        }

        Assert.Contains(lost.Before, one => one.Task.Stage == Stage.Sawing);
        Assert.DoesNotContain(lost.Before, one => one.Task.Stage is Stage.Layout or Stage.Assembly or Stage.Finish);
    }

    [Fact]
    public void A_tenon_that_goes_wrong_costs_nothing_of_the_legs()
    {
        var (graph, again) = Legs(spare: 0);
        var lost = Assert.Single(again.LostIn(graph.Of("tenon")[0].Name));
        Assert.Equal("rail", lost.Part);
        Assert.All(lost.Before.Where(one => one.Task.Stage == Stage.Dimensioning), one => Assert.All(one.Task.Pieces, piece => Assert.Equal("rail", piece.Of)));
    }

    [Fact]
    public void A_panel_spoiled_after_gluing_loses_all_its_strips()
    {
        var job = AJob.With(AJob.Part("top", 40, 18) with { IsPanel = true });
        var graph = job.Graph();
        var lost = Assert.Single(MadeAgain.Of(graph, job, HandLayout.Of(job), BuiltIn.Waits).LostIn(graph.Of("edge-glue panel")[0].Name));
        Assert.Equal(1, ShareOfRuns(lost, "flatten face one"), 12);
        Assert.Equal(1, ShareOfRuns(lost, "match and shoot a glue joint"), 12);
    }

    [Fact]
    public void The_first_spoiled_takes_the_spare_blank_then_what_is_left_over_then_new_timber_is_found()
    {
        var (_, again) = Legs(spare: 1);
        Assert.Equal([SpareTimber.SpareBlank, SpareTimber.LeftOver, SpareTimber.NewTimber], Enumerable.Range(0, 3).Select(before => again.TimberFor("leg", before)));
        Assert.Equal((1, 2), (again.SparesOf("leg"), again.WithASpare("leg").SparesOf("leg")));
        Assert.Equal(Duration.FromDays(5), again.NewTimber);
    }

    [Fact]
    public void Without_a_board_to_spare_nothing_is_left_over()
    {
        var job = OfLegs(spare: 0);
        var layout = HandLayout.Of(job);
        var short1 = job with { Boards = [.. layout.Boards.Select(board => board.Board)] };
        var bare = layout with { Boards = [.. layout.Boards.Select(board => board with { Offcuts = [] })] };
        Assert.Equal(SpareTimber.NewTimber, MadeAgain.Of(short1.Graph(), short1, bare, BuiltIn.Waits).TimberFor("leg", 0));
    }

    [Fact]
    public void A_board_of_another_timber_or_too_thin_or_with_a_knot_yields_no_leg()
    {
        var job = OfLegs(spare: 0);
        var layout = HandLayout.Of(job);
        var bare = layout with { Boards = [.. layout.Boards.Select(board => board with { Offcuts = [] })] };
        var board = job.Boards[^1] with { Name = "Z" };
        Assert.Equal(SpareTimber.LeftOver, With(board));
        Assert.Equal(SpareTimber.NewTimber, With(board with { Species = AJob.Pine }));
        Assert.Equal(SpareTimber.NewTimber, With(board with { Thickness = board.Thickness / 2 }));
        Assert.Equal(SpareTimber.NewTimber, With(board with { Length = board.Length / 8 }));
        Assert.Equal(SpareTimber.NewTimber, With(board with { Flaws = [new(ShopDays.Measures.Length.FromInches(10m), ShopDays.Measures.Length.FromInches(12m), ShopDays.Measures.Length.FromInches(3m), ShopDays.Measures.Length.FromInches(5m))] }));

        SpareTimber With(Board one)
        {
            var those = job with { Boards = [.. layout.Boards.Select(laid => laid.Board), one] };
            return MadeAgain.Of(those.Graph(), those, bare, BuiltIn.Waits).TimberFor("leg", 0);
        }
    }

    private static double ShareOfRuns(LostPiece lost, string operation) =>
        lost.Before.Where(one => one.Task.Timing is TaskTiming.ByOperation by && by.Operation.Name == operation).Sum(one => one.Share);

    private static (TaskGraph Graph, MadeAgain Again) Legs(int spare)
    {
        var job = OfLegs(spare);
        var graph = job.Graph();
        return (graph, MadeAgain.Of(graph, job, HandLayout.Of(job), BuiltIn.Waits));
    }

    private static Job OfLegs(int spare) => AJob.With(AJob.Part("leg", 28, 2, count: 4) with { Spare = spare }, AJob.Part("rail", 20, 3, count: 4)) with
    {
        Joints = [new Joint { Kind = "mortise and tenon", Parts = ["leg", "rail"], Count = 8 }],
    };
}
