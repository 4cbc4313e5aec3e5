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
    public void A_panel_spoiled_at_its_flattening_loses_all_its_strips()
    {
        var (graph, again) = ATop();
        var lost = Assert.Single(again.LostIn(graph.Of("flatten a glued panel")[0].Name));
        Assert.Equal(1, ShareOfRuns(lost, "flatten face one"), 12);
        Assert.Equal(1, ShareOfRuns(lost, "match and shoot a glue joint"), 12);
    }

    [Fact]
    public void A_panel_whose_joint_fails_loses_no_strip_but_is_sawn_apart_shot_and_glued_again()
    {
        var (graph, again) = ATop();
        var glued = graph.Of("edge-glue panel")[0];
        Assert.Empty(again.LostIn(glued.Name));
        var mending = again.MendingOf(glued.Name)!;
        var sawn = Assert.Single(mending.Work);
        Assert.Equal(("rip", ((TaskTiming.ByOperation)glued.Timing).Quantity), (sawn.Operation.Name, sawn.Quantity));
        Assert.Equal(graph.Of("match and shoot a glue joint").Select(task => (task.Name, 1.0)).Order(), mending.Again.Select(one => (one.Task.Name, one.Share)).Order());
        Assert.Equal(glued.SetsFor, mending.Wait);
    }

    [Fact]
    public void A_glue_up_that_fails_is_taken_apart_joint_by_joint_and_sets_again()
    {
        var job = AJob.Chest();
        var graph = job.Graph();
        var again = MadeAgain.Of(graph, job, HandLayout.Of(job), BuiltIn.Operations, BuiltIn.Waits);
        Assert.All(graph.Of("glue-up"), glued =>
        {
            var mending = again.MendingOf(glued.Name)!;
            var apart = Assert.Single(mending.Work);
            Assert.Equal(("take apart a glued joint", ((TaskTiming.ByOperation)glued.Timing).Quantity), (apart.Operation.Name, apart.Quantity));
            Assert.True(mending.Wait > Duration.Zero);
            Assert.Equal(glued.SetsFor, mending.Wait);
        });
        Assert.NotEmpty(graph.Of("glue-up"));
    }

    [Fact]
    public void A_coat_that_fails_is_rubbed_down_all_over_and_dries_again()
    {
        var job = AJob.Chest();
        var graph = job.Graph();
        var again = MadeAgain.Of(graph, job, HandLayout.Of(job), BuiltIn.Operations, BuiltIn.Waits);
        List<ShopTask> coats = [.. graph.Of("finish coat, wiped"), .. graph.Of("finish coat, brushed")];
        Assert.NotEmpty(coats);
        Assert.All(coats, coat =>
        {
            var mending = again.MendingOf(coat.Name)!;
            var rubbed = Assert.Single(mending.Work);
            Assert.Equal(("rub down between coats", ((TaskTiming.ByOperation)coat.Timing).Quantity), (rubbed.Operation.Name, rubbed.Quantity));
            Assert.True(mending.Wait >= Duration.FromHours(1));
        });
    }

    [Fact]
    public void In_cold_nights_what_is_done_again_sets_longer()
    {
        var chest = AJob.Chest();
        var job = chest with { GlueUps = [.. chest.GlueUps.Select(one => one with { Adhesive = "PVA, yellow" })] };
        var nights = new ShopNights(ShopDays.Measures.Temperature.FromCelsius(14), new Dictionary<int, ShopDays.Measures.Temperature>());
        var (warm, cold) = (job.Graph(), job.Graph(AJob.Shop with { Nights = nights }));
        var glued = warm.Of("glue-up")[0].Name;
        Assert.True(WaitIn(cold) > WaitIn(warm) * 1.4);

        Duration WaitIn(TaskGraph graph) => MadeAgain.Of(graph, job, HandLayout.Of(job), BuiltIn.Operations, BuiltIn.Waits).MendingOf(glued)!.Wait;
    }

    [Fact]
    public void The_first_spoiled_takes_the_spare_blank_then_what_is_left_over_then_new_timber_is_found()
    {
        var (_, again) = Legs(spare: 1);
        Assert.Equal([SpareTimber.SpareBlank, SpareTimber.LeftOver, SpareTimber.NewTimber], Enumerable.Range(0, 3).Select(before => again.TimberFor("leg", before)));
        Assert.Equal((1, 2), (again.SparesOf("leg"), again.WithASpare("leg").SparesOf("leg")));
        Assert.Equal(new WaitGuess(Duration.FromDays(2), Duration.FromDays(5), Duration.FromDays(14)), again.NewTimber);
    }

    [Fact]
    public void Without_a_board_to_spare_nothing_is_left_over()
    {
        var job = OfLegs(spare: 0);
        var layout = HandLayout.Of(job);
        var short1 = job with { Boards = [.. layout.Boards.Select(board => board.Board)] };
        var bare = layout with { Boards = [.. layout.Boards.Select(board => board with { Offcuts = [] })] };
        Assert.Equal(SpareTimber.NewTimber, MadeAgain.Of(short1.Graph(), short1, bare, BuiltIn.Operations, BuiltIn.Waits).TimberFor("leg", 0));
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
            return MadeAgain.Of(those.Graph(), those, bare, BuiltIn.Operations, BuiltIn.Waits).TimberFor("leg", 0);
        }
    }

    private static double ShareOfRuns(LostPiece lost, string operation) =>
        lost.Before.Where(one => one.Task.Timing is TaskTiming.ByOperation by && by.Operation.Name == operation).Sum(one => one.Share);

    private static (TaskGraph Graph, MadeAgain Again) ATop()
    {
        var job = AJob.With(AJob.Part("top", 40, 18) with { IsPanel = true });
        var graph = job.Graph();
        return (graph, MadeAgain.Of(graph, job, HandLayout.Of(job), BuiltIn.Operations, BuiltIn.Waits));
    }

    private static (TaskGraph Graph, MadeAgain Again) Legs(int spare)
    {
        var job = OfLegs(spare);
        var graph = job.Graph();
        return (graph, MadeAgain.Of(graph, job, HandLayout.Of(job), BuiltIn.Operations, BuiltIn.Waits));
    }

    private static Job OfLegs(int spare) => AJob.With(AJob.Part("leg", 28, 2, count: 4) with { Spare = spare }, AJob.Part("rail", 20, 3, count: 4)) with
    {
        Joints = [new Joint { Kind = "mortise and tenon", Parts = ["leg", "rail"], Count = 8 }],
    };
}
