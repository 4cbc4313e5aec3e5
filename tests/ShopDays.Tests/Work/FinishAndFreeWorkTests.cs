using NodaTime;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class FinishAndFreeWorkTests
{
    private static Job Board(string finish, int coats, params IReadOnlyList<FreeTask> work) => AJob.With(AJob.Part("board", 20, 8)) with
    {
        Finishes = [new FinishWork { Finish = finish, On = ["board"], Coats = coats }],
        Work = work,
    };

    [Fact]
    public void Work_after_a_part_comes_after_what_is_fitted_to_it_when_it_stands()
    {
        var chest = AJob.Chest();
        var graph = (chest with { Work = [.. chest.Work, new FreeTask { Name = "hang the lid", Guess = AJob.Guess(60), After = ["carcass", "lid"], Before = ["finish"] }] }).Graph();

        Assert.All(graph.Of("let in a hinge"), hinge => Assert.True(graph.Leads(hinge.Id, graph.Tasks.Single(task => task.Name == "hang the lid").Id)));
    }

    [Fact]
    public void A_film_is_rubbed_down_between_its_coats_and_each_coat_dries_first()
    {
        var graph = Board("wiping varnish", 3).Graph();
        Assert.Equal(3, graph.Of("finish coat, wiped").Count);
        Assert.Equal(2, graph.Of("rub down between coats").Count);
        Assert.Equal(2, graph.Precedences.Count(one => one.Wait is { } wait && wait.Duration == Duration.FromHours(12)));
        Assert.Equal(Duration.FromHours(72), Assert.Single(graph.ClosingWaits).Wait.Duration);
    }

    [Fact]
    public void Oil_is_not_rubbed_down_and_its_rags_are_warned_of()
    {
        var graph = Board("boiled linseed oil", 2).Graph();
        Assert.Empty(graph.Of("rub down between coats"));
        Assert.All(graph.Of("finish coat, wiped"), coat => Assert.Contains("oily rags", coat.Cautions));
        Assert.All(Board("soap finish", 1).Graph().Of("finish coat, wiped"), coat => Assert.DoesNotContain("oily rags", coat.Cautions));
    }

    [Fact]
    public void A_part_with_no_surface_named_is_finished_all_round()
    {
        // 20 x 8 x 7/8 in: two faces, two edges, two ends.
        const double SquareFeet = 2 * ((20 * 8) + (20 * 0.875) + (8 * 0.875)) / 144;
        var graph = Board("wax", 1).Graph();
        // Nine digits leave room for the rounding of a few operations on doubles, and for nothing else; so below.
        Assert.Equal(SquareFeet, graph.Of("smooth").Quantity(), 9);
        Assert.Equal(SquareFeet, graph.Of("finish coat, wiped").Quantity(), 9);
    }

    [Fact]
    public void Where_some_parts_of_a_glue_up_show_the_others_are_left_as_they_are()
    {
        var front = AJob.Part("front", 20, 8) with { Shows = new HashSet<PartSurface> { PartSurface.Face } };
        var graph = (AJob.With(front, AJob.Part("bottom", 20, 8)) with
        {
            GlueUps = [new GlueUp { Name = "box", Joins = ["front", "bottom"], Adhesive = "PVA, slow-set" }],
            Finishes = [new FinishWork { Finish = "wax", On = ["box"] }],
        }).Graph();
        Assert.Equal(160 / 144.0, graph.Of("smooth").Quantity(), 9);
        Assert.Equal(160 / 144.0, graph.Of("finish coat, wiped").Quantity(), 9);
    }

    [Fact]
    public void Inside_faces_are_smoothed_before_the_glue_up_and_not_after()
    {
        var side = AJob.Part("side", 20, 8, count: 2) with { Shows = new HashSet<PartSurface> { PartSurface.Inside, PartSurface.Face } };
        var graph = (AJob.With(side) with
        {
            GlueUps = [new GlueUp { Name = "box", Joins = ["side"], Adhesive = "PVA, slow-set" }],
            Finishes = [new FinishWork { Finish = "wax", On = ["box"] }],
        }).Graph();
        var (inside, outside) = (graph.Of("smooth")[0], graph.Of("smooth")[1]);
        Assert.True(graph.Leads(inside.Id, Assert.Single(graph.Of("glue-up")).Id) && graph.Leads(Assert.Single(graph.Of("glue-up")).Id, outside.Id));
        Assert.Equal(4 * 160 / 144.0, graph.Of("smooth").Quantity(), 9);
    }

    [Theory]
    [InlineData("wiping varnish", 4)]
    [InlineData("boiled linseed oil", 1)]
    [InlineData("shellac, brushed", 1)]
    [InlineData("wax", 0)]
    public void A_coat_says_how_long_dusty_work_stays_away(string finish, int hours)
    {
        var graph = Board(finish, 2).Graph();
        var coats = graph.Tasks.Where(task => task.Name.Contains(", coat ", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, coats.Count);
        Assert.All(coats, coat => Assert.True(!coat.IsDusty && coat.DustFreeAfter == Duration.FromHours(hours)));
        Assert.All(graph.Tasks.Except(coats), task => Assert.Equal(Duration.Zero, task.DustFreeAfter));
        Assert.All(graph.Of("rip").Concat(graph.Of("joint the edge")).Concat(graph.Of("rub down between coats")), task => Assert.True(task.IsDusty));
        Assert.All(graph.Of("mark out a part with knife and gauge"), task => Assert.False(task.IsDusty));
    }

    [Fact]
    public void With_another_coat_the_coats_before_it_are_the_same_work_with_the_same_marks()
    {
        var (three, four) = (CoatsOf(3), CoatsOf(4));
        Assert.Equal(three, four.Take(three.Count));
        Assert.Equal(three.Count + 1, four.Count);
        Assert.Equal(["coat 1 of 2; no dust", "coat 2 of 2; no dust"], Board("shellac, brushed", 2).Graph().Of("finish coat, brushed").Select(coat => coat.Note[..20]));

        static IReadOnlyList<(string Name, string Mark)> CoatsOf(int coats)
        {
            var names = Board("boiled linseed oil", coats).Graph().Tasks.Select(task => task.Name).ToList();
            return [.. names.Where(name => name.Contains(", coat ", StringComparison.Ordinal)).Select(name => (name, new TaskMarks(names).Of(name)))];
        }
    }

    [Theory]
    [InlineData("wiping varnish (thinned), coat 2 of 3: seat, frame", "wiping varnish (thinned), coat 2: seat, frame")]
    [InlineData("oil, coat 10 of 12: lid: inside", "oil, coat 10: lid: inside")]
    [InlineData("rub down before coat 2: seat, frame", "rub down before coat 2: seat, frame")]
    [InlineData("mortise: leg (1-2 of 4)", "mortise: leg (1-2 of 4)")]
    [InlineData("oil, coat 1: lid", "oil, coat 1: lid")]
    public void A_coat_is_found_by_the_name_that_older_versions_gave_it(string former, string today)
    {
        Assert.Equal(today, FormerNames.Today(former));
        Assert.All(FormerNames.Of(today), name => Assert.Equal(today, FormerNames.Today(name)));
    }

    [Fact]
    public void Finishes_go_on_from_the_wood_outward_whatever_the_order_written()
    {
        string[] written = ["wax", "wiping varnish", "shellac, brushed", "boiled linseed oil", "dye or water stain"];
        var job = Board("wax", 1) with { Finishes = [.. written.Select(finish => new FinishWork { Finish = finish, On = ["board"] })] };
        var graph = job.Graph();
        var coats = written.Reverse().Select(finish => graph.Tasks.Single(task => task.Name.StartsWith(finish, StringComparison.Ordinal))).ToList();
        Assert.All(coats.Zip(coats.Skip(1)), pair => Assert.True(graph.Leads(pair.First.Id, pair.Second.Id)));
        Assert.Contains(job.Remarks(), remark => remark.Kind == RemarkKind.FinishOrder && remark.Text.StartsWith("wax is written before", StringComparison.Ordinal));
        Assert.DoesNotContain((job with { Finishes = [.. job.Finishes.Reverse()] }).Remarks(), remark => remark.Kind == RemarkKind.FinishOrder);
    }

    [Fact]
    public void A_part_that_a_late_task_fits_is_sized_before_it()
    {
        var job = AJob.With(AJob.Part("rail", 20, 3), AJob.Part("runner", 20, 2)) with
        {
            GlueUps = [new GlueUp { Name = "frame", Joins = ["rail"], Adhesive = "PVA, slow-set" }],
            Work = [new FreeTask { Name = "fix the runner", Guess = AJob.Guess(30), On = ["runner"], After = ["frame"] }],
        };
        var graph = job.Graph();
        var fix = graph.Tasks.Single(task => task.Name == "fix the runner");
        Assert.All(graph.Tasks.Where(task => task.Parts.Contains("runner") && task.Id != fix.Id), task => Assert.True(graph.Leads(task.Id, fix.Id)));
    }

    [Fact]
    public void A_stain_is_dry_before_the_varnish_on_the_same_part()
    {
        var job = Board("wiping varnish", 2);
        var graph = (job with { Finishes = [new FinishWork { Finish = "dye or water stain", On = ["board"] }, .. job.Finishes] }).Graph();
        var stain = graph.Tasks.Single(task => task.Name.StartsWith("dye", StringComparison.Ordinal));
        var first = graph.Tasks.Single(task => task.Name.StartsWith("wiping varnish (thinned), coat 1: ", StringComparison.Ordinal));
        Assert.Contains(graph.Precedences, one => one.Before == stain.Id && one.After == first.Id && one.Wait is not null);
        Assert.Single(graph.Of("smooth"));
        Assert.Single(graph.ClosingWaits);
    }

    [Fact]
    public void Work_after_the_finish_waits_until_the_finish_may_be_handled()
    {
        var graph = Board("wiping varnish", 1, new FreeTask { Name = "deliver", Guess = AJob.Guess(60), After = ["finish"] }).Graph();
        var deliver = graph.Tasks.Single(task => task.Name == "deliver");
        Assert.Equal(Stage.Delivery, deliver.Stage);
        Assert.Equal(Duration.FromHours(72), Assert.Single(graph.Precedences, one => one.After == deliver.Id).Wait?.Duration);
    }

    [Fact]
    public void Nothing_is_packed_before_a_film_is_hard_right_through()
    {
        var graph = Board("wiping varnish", 1, new FreeTask { Name = "pack it", Operation = "pack and load", Quantity = 1, After = ["finish"] }).Graph();
        var pack = graph.Tasks.Single(task => task.Name == "pack it");
        Assert.Equal(Duration.FromDays(14), Assert.Single(graph.Precedences, one => one.After == pack.Id).Wait?.Duration);
    }

    [Fact]
    public void Work_before_a_stage_comes_before_all_of_it()
    {
        var graph = AJob.Chest().Graph();
        var letters = graph.Tasks.Single(task => task.Name == "drawings and letters");
        Assert.Equal(Stage.Drawing, letters.Stage);
        Assert.All(graph.Tasks.Where(task => task.Stage is Stage.Layout or Stage.Sawing), task => Assert.True(graph.Leads(letters.Id, task.Id)));
    }

    [Fact]
    public void A_decision_that_is_asked_for_at_the_start_holds_back_what_comes_after_it()
    {
        var graph = AJob.Chest().Graph();
        var deposit = Assert.Single(graph.Awaited, wait => wait.Name == "deposit received");
        Assert.Equal((Duration.FromDays(3), true), (deposit.Wait.Likely, deposit.BeginsWithTheJob));
        // No task stands under 'buying timber': the nearest that follows is held.
        Assert.All(deposit.Holds, id => Assert.Equal(Stage.Layout, graph.Tasks[id].Stage));
        Assert.NotEmpty(deposit.Holds);
    }

    [Fact]
    public void A_decision_that_is_asked_for_after_a_task_is_a_wait_from_its_end()
    {
        var graph = AJob.Chest().Graph();
        var letters = graph.Tasks.Single(task => task.Name == "drawings and letters");
        var approval = Assert.Single(graph.Awaited, one => one.Name == "client approves the drawing");
        Assert.Equal((letters.Id, Duration.FromDays(5)), (approval.After.Single(), approval.Wait.Likely));
        Assert.All(approval.Holds, id => Assert.Contains(graph.Precedences, one => one.Before == letters.Id && one.After == id && one.Reason == "it waits for: client approves the drawing"));
    }

    [Fact]
    public void A_decision_that_another_comes_before_is_asked_for_when_that_has_come()
    {
        var job = Board("wax", 1) with
        {
            Decisions =
            [
                new Decision { Name = "drawing approved", Wait = WaitGuess.About(Duration.FromDays(4)), Before = ["deposit"] },
                new Decision { Name = "deposit", Wait = WaitGuess.About(Duration.FromDays(3)), Before = ["sawing"] },
            ],
        };
        var awaited = job.Graph().Awaited;
        Assert.Equal([("drawing approved", -1, false), ("deposit", 0, true)], awaited.Select(one => (one.Name, one.AfterOthers.DefaultIfEmpty(-1).Single(), one.Holds.Count > 0)));
    }

    [Fact]
    public void What_nothing_in_the_job_waits_for_is_remarked_on()
    {
        var job = Board("wax", 1) with { Decisions = [new Decision { Name = "van free", From = "neighbour", Wait = WaitGuess.About(Duration.FromDays(1)), Before = ["delivery"] }] };
        Assert.Empty(Assert.Single(job.Graph().Awaited).Holds);
        Assert.Contains(job.Remarks(), remark => remark.Kind == RemarkKind.LooseEnd && remark.Text == "nothing in the job waits for the neighbour's word: van free");
    }

    [Fact]
    public void An_order_that_goes_round_is_told_by_its_names()
    {
        var job = Board("wax", 1, new FreeTask { Name = "turn the knobs", Guess = AJob.Guess(30), Before = ["sawing"], After = ["finish"] });
        var round = Assert.IsType<OrderOfWork.GoesRound>(job.Ordered());
        Assert.Contains("turn the knobs", round.Names);
        Assert.Equal(round.Names[0], round.Names[^1]);
    }

    [Fact]
    public void Decisions_and_glue_ups_that_go_round_are_told_by_their_names()
    {
        var decisions = Board("wax", 1) with
        {
            Decisions =
            [
                new Decision { Name = "a", Wait = WaitGuess.About(Duration.FromDays(1)), Before = ["layout"], After = ["b"] },
                new Decision { Name = "b", Wait = WaitGuess.About(Duration.FromDays(1)), Before = ["layout"], After = ["a"] },
            ],
        };
        Assert.Equal(["a", "b", "a"], Assert.IsType<OrderOfWork.GoesRound>(decisions.Ordered()).Names);
        var glueUps = Board("wax", 1) with
        {
            GlueUps =
            [
                new GlueUp { Name = "x", Joins = ["y"], Adhesive = "casein" },
                new GlueUp { Name = "y", Joins = ["x"], Adhesive = "casein" },
            ],
        };
        Assert.Equal(["x", "y", "x"], Assert.IsType<OrderOfWork.GoesRound>(glueUps.Ordered()).Names);
    }

    [Fact]
    public void An_operation_on_loose_parts_comes_with_their_joints()
    {
        var work = new FreeTask { Name = "round the corners", Operation = "saw a curve", Quantity = 2, On = ["board"] };
        var graph = Board("wax", 1, work).Graph();
        var round = graph.Tasks.Single(task => task.Name == "round the corners");
        Assert.True(graph.Leads(Assert.Single(graph.Of("square ends")).Id, round.Id) && graph.Leads(round.Id, Assert.Single(graph.Of("smooth")).Id));
    }

    [Fact]
    public void The_names_that_may_stand_after_before_and_after_are_stages_parts_glue_ups_work_and_decisions()
    {
        var names = OrderOfWork.AnchorNames(AJob.Chest());
        Assert.All(["layout", "buying timber", "front", "carcass", "deliver", "deposit received"], name => Assert.Contains(name, names));
    }
}
